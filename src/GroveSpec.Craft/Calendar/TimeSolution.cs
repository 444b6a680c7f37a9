using System.Collections.Immutable;

namespace GroveSpec.Craft.Calendar;

/// <summary>What follows from a <see cref="TimeNetwork"/>.</summary>
/// <param name="Earliest">The earliest day of each node; null where nothing bounds it. Empty where there are conflicts.</param>
/// <param name="Latest">The latest day of each node; null where nothing bounds it. Empty where there are conflicts.</param>
/// <param name="Conflicts">What cannot hold together, no two with a clause in common; not every one there is.</param>
internal sealed record TimeSolution(int?[] Earliest, int?[] Latest, ImmutableArray<TimeConflict> Conflicts);
