using GroveSpec.Checks.Judging;
using GroveSpec.Model.Judgement;

namespace GroveSpec.Checks.Rules;

/// <summary>A wire that is thick against its trunk.</summary>
internal sealed class WireTooThick : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "wire-too-thick",
        Severity = Severity.Hint,
        Limit = new(45, ToleranceUnit.Percent, 34, 100),
        Meaning = "A wire is thick against the trunk where it works.",
        Explanation = "Common practice takes a wire of about a third of the trunk's thickness, measured where it bends. Thicker wire is hard to lay without crushing the bark, and it bends the trunk where the hand bends the wire. Two wires side by side, and copper, are taken as the one aluminium wire that bends as hard.",
        Source = "common practice for the third; two wires and copper by the plastic moment of a round bar, σd³/6, with yield stresses from a datasheet of soft aluminium and, for annealed copper, from Smithells Metals Reference Book; green wood from FPL-GTR-190 (Wood Handbook), table 5-3a",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        foreach (var plan in WireDraft.Open(context))
        {
            if (plan is { Stated: not null, Share: { } share } && share.Percent > limit)
            {
                yield return WireDraft.OfSize(context, Description, plan, limit, other => other.Percent <= limit);
            }
        }
    }
}
