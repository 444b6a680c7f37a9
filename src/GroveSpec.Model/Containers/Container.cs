using System.Collections.Immutable;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Model.Containers;

/// <summary>What the planting stands in. The origin of the plan is its centre, but for a slab, whose points are given. Closed.</summary>
public abstract record Container
{
    private Container()
    {
    }

    /// <summary>How deep the soil is, from the rim down; above zero.</summary>
    public required Length Depth { get; init; }

    /// <summary>Where it was written.</summary>
    public required Origin Origin { get; init; }

    /// <summary>An ellipse.</summary>
    /// <param name="Width">From left to right; above zero.</param>
    /// <param name="Breadth">From front to back; above zero.</param>
    public sealed record Oval(Length Width, Length Breadth) : Container;

    /// <summary>A rectangle with its sides along the axes.</summary>
    /// <param name="Width">From left to right; above zero.</param>
    /// <param name="Breadth">From front to back; above zero.</param>
    public sealed record Rectangle(Length Width, Length Breadth) : Container;

    /// <summary>A circle.</summary>
    /// <param name="Across">Its diameter; above zero.</param>
    public sealed record Round(Length Across) : Container;

    /// <summary>A stone slab with an outline of its own.</summary>
    /// <param name="Outline">At least three corners in order round the edge, either way; the last joins the first.</param>
    public sealed record Slab(ImmutableArray<PlanPoint> Outline) : Container;
}
