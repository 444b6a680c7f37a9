using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Calendar;

/// <summary>One bound on how far two days of a <see cref="TimeNetwork"/> lie apart.</summary>
/// <param name="From">The day that is counted from, by its number in the network.</param>
/// <param name="To">The day that is bounded.</param>
/// <param name="Count">How many units are counted on, negative for back.</param>
/// <param name="Unit">The unit. Months and years have their lengths in the calendar, so where they lead depends on where they begin.</param>
/// <param name="IsAtLeast">Whether <paramref name="To"/> comes then or later; else then or earlier.</param>
/// <param name="Clause">The number of the clause that says so.</param>
internal readonly record struct TimeLink(int From, int To, int Count, TimeUnit Unit, bool IsAtLeast, int Clause);
