using GroveSpec.Model.Quantities;

namespace GroveSpec.Model.Roles;

/// <summary>A size to stay under.</summary>
/// <param name="Dimension">Which size.</param>
/// <param name="Limit">What it must stay under, above zero.</param>
/// <param name="Origin">Where it was written.</param>
public sealed record Ceiling(Dimension Dimension, Length Limit, Origin Origin);
