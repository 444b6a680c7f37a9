using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Plan;

/// <summary>Which trunks of a plan stand where tape readings put them: a dot in the middle of each, as a surveyor marks a place that was found by measuring.</summary>
internal sealed class TapedPlaces
{
    private const double DotRadius = 1.8;

    private readonly DrawnTrunk[] dotted;

    private TapedPlaces(DrawnTrunk[] dotted, string? meaning) => (this.dotted, Meaning) = (dotted, meaning);

    /// <summary>What the dots mean, in a sentence; null where no place comes from readings.</summary>
    public string? Meaning { get; }

    /// <summary>Whether any dot is drawn.</summary>
    public bool HasDots => dotted.Length > 0;

    /// <summary>Finds them.</summary>
    /// <param name="layout">The plan.</param>
    /// <returns>Those places; where all are such a sentence says so without dots, and in a wood of more than a thousand trunks nothing is said.</returns>
    public static TapedPlaces Of(PlanLayout layout)
    {
        var taped = layout.Detail == PlanDetail.Least ? [] : Array.FindAll(layout.Trunks, trunk => trunk.State.Trunk.At is null);
        return taped.Length == 0 ? new([], null)
            : taped.Length == layout.Trunks.Length ? new([], "All places come from tape readings.")
            : new(taped, taped.Length == 1 ? "The trunk with a dot in the middle stands where tape readings put it." : "Trunks with a dot in the middle stand where tape readings put them.");
    }

    /// <summary>Writes the dots.</summary>
    /// <param name="svg">Where to.</param>
    public void Write(SvgWriter svg)
    {
        foreach (var trunk in dotted)
        {
            svg.Circle("gs-taped", trunk.X, trunk.Y, Math.Min(DotRadius, trunk.Radius * 0.5), trunk.Origin);
        }
    }
}
