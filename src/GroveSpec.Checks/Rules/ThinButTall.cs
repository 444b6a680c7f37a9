using GroveSpec.Model.Judgement;

namespace GroveSpec.Checks.Rules;

/// <summary>A trunk is tall but thin against the others, and no role's form explains it.</summary>
internal sealed class ThinButTall : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "thin-but-tall",
        Severity = Severity.Warning,
        Limit = new(8, ToleranceUnit.Percent, 0.1, 90),
        Meaning = "A trunk is taller than others and yet thinner, and no role with a form says that this is meant.",
        Explanation = "A thin trunk that overtops thicker ones looks drawn up by shade. Where that is the story, a role of form slender says so. Ranks by height are held against ranks by diameter; two sizes must differ by the limit to count, and of many broken pairs the one trunk that is at odds with most is told.",
        Source = "common practice",
        IsComposition = true,
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit) => SizesOutOfOrder.Look(context, limit, Description, isWide: false);
}
