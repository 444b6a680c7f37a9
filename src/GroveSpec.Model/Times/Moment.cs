using NodaTime;

namespace GroveSpec.Model.Times;

/// <summary>A point or band of time as a grower says it. Closed: only the forms nested here exist.</summary>
public abstract record Moment
{
    private Moment()
    {
    }

    /// <summary>One day.</summary>
    /// <param name="Date">The day.</param>
    public sealed record Day(LocalDate Date) : Moment;

    /// <summary>A whole month.</summary>
    /// <param name="Value">The month of its year.</param>
    public sealed record Month(YearMonth Value) : Moment;

    /// <summary>A whole year.</summary>
    /// <param name="Number">The year of the Gregorian calendar.</param>
    public sealed record Year(int Number) : Moment;

    /// <summary>A season, or a third of one.</summary>
    /// <param name="Part">Which third, or the whole.</param>
    /// <param name="Season">The season.</param>
    /// <param name="Number">The year; a winter belongs to the year in which it ends.</param>
    public sealed record SeasonOfYear(SeasonPart Part, Season Season, int Number) : Moment;

    /// <summary>A stage of the tree in a year.</summary>
    /// <param name="Stage">The stage.</param>
    /// <param name="Number">The year.</param>
    public sealed record StageOfYear(Stage Stage, int Number) : Moment;

    /// <summary>When another task is done.</summary>
    /// <param name="Task">The other task's name, known or not.</param>
    public sealed record OfTask(string Task) : Moment;
}
