using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Care;
using GroveSpec.Model.Species;
using GroveSpec.Model.Tasks;
using GroveSpec.Syntax.Parsing;

namespace GroveSpec.Checks.Rules;

/// <summary>Leaves taken of a species that makes no new ones, and stages that a species does not have.</summary>
internal sealed class UnfitForSpecies : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "unfit-for-species",
        Severity = Severity.Warning,
        Meaning = "Work does not suit the species, or waits on a stage that the species does not have.",
        Explanation = "A conifer that loses its needles, and a tree that shoots only once a year, makes no new ones before the next spring and may lose the branch or its life. A tree that keeps its leaves has no leaf-colour and no leaf-fall, and one without a cold rest has no bud-break: work that waits on such a stage never gets a date.",
        Source = "common practice",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        foreach (var work in context.Work)
        {
            var isOver = !work.Dated.Task.Done.IsEmpty && !work.Repeats;
            foreach (var kind in isOver ? [] : work.Kinds)
            {
                if (work.Kind == TaskKind.Defoliate && Fitness.StandsDefoliation(kind) == false)
                {
                    yield return WorkDraft.Of(context, Description, work, $"{WorkDraft.Name(work)} takes the leaves of {kind.Said}, which {Why(kind)}. Thin or pinch instead, and leave the rest of its leaves on.", work.Dated.Task.Kind.Origin);
                }

                foreach (var (clause, stage) in Fitness.StagesItLacks(work.Dated.Task.Times, kind))
                {
                    yield return WorkDraft.Of(context, Description, work, $"{WorkDraft.Name(work)} names {KnownWords.Stages[(int)stage]}, but {kind.Said} {Keeps(kind)} and has no such stage, so it gets no date. Name a season, a month or a day instead.", clause.Origin);
                }
            }
        }
    }

    private static string Why(TreeKind kind) => kind.Habit switch
    {
        LeafHabit.Conifer or LeafHabit.DeciduousConifer => "is a conifer and lives on the needles it has",
        LeafHabit.Evergreen => "keeps its leaves for years and lives on them",
        _ => "shoots only once a year and makes no new ones before spring",
    };

    private static string Keeps(TreeKind kind) => kind.Habit switch
    {
        LeafHabit.Tropical => "has no cold rest",
        LeafHabit.Conifer => "keeps its needles",
        _ => "keeps its leaves",
    };
}
