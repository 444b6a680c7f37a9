using System.Collections.Immutable;

namespace GroveSpec.Model.Roles;

/// <summary>What some trunks are meant to become.</summary>
public sealed record Role
{
    /// <summary>Its name, unique among the roles of a bound planting.</summary>
    public required string Name { get; init; }

    /// <summary>Where the statement was written.</summary>
    public required Origin Origin { get; init; }

    /// <summary>Whether it came from another file through <c>use</c>; such a role need not be played by anyone.</summary>
    public bool IsShared { get; init; }

    /// <summary>The figure meant; null when left open.</summary>
    public Stated<Form>? Form { get; init; }

    /// <summary>How strongly it may grow; null when left open.</summary>
    public Stated<Vigour>? Vigour { get; init; }

    /// <summary>Sizes to reach by a year.</summary>
    public ImmutableArray<Aim> Aims { get; init; } = [];

    /// <summary>Sizes to stay under.</summary>
    public ImmutableArray<Ceiling> Ceilings { get; init; } = [];

    /// <summary>Its place in the order of size, 1 the largest; null when left open.</summary>
    public Stated<int>? Rank { get; init; }

    /// <summary>What it tells, in the grower's words.</summary>
    public Stated<string>? Story { get; init; }
}
