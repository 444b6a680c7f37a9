namespace GroveSpec.Checks.Ground;

/// <summary>A finding that a newcomer would raise at a place.</summary>
/// <param name="Check">The check that finds it.</param>
/// <param name="Trunks">Its trunks, as a set of places in the order of their names.</param>
internal readonly record struct GroundReason(CheckDescription Check, ulong Trunks);
