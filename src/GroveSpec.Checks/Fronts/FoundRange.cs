using GroveSpec.Craft.Fronts;

namespace GroveSpec.Checks.Fronts;

/// <summary>What is found from all bearings of a range.</summary>
/// <param name="Range">The range.</param>
/// <param name="Weight">The weight of what is found.</param>
public readonly record struct FoundRange(BearingRange Range, double Weight);
