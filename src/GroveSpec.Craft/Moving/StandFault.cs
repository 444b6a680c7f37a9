namespace GroveSpec.Craft.Moving;

/// <summary>One thing that is amiss with how trunks stand together. Trunks are places in <see cref="Composition.StandingTrunks.Trunks"/>.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Trunks">The trunks it is about, as a set of bits; none for the order in depth.</param>
/// <param name="First">A trunk of it: the one at one end, the left one, the thinner, the one at which two gaps meet, or the only one; −1 where there is none.</param>
/// <param name="Second">Another: the middle one, the thicker, or the near end of a gap; −1 where there is none.</param>
/// <param name="Third">The third: the other end; −1 where there is none.</param>
public readonly record struct StandFault(StandFaultKind Kind, ulong Trunks, int First, int Second = -1, int Third = -1);
