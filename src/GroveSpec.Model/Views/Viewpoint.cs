using GroveSpec.Model.Quantities;

namespace GroveSpec.Model.Views;

/// <summary>Where the viewer stands, and how depth is meant to be read.</summary>
public sealed record Viewpoint
{
    /// <summary>Where the statement was written.</summary>
    public required Origin Origin { get; init; }

    /// <summary>The bearing, from the origin, at which the viewer stands; the front when left out.</summary>
    public Bearing From { get; init; } = Bearing.Front;

    /// <summary>From the plan's origin to the eye, level; none when left out.</summary>
    public Length? Distance { get; init; }

    /// <summary>The eye above the soil; none when left out.</summary>
    public Length? EyeHeight { get; init; }

    /// <summary>Which size order the grower chose; none when left out.</summary>
    public DepthOrder? Depth { get; init; }
}
