using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Stand;

/// <summary>The nearest neighbour of a stem.</summary>
/// <param name="Stem">The stem.</param>
/// <param name="Nearest">Its nearest; of two as near the first clockwise from the back left.</param>
/// <param name="Distance">From centre to centre.</param>
public readonly record struct NearestOfStem(TrunkState Stem, TrunkState Nearest, Length Distance);
