using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Times;

namespace GroveSpec.Model.Trunks;

/// <summary>One trunk as the file states it. What is not stated is null; nothing is guessed here.</summary>
public sealed record Trunk
{
    /// <summary>Its name, unique among the trunks of a bound planting.</summary>
    public required string Name { get; init; }

    /// <summary>Where the statement was written.</summary>
    public required Origin Origin { get; init; }

    /// <summary>The centre of its base at the soil; null when tape readings place it.</summary>
    public Stated<PlanPoint>? At { get; init; }

    /// <summary>Its diameter above the root flare, above zero; from a girth, girth/π.</summary>
    public Stated<Length>? Diameter { get; init; }

    /// <summary>Whether <see cref="Diameter"/> was measured as a girth, with a tape round the trunk.</summary>
    public bool IsGirth { get; init; }

    /// <summary>From the soil to the tip, upright, above zero.</summary>
    public Stated<Length>? Height { get; init; }

    /// <summary>How far and which way a straight trunk leans; null when upright or when <see cref="Line"/> is given.</summary>
    public Stated<Lean>? Lean { get; init; }

    /// <summary>The run of the trunk from soil to tip, absolute places; empty when it is straight.</summary>
    public ImmutableArray<SpacePoint> Line { get; init; } = [];

    /// <summary>Where the run was written; null when there is none.</summary>
    public Origin? LineOrigin { get; init; }

    /// <summary>The radius of its crown seen from above, above zero.</summary>
    public Stated<Length>? Crown { get; init; }

    /// <summary>The role it plays, by name; the name may be unknown.</summary>
    public Stated<string>? Role { get; init; }

    /// <summary>Its species where it differs from the planting's.</summary>
    public Stated<string>? Species { get; init; }

    /// <summary>The year in which it was raised.</summary>
    public Stated<int>? Raised { get; init; }

    /// <summary>When it is to be planted or grown; null for one that is there.</summary>
    public Stated<Moment>? Planned { get; init; }

    /// <summary>When it was, or is to be, taken out.</summary>
    public Stated<Moment>? Removed { get; init; }

    /// <summary>Whether the file says that no suggestion may move it. See also <see cref="Planting.IsFixed"/>.</summary>
    public Origin? Fixed { get; init; }
}
