using System.Collections.Immutable;

namespace GroveSpec.Craft.Survey;

/// <summary>Readings of which some are off, and the others do not tell which.</summary>
/// <param name="Off">How many of them are, from 1; null where that is not told either.</param>
/// <param name="Readings">The readings, the likeliest first, each with what it should have read if it is off.</param>
/// <param name="OrPlaceOf">The trunks whose place in the file may be wrong instead; none where readings alone explain it.</param>
public sealed record DoubtfulReadings(int? Off, ImmutableArray<FittedReading> Readings, ImmutableArray<string> OrPlaceOf);
