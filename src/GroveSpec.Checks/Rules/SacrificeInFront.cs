using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Care;
using GroveSpec.Model.Judgement;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Tasks;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Checks.Rules;

/// <summary>A sacrifice branch on the side that the viewer sees.</summary>
internal sealed class SacrificeInFront : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "sacrifice-in-front",
        Severity = Severity.Warning,
        Limit = new(90, ToleranceUnit.Degrees, 10, 180),
        Meaning = "A sacrifice branch stands on the side that the viewer sees.",
        Explanation = "A sacrifice branch thickens the trunk below it and leaves a scar when it comes off, which takes years to close. Low and on the back it does not show. The measure is the angle between the side the branch faces and the bearing of the viewer: at 0 degrees it points straight at them, at 90 its scar is seen edge-on.",
        Source = "common practice",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        var viewer = context.Planting.Viewed?.From ?? Bearing.Front;
        foreach (var (work, facing) in Facing(context))
        {
            var angle = Sacrifices.FromViewer(facing.Side, viewer).Degrees;
            if (angle < limit)
            {
                var back = viewer.Opposite == Bearing.Back ? "facing back" : $"facing {viewer.Opposite}";
                var finding = WorkDraft.Of(context, Description, work, $"The branch of {WorkDraft.Name(work)} on {WorkDraft.Trunks(work)} stands {LengthWording.Say(angle, 0)} deg from the viewer's side, and its scar will show. Choose one on the back ({back}), or let it stand with a reason.", facing.Origin);
                yield return finding with
                {
                    Measured = angle,
                    Limit = limit,
                    Unit = "deg",
                    Weight = -angle,
                    Remedies = [new Remedy("choose a branch on the back", [new TextEdit(finding.Place, back)]), .. finding.Remedies],
                };
            }
        }
    }

    /// <summary>The sacrifice branches of which the file says on which side they stand.</summary>
    /// <param name="context">The planting.</param>
    /// <returns>The work and the side.</returns>
    internal static IEnumerable<(Work Work, TaskDetail.Facing Facing)> Facing(CheckContext context)
    {
        foreach (var work in context.Work)
        {
            if (work.Kind == TaskKind.Sacrifice && work.Dated.Task.Details.OfType<TaskDetail.Facing>().FirstOrDefault() is { } facing)
            {
                yield return (work, facing);
            }
        }
    }
}
