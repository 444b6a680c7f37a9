using GroveSpec.Model.Quantities;

namespace GroveSpec.Model.Readings;

/// <summary>What was read of one trunk on one day; what was not read is null.</summary>
public sealed record TrunkReading
{
    /// <summary>The trunk's name, known or not.</summary>
    public required string Trunk { get; init; }

    /// <summary>Where it was written.</summary>
    public required Origin Origin { get; init; }

    /// <summary>The diameter above the flare; from a girth, girth/π.</summary>
    public Stated<Length>? Diameter { get; init; }

    /// <summary>Whether the diameter was read as a girth.</summary>
    public bool IsGirth { get; init; }

    /// <summary>The height from the soil.</summary>
    public Stated<Length>? Height { get; init; }

    /// <summary>The radius of the crown.</summary>
    public Stated<Length>? Crown { get; init; }
}
