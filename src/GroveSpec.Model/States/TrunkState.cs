using GroveSpec.Model.Quantities;
using GroveSpec.Model.Trunks;

namespace GroveSpec.Model.States;

/// <summary>A trunk on a day.</summary>
public sealed record TrunkState
{
    /// <summary>The trunk as stated.</summary>
    public required Trunk Trunk { get; init; }

    /// <summary>Whether it is there.</summary>
    public required Presence Presence { get; init; }

    /// <summary>The centre of its base; null while it is not known.</summary>
    public PlanPoint? Place { get; init; }

    /// <summary>The newest diameter on or before the day; null while none is known.</summary>
    public Stated<Length>? Diameter { get; init; }

    /// <summary>The newest height on or before the day; null while none is known.</summary>
    public Stated<Length>? Height { get; init; }

    /// <summary>The newest crown radius on or before the day; null while none is known.</summary>
    public Stated<Length>? Crown { get; init; }

    /// <summary>The trunk's name.</summary>
    public string Name => Trunk.Name;
}
