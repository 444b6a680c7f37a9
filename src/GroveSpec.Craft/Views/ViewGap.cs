using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Views;

/// <summary>The gap between two trunks that follow each other from left to right in the view.</summary>
/// <param name="Left">The trunk on the left.</param>
/// <param name="Right">The trunk on the right.</param>
public sealed record ViewGap(SeenTrunk Left, SeenTrunk Right)
{
    /// <summary>From the middle of one base to the middle of the other, in the picture; never negative.</summary>
    public Length Centres => Right.Foot.Across - Left.Foot.Across;

    /// <summary>From bark to bark in the picture; negative where they overlap.</summary>
    public Length Clear => Right.Cover.Left - Left.Cover.Right;
}
