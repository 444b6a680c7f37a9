using GroveSpec.Model.Quantities;

namespace GroveSpec.Model.Trunks;

/// <summary>A straight lean.</summary>
/// <param name="FromUpright">From the upright, from 0 up to but not including 90 degrees.</param>
/// <param name="Toward">The bearing toward which the tip leans.</param>
public readonly record struct Lean(Angle FromUpright, Bearing Toward);
