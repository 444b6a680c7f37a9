using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Care;
using GroveSpec.Model.Species;
using GroveSpec.Model.Tasks;

namespace GroveSpec.Checks.Rules;

/// <summary>Work on the roots while the top would wilt, and pinching when nothing is soft.</summary>
internal sealed class OutOfSeason : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "out-of-season",
        Severity = Severity.Warning,
        Meaning = "Work on roots or soft tips is planned wholly in a part of the year in which the species does not stand it.",
        Explanation = "A tree in leaf needs all its roots: what drops its leaves is repotted before they open or after they turn, what keeps them not between leaf-out and harden-off. What shoots once a year can be pinched only until its shoots are hard; after that there is nothing soft to take. Trees without a cold rest, and such as drop their leaves only in hard winters, are left out. It is told only where every day of the plan lies in the wrong part.",
        Source = "common practice",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        foreach (var work in context.Work)
        {
            foreach (var kind in work.Kinds)
            {
                var wrong = work.ToCome.Select(days => WorkSeason.Wrong(work.Kind, kind, days)).FirstOrDefault(season => season is not null);
                if (wrong is not null && (!work.Repeats || work.ToCome.All(days => WorkSeason.Wrong(work.Kind, kind, days) is not null)))
                {
                    yield return WorkDraft.Of(context, Description, work, Message(work, wrong));
                    break;
                }
            }
        }
    }

    private static string Message(Work work, WorkSeason wrong)
    {
        var (from, until) = (DayWording.Say(wrong.From), DayWording.Say(wrong.Until));
        var why = work.Kind == TaskKind.Pinch
            ? $"the shoots of {wrong.Kind.Said}, which shoots once a year, are hard from about {from}, and nothing soft is left to take until spring. Pinch it while they open"
            : wrong.Kind.Habit is LeafHabit.Deciduous or LeafHabit.DeciduousConifer
                ? $"{wrong.Kind.Said} is in full leaf from about {from} to {until}, and with cut roots it would wilt. Do it before the leaves open, or once they turn"
                : $"the new growth of {wrong.Kind.Said} is soft from about {from} to {until}, and with cut roots it would wilt. Do it before that, or once it has hardened";
        return $"{WorkDraft.Name(work)} on {WorkDraft.Trunks(work)} comes at the wrong time: {why}.";
    }
}
