using System.Collections.Immutable;
using NodaTime;

namespace GroveSpec.Model.Readings;

/// <summary>All that was read on one day, in the order written.</summary>
/// <param name="Date">The day.</param>
/// <param name="Readings">One for each trunk that was measured.</param>
/// <param name="Origin">Where the statement was written.</param>
public sealed record MeasuredDay(LocalDate Date, ImmutableArray<TrunkReading> Readings, Origin Origin);
