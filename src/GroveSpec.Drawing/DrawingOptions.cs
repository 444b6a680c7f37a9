using GroveSpec.Model.Quantities;

namespace GroveSpec.Drawing;

/// <summary>How a plate is drawn.</summary>
public sealed record DrawingOptions
{
    /// <summary>The options when nobody says otherwise.</summary>
    public static readonly DrawingOptions Default = new();

    /// <summary>The units in which lengths are written.</summary>
    public UnitSystem Units { get; init; } = UnitSystem.Metric;

    /// <summary>Whether the plan carries a dial of bearings.</summary>
    public bool ShowBearings { get; init; }

    /// <summary>Whether the front shows what nearer trunks hide, as broken lines.</summary>
    public bool ShowHidden { get; init; }

    /// <summary>
    /// Rules such as <c>@font-face</c> that go first into the plate's style block, to carry the faces with a plate that must stand alone;
    /// empty to name the faces only. They come from the program, never from a file.
    /// </summary>
    public string FaceRules { get; init; } = "";

    /// <summary>Whether the plate is meant for a sheet that is white itself, such as printed paper, so that no tint of its own lies on it.</summary>
    public bool IsOnWhite { get; init; }

    /// <summary>Whether what was found is told below the plate in sentences; its numbers stand in the drawing either way.</summary>
    public bool TellsFindings { get; init; } = true;

    /// <summary>What stands as the plate's heading where the planting's name stands above it already; null for the name itself.</summary>
    public string? Heading { get; init; }

    /// <summary>
    /// What the ids inside the plate begin with, a plain word; empty for the plate's own name.
    /// Two plates of one kind in one page need two prefixes.
    /// </summary>
    public string IdPrefix { get; init; } = "";
}
