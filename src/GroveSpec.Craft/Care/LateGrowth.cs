using GroveSpec.Craft.Calendar;
using GroveSpec.Model.Species;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Craft.Care;

/// <summary>
/// A cut that wakes buds so late that the frost comes before their shoots have hardened. A shoot needs as long as from the middle of
/// bud-break to the middle of harden-off in that species' spring; once the leaves fall, or a tree that keeps them rests, a cut wakes
/// nothing before spring. Source: common practice.
/// </summary>
/// <param name="Kind">The species.</param>
/// <param name="DaysNeeded">The days a shoot needs to harden.</param>
/// <param name="DaysLeft">The fewest days that are left before the first frost; negative behind it.</param>
/// <param name="LastSafeDay">The last day with as many days left as are needed.</param>
/// <param name="FirstFrost">The usual first frost.</param>
/// <param name="SafeAgain">The first day on which a cut wakes nothing any more.</param>
public sealed record LateGrowth(TreeKind Kind, int DaysNeeded, int DaysLeft, LocalDate LastSafeDay, LocalDate FirstFrost, LocalDate SafeAgain)
{
    /// <summary>Whether work of a kind makes a species shoot again in the same year.</summary>
    /// <param name="work">The kind of work: pruning and taking leaves do; pinching does where a species shoots again and again.</param>
    /// <param name="kind">The species: one that shoots once a year makes nothing new, and a conifer only where its profile says that it does.</param>
    /// <returns>True when it does.</returns>
    public static bool Wakes(TaskKind work, TreeKind kind) => work switch
    {
        TaskKind.Prune or TaskKind.Defoliate => kind.Flush is Flush.Partial or Flush.Repeated or Flush.Continuous
            || (kind.Flush is null && kind.Habit is not (LeafHabit.Conifer or LeafHabit.DeciduousConifer)),
        TaskKind.Pinch => kind.Flush is Flush.Repeated or Flush.Continuous,
        _ => false,
    };

    /// <summary>Looks at some days.</summary>
    /// <param name="kind">The species.</param>
    /// <param name="days">The days on which the work may be done.</param>
    /// <returns>What comes of the latest of them; null when none of them is too late, and where frost or stages are not known.</returns>
    public static LateGrowth? Of(TreeKind kind, DateInterval days)
    {
        for (var year = days.Start.Year - 1; year <= days.End.Year + 1; year++)
        {
            if (kind.Year.FirstFrost(year) is not { } frost || Needed(kind.Year, year) is not { } needed
                || (kind.Year.Onset(Stage.LeafFall, year) ?? kind.Year.Onset(Stage.Dormant, year)) is not { } rest)
            {
                continue;
            }

            var last = frost.PlusDays(-needed);
            var latest = LocalDate.Min(days.End, rest.Start.PlusDays(-1));
            if (latest > last && latest >= days.Start)
            {
                return new LateGrowth(kind, needed, Period.DaysBetween(latest, frost), last, frost, rest.Start);
            }
        }

        return null;
    }

    private static int? Needed(TreeYear year, int number) =>
        year.Onset(Stage.BudBreak, number) is { } broken && year.Onset(Stage.HardenOff, number) is { } hard
            ? Period.DaysBetween(Middle(broken), Middle(hard))
            : null;

    private static LocalDate Middle(DateInterval days) => days.Start.PlusDays((days.Length - 1) / 2);
}
