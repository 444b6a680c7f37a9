using GroveSpec.Model.Judgement;

namespace GroveSpec.Checks.Rules;

/// <summary>Neighbours of the same thickness.</summary>
internal sealed class TwinDiameters : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "twin-diameters",
        Severity = Severity.Warning,
        Limit = new(8, ToleranceUnit.Percent, 0.1, 50),
        Meaning = "Neighbouring trunks are as thick as each other.",
        Explanation = "Thickness tells age. Two neighbours of one thickness read as a pair of one year, and the eye goes to and fro between them. Neighbours that are alike by way of each other are told together.",
        Source = "common practice",
        IsComposition = true,
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit) => TwinSizes.Look(
        context, limit, Description, "diameter", trunk => trunk.Diameter?.Value, "thickness", "Let one thicken and hold the other back until they differ");
}
