using GroveSpec.Craft.Year;
using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Craft.Calendar;

/// <summary>A moment that a task's time names, and what it comes to. At most one of the three is known.</summary>
/// <param name="Clause">The clause that names it.</param>
/// <param name="Moment">The moment.</param>
public sealed record TaskMoment(TimeClause Clause, Moment Moment)
{
    /// <summary>Its days, of a day, a month, a year or a season; null outside the years that can be reckoned with.</summary>
    public DateInterval? Days { get; init; }

    /// <summary>The coming of a stage, with where it comes from; null where the site or the species does not tell.</summary>
    public StageOnset? Onset { get; init; }

    /// <summary>The other task; null where there is none of that name.</summary>
    public DatedTask? Other { get; init; }
}
