using GroveSpec.Model.Quantities;

namespace GroveSpec.Model.Roles;

/// <summary>A size to reach.</summary>
/// <param name="Dimension">Which size.</param>
/// <param name="Target">How large, above zero.</param>
/// <param name="ByYear">By the end of which year.</param>
/// <param name="Origin">Where it was written.</param>
public sealed record Aim(Dimension Dimension, Length Target, int ByYear, Origin Origin);
