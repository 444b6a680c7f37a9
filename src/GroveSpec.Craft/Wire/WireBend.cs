using GroveSpec.Model.Quantities;
using GroveSpec.Model.Tasks;

namespace GroveSpec.Craft.Wire;

/// <summary>What a bend asks of the wood and of the wire. It compares, and promises nothing.</summary>
public sealed record WireBend
{
    /// <summary>The bend as the file says it.</summary>
    public required TaskDetail.Bend Stated { get; init; }

    /// <summary>The length of trunk over which it is spread: as stated, else the wired part.</summary>
    public required Length Over { get; init; }

    /// <summary>The radius into which the trunk's axis is bent.</summary>
    public required Length Radius { get; init; }

    /// <summary>How far the outer fibres are stretched.</summary>
    public required Proportion Strain { get; init; }

    /// <summary>The wood it is held against.</summary>
    public required GreenWood Wood { get; init; }

    /// <summary>The limit of the species' profile; null when it has none.</summary>
    public Proportion? SpeciesLimit { get; init; }

    /// <summary>What green wood pushes back with at this strain, and at most at the strain at which it breaks in a test: of its softest, usual and stiffest.</summary>
    public required (BendingMoment Softest, BendingMoment Usual, BendingMoment Stiffest) OfWood { get; init; }

    /// <summary>The most that the wire bears, straight and as soft as it was bought.</summary>
    public required BendingMoment OfWire { get; init; }

    /// <summary>The single wire of the same metal that would bear as much as the usual wood.</summary>
    public required Length Balancing { get; init; }

    /// <summary>What the wire would keep of its bend alone.</summary>
    public required Proportion KeptAlone { get; init; }

    /// <summary>The strain that a bend is spread or parted to stay under: the species' limit, else the strain at which the tested wood broke.</summary>
    public Proportion Reference => SpeciesLimit ?? Wood.BreakingStrain;

    /// <summary>The length over which the same bend would stay under <see cref="Reference"/>.</summary>
    public required Length LengthForReference { get; init; }

    /// <summary>In how many passes of <see cref="Reference"/> each the bend can be reached where it stands; 1 for one that stays under it.</summary>
    public int Passes => Math.Max(1, (int)Math.Min(1000, Math.Ceiling((Strain.Share / Reference.Share) - 1e-9)));

    /// <summary>The side on which a turn of the wire belongs at the middle of the bend: outside, away from where it is bent to. Source: common practice.</summary>
    public Bearing LoopSide => Stated.Toward.Opposite;
}
