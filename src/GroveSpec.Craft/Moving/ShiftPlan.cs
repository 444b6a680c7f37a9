using System.Collections.Immutable;

namespace GroveSpec.Craft.Moving;

/// <summary>Trunks shifted, and what is left amiss.</summary>
/// <param name="Shifts">The trunks that are shifted, with their ways to the right and to the back in millimetres, in the order of the trunks.</param>
/// <param name="Weight">The weight of what is left amiss; 0 when nothing is.</param>
/// <param name="Distance">The sum of the ways, in millimetres.</param>
public sealed record ShiftPlan(ImmutableArray<(Movable Movable, double Rightward, double Backward)> Shifts, double Weight, double Distance);
