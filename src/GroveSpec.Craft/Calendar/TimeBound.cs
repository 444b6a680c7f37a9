namespace GroveSpec.Craft.Calendar;

/// <summary>One bound on a day of a <see cref="TimeNetwork"/> by the calendar itself.</summary>
/// <param name="Node">The day, by its number in the network.</param>
/// <param name="Day">The bound, in days as <see cref="DayCount"/> numbers them.</param>
/// <param name="IsEarliest">Whether it comes then or later; else then or earlier.</param>
/// <param name="Clause">The number of the clause that says so.</param>
internal readonly record struct TimeBound(int Node, int Day, bool IsEarliest, int Clause);
