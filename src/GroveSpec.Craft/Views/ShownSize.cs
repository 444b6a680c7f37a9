using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Views;

/// <summary>The sizes with which a trunk is shown: those that are known, and assumed ones for the rest.</summary>
/// <param name="Diameter">Its diameter above the flare.</param>
/// <param name="IsDiameterAssumed">Whether its diameter is not known.</param>
/// <param name="Height">From the soil to the tip, upright.</param>
/// <param name="IsHeightAssumed">Whether its height is not known.</param>
/// <param name="Crown">The radius of its crown seen from above.</param>
/// <param name="IsCrownAssumed">Whether its crown is not known.</param>
public readonly record struct ShownSize(
    Length Diameter,
    bool IsDiameterAssumed,
    Length Height,
    bool IsHeightAssumed,
    Length Crown,
    bool IsCrownAssumed);
