using GroveSpec.Craft.Calendar;
using GroveSpec.Model.Species;
using GroveSpec.Model.Tasks;
using NodaTime;

namespace GroveSpec.Craft.Care;

/// <summary>
/// How long a tree is left in peace between two pieces of heavy work. Source: common practice; there is no measured table. Work on
/// roots, taking leaves, grafting, wiring and a single pruning count as heavy; pruning that comes again and again is upkeep, and a
/// pruning beside work on the roots is commonly done in one go.
/// </summary>
/// <param name="First">The work that comes first in the better order.</param>
/// <param name="Second">The work that follows.</param>
/// <param name="MostDaysBetween">The most days that can lie between them, as their times are said.</param>
/// <param name="DaysNeeded">The days it takes.</param>
public sealed record Recovery(Work First, Work Second, int MostDaysBetween, int DaysNeeded)
{
    private const int DaysOfOneSession = 14;
    private const int AfterRootsBeforeLeaves = 120;
    private const int AfterRootsBeforeRoots = 180;
    private const int AfterRootsBeforeBends = 56;
    private const int AfterLeavesBeforeRoots = 56;
    private const int AfterLeavesBeforeLeaves = 70;
    private const int AboutCutsAndLeaves = 42;
    private const int AboutGrafts = 56;

    /// <summary>The longest that anything here takes, in days: work further apart need not be looked at.</summary>
    public const int Longest = AfterRootsBeforeRoots * 3 / 2;

    /// <summary>Whether work is heavy.</summary>
    /// <param name="work">The work.</param>
    /// <returns>True when something has to be left between it and other heavy work.</returns>
    public static bool IsHeavy(Work work) => IsOfRoots(work.Kind) || work.Kind is TaskKind.Defoliate or TaskKind.Graft or TaskKind.Wire || (work.Kind == TaskKind.Prune && !work.Repeats);

    /// <summary>Whether work is done to the roots.</summary>
    /// <param name="kind">The kind of work.</param>
    /// <returns>True for repotting and root pruning.</returns>
    public static bool IsOfRoots(TaskKind kind) => kind is TaskKind.Repot or TaskKind.RootPrune;

    /// <summary>How many days should lie between two pieces of work in this order.</summary>
    /// <param name="first">The first.</param>
    /// <param name="second">The second.</param>
    /// <returns>The days, half as many again for a slow species or where a trunk of both is held back by its role; null where nothing has to lie between.</returns>
    public static int? DaysBetween(Work first, Work second)
    {
        int? days = (first.Kind, second.Kind) switch
        {
            (TaskKind.Repot or TaskKind.RootPrune, TaskKind.Defoliate) => AfterRootsBeforeLeaves,
            (TaskKind.Repot or TaskKind.RootPrune, TaskKind.Repot or TaskKind.RootPrune) => AfterRootsBeforeRoots,
            (TaskKind.Repot or TaskKind.RootPrune, TaskKind.Wire) => AfterRootsBeforeBends,
            (TaskKind.Defoliate, TaskKind.Repot or TaskKind.RootPrune) => AfterLeavesBeforeRoots,
            (TaskKind.Defoliate, TaskKind.Defoliate) => AfterLeavesBeforeLeaves,
            (TaskKind.Defoliate, TaskKind.Prune) or (TaskKind.Prune, TaskKind.Defoliate) => AboutCutsAndLeaves,
            (TaskKind.Graft, TaskKind.Repot or TaskKind.RootPrune or TaskKind.Defoliate) => AboutGrafts,
            (TaskKind.Repot or TaskKind.RootPrune or TaskKind.Defoliate, TaskKind.Graft) => AboutGrafts,
            _ => null,
        };
        if (days is null)
        {
            return null;
        }

        var isSlow = first.Restrained.Any(second.Restrained.Contains) || second.Kinds.Any(kind => kind.Profile?.Growth?.Value == GrowthPace.Slow);
        return isSlow ? days * 3 / 2 : days;
    }

    /// <summary>Holds two pieces of work against each other.</summary>
    /// <param name="one">One.</param>
    /// <param name="oneDays">The days on which it was or may be done.</param>
    /// <param name="other">The other.</param>
    /// <param name="otherDays">Its days.</param>
    /// <returns>What is missing; null where there is an order of days that leaves enough between them, and for root work that can be done in one session.</returns>
    public static Recovery? Missing(Work one, DateInterval oneDays, Work other, DateInterval otherDays)
    {
        var (needed, neededBack) = (DaysBetween(one, other), DaysBetween(other, one));
        if (needed is null && neededBack is null)
        {
            return null;
        }

        var (forward, back) = (MostDays(oneDays, otherDays), MostDays(otherDays, oneDays));
        if (IsEnough(forward, needed) || IsEnough(back, neededBack) || (IsOfRoots(one.Kind) && IsOfRoots(other.Kind) && LeastDays(oneDays, otherDays) <= DaysOfOneSession))
        {
            return null;
        }

        return forward >= back ? new Recovery(one, other, forward, needed!.Value) : new Recovery(other, one, back, neededBack!.Value);
    }

    /// <summary>The most days from one piece of work to one behind it.</summary>
    /// <param name="first">The days of the first.</param>
    /// <param name="second">The days of the second.</param>
    /// <returns>The days; negative where the second cannot come behind the first.</returns>
    public static int MostDays(DateInterval first, DateInterval second) => DayCount.NumberOf(second.End) - DayCount.NumberOf(first.Start);

    private static bool IsEnough(int days, int? needed) => days >= 0 && (needed is null || days >= needed);

    private static int LeastDays(DateInterval one, DateInterval other) =>
        Math.Max(0, Math.Max(DayCount.NumberOf(other.Start) - DayCount.NumberOf(one.End), DayCount.NumberOf(one.Start) - DayCount.NumberOf(other.End)));
}
