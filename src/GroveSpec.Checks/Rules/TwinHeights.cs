using GroveSpec.Model.Judgement;

namespace GroveSpec.Checks.Rules;

/// <summary>Neighbours of the same height.</summary>
internal sealed class TwinHeights : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "twin-heights",
        Severity = Severity.Warning,
        Limit = new(8, ToleranceUnit.Percent, 0.1, 50),
        Meaning = "Neighbouring trunks are as tall as each other.",
        Explanation = "Tops of one height make the outline of a hedge and hide which trunk leads. Neighbours that are alike by way of each other are told together.",
        Source = "common practice",
        IsComposition = true,
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit) => TwinSizes.Look(
        context, limit, Description, "height", trunk => trunk.Height?.Value, "height", "Cut one back or let another run up until they differ");
}
