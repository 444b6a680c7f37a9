using GroveSpec.Model.Species;
using GroveSpec.Model.Times;

namespace GroveSpec.Craft.Care;

/// <summary>What a species does not stand, or does not have. Source: common practice.</summary>
public static class Fitness
{
    /// <summary>Whether a species makes new leaves in the same year when its leaves are taken.</summary>
    /// <param name="kind">The species.</param>
    /// <returns>False for conifers, for what keeps its leaves and rests in winter, and for what shoots once a year; null where leaves are not known.</returns>
    public static bool? StandsDefoliation(TreeKind kind) => kind.Habit switch
    {
        null => null,
        LeafHabit.Conifer or LeafHabit.DeciduousConifer or LeafHabit.Evergreen => false,
        _ => kind.Flush != Flush.Single,
    };

    /// <summary>The stages that a task's times name and its species does not have.</summary>
    /// <param name="times">What is said of the times.</param>
    /// <param name="kind">The species.</param>
    /// <returns>Each clause with the stage; none where it is not known how the species carries its leaves.</returns>
    public static IEnumerable<(TimeClause Clause, Stage Stage)> StagesItLacks(IEnumerable<TimeClause> times, TreeKind kind)
    {
        if (kind.Habit is null)
        {
            yield break;
        }

        foreach (var clause in times)
        {
            Moment?[] moments = clause switch
            {
                TimeClause.During during => [during.Moment],
                TimeClause.FromTo span => [span.Start, span.End],
                TimeClause.After after => [after.Moment],
                TimeClause.Before before => [before.Moment],
                TimeClause.Until until => [until.Moment],
                _ => [],
            };
            foreach (var moment in moments.OfType<Moment.StageOfYear>())
            {
                if (!kind.Year.Has(moment.Stage) && kind.Year.Onset(moment.Stage, moment.Number) is null)
                {
                    yield return (clause, moment.Stage);
                }
            }
        }
    }
}
