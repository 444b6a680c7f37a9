using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Views;

/// <summary>A place as the eye sees it, on the upright picture plane through the plan's origin that faces the viewer.</summary>
/// <param name="Across">To the viewer's right of the origin.</param>
/// <param name="Up">Above the soil.</param>
/// <param name="Depth">From the eye, level and straight ahead; the picture's scale there is the viewing distance divided by it.</param>
public readonly record struct ViewedPoint(Length Across, Length Up, Length Depth);
