using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Wire;

/// <summary>The wire along the wired part of a trunk.</summary>
public sealed record WireWinding
{
    /// <summary>The wired part as far as the trunk reaches: where it begins and ends, along the trunk from the soil.</summary>
    public required (Length From, Length To) Part { get; init; }

    /// <summary>Whether the file's part goes beyond the tip and was cut there.</summary>
    public required bool IsCutAtTip { get; init; }

    /// <summary>The length of one wire along the part.</summary>
    public required Length Helix { get; init; }

    /// <summary>What its lower end holds on to.</summary>
    public required WireAnchor Anchor { get; init; }

    /// <summary>The length that goes into the anchor.</summary>
    public required Length AnchorLength { get; init; }

    /// <summary>The turns on the part, a bare number.</summary>
    public required double Turns { get; init; }

    /// <summary>How far a turn climbs at the lower and at the upper end.</summary>
    public required (Length Lower, Length Upper) Pitch { get; init; }

    /// <summary>How many wires lie side by side.</summary>
    public required int Strands { get; init; }

    /// <summary>To what length each wire is cut: helix and anchor, rounded up to a whole centimetre.</summary>
    public Length Cut => Length.FromMillimetres(Math.Ceiling((Helix + AnchorLength).Millimetres / 10) * 10);

    /// <summary>What all wires weigh, cut.</summary>
    public required Mass Mass { get; init; }
}
