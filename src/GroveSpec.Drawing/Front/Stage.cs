using GroveSpec.Craft.Views;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Drawing.Front;

/// <summary>Where the picture plane lies on the page: from what the eye sees to points of the page, in px.</summary>
/// <param name="Frame">The viewer's eye.</param>
/// <param name="Scale">Pixels of the page for a millimetre in the picture plane.</param>
/// <param name="Left">The x of the plan's origin.</param>
/// <param name="Ground">The y of the soil at the plan's origin.</param>
internal sealed record Stage(ViewFrame Frame, double Scale, double Left, double Ground)
{
    /// <summary>Where a place in space appears.</summary>
    /// <param name="place">The place.</param>
    /// <returns>Its point on the page and the pixels of a millimetre at its depth; null when the eye cannot see it.</returns>
    public (Spot Spot, double Scale)? See(SpacePoint place) => Frame.See(place) is { } seen
        ? (At(seen), Scale * (Frame.Distance / seen.Depth))
        : null;

    /// <summary>Where a place in the picture appears.</summary>
    /// <param name="seen">The place in the picture.</param>
    /// <returns>Its point on the page.</returns>
    public Spot At(ViewedPoint seen) => new(
        Left + (seen.Across.Millimetres * Scale),
        Ground - (seen.Up.Millimetres * Scale));
}
