using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Views;

/// <summary>A standing trunk as the viewer sees it.</summary>
public sealed record SeenTrunk
{
    /// <summary>The trunk.</summary>
    public required TrunkState Trunk { get; init; }

    /// <summary>The centre of its base in the picture.</summary>
    public required ViewedPoint Foot { get; init; }

    /// <summary>What its base covers of the picture's width, above the flare; without width while its diameter is not known.</summary>
    public required ViewInterval Cover { get; init; }

    /// <summary>Its place from near to far among the trunks of the view, 0 for the nearest; equals in the order of the file.</summary>
    public required int Nearness { get; init; }

    /// <summary>
    /// The share of its base's width in the picture that nearer trunks cover together; null while its diameter is not known.
    /// Trunks without a known diameter cover nothing.
    /// </summary>
    public required Proportion? Hidden { get; init; }

    /// <summary>Its tip in the picture; null while its height is not known, or when it leans past the eye.</summary>
    public required ViewedPoint? Top { get; init; }

    /// <summary>The trunk's name.</summary>
    public string Name => Trunk.Name;
}
