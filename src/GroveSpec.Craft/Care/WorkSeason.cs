using GroveSpec.Model.Species;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Craft.Care;

/// <summary>
/// The part of a tree's year in which a kind of work does harm or no good. Source: common practice. Roots are left alone while a
/// bare-rooted top would wilt: in leaf for what drops its leaves, from leaf-out until the new growth has hardened for what keeps them.
/// Soft tips of what shoots once a year can be taken only until they harden.
/// </summary>
/// <param name="Kind">The species.</param>
/// <param name="From">The first day of that part.</param>
/// <param name="Until">The last day of it.</param>
/// <param name="Begins">The stage that begins it.</param>
/// <param name="Ends">The stage that ends it.</param>
public sealed record WorkSeason(TreeKind Kind, LocalDate From, LocalDate Until, Stage Begins, Stage Ends)
{
    /// <summary>Looks at some days.</summary>
    /// <param name="work">The kind of work.</param>
    /// <param name="kind">The species.</param>
    /// <param name="days">The days on which it may be done.</param>
    /// <returns>The wrong part of the year in which all of these days lie; null when one of them does not, for other work, and where habit or stages are not known.</returns>
    public static WorkSeason? Wrong(TaskKind work, TreeKind kind, DateInterval days)
    {
        if (Stages(work, kind) is not var (begins, ends))
        {
            return null;
        }

        for (var year = days.Start.Year - 1; year <= days.Start.Year; year++)
        {
            if (kind.Year.Onset(begins, year) is { } first && Next(kind, ends, first.End) is { } last && days.Start >= first.End && days.End < last)
            {
                return new WorkSeason(kind, first.End, last.PlusDays(-1), begins, ends);
            }
        }

        return null;
    }

    private static (Stage Begins, Stage Ends)? Stages(TaskKind work, TreeKind kind) => (work, kind.Habit) switch
    {
        (TaskKind.Repot or TaskKind.RootPrune, LeafHabit.Deciduous or LeafHabit.DeciduousConifer) => (Stage.LeafOut, Stage.LeafColour),
        (TaskKind.Repot or TaskKind.RootPrune, LeafHabit.Evergreen or LeafHabit.Conifer) => (Stage.LeafOut, Stage.HardenOff),
        (TaskKind.Pinch, not (null or LeafHabit.Tropical)) when kind.Flush == Flush.Single => (Stage.HardenOff, Stage.BudBreak),
        _ => null,
    };

    private static LocalDate? Next(TreeKind kind, Stage stage, LocalDate after)
    {
        for (var year = after.Year - 1; year <= after.Year + 1; year++)
        {
            if (kind.Year.Onset(stage, year) is { } onset && onset.Start > after)
            {
                return onset.Start;
            }
        }

        return null;
    }
}
