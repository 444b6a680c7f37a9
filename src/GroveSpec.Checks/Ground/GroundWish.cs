using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Ground;

/// <summary>For which trunk ground is asked.</summary>
/// <param name="Diameter">The thickness of one more trunk; null where a trunk is named.</param>
/// <param name="Height">Its height; null where it is not known.</param>
/// <param name="Of">The name of a trunk that stands or is planned, taken out first, with its own sizes where none is given; null for one more.</param>
public sealed record GroundWish(Length? Diameter, Length? Height, string? Of);
