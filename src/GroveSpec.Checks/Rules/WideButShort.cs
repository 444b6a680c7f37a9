using GroveSpec.Model.Judgement;

namespace GroveSpec.Checks.Rules;

/// <summary>A trunk is wide but short against the others, and no role's form explains it.</summary>
internal sealed class WideButShort : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "wide-but-short",
        Severity = Severity.Warning,
        Limit = new(8, ToleranceUnit.Percent, 0.1, 90),
        Meaning = "A trunk is wider than others and yet shorter, and no role with a form says that this is meant.",
        Explanation = "Unless a concept says otherwise, wide is old and tall. A trunk that is wide but short breaks the order of ages; salt, snow or a broken top may be the reason, and then the file should say so with a role of form stout. Ranks by diameter are held against ranks by height; two sizes must differ by the limit to count, and of many broken pairs the one trunk that is at odds with most is told.",
        Source = "common practice",
        IsComposition = true,
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit) => SizesOutOfOrder.Look(context, limit, Description, isWide: true);
}
