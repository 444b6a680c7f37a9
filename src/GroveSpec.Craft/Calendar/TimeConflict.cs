using System.Collections.Immutable;

namespace GroveSpec.Craft.Calendar;

/// <summary>Clauses of a <see cref="TimeNetwork"/> that cannot hold together. Without any one of them the others can.</summary>
/// <param name="Clauses">Their numbers, sorted.</param>
/// <param name="DaysShort">By how many days they miss each other, at least one.</param>
internal readonly record struct TimeConflict(ImmutableArray<int> Clauses, int DaysShort);
