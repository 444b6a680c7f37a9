using GroveSpec.Model.Quantities;

namespace GroveSpec.Model.Times;

/// <summary>One thing said about when a task is due. A task may carry several; all of them hold. Closed.</summary>
public abstract record TimeClause
{
    private TimeClause()
    {
    }

    /// <summary>Where it was written.</summary>
    public required Origin Origin { get; init; }

    /// <summary>Within a day, month, season or stage: <c>on</c> and <c>in</c>.</summary>
    /// <param name="Moment">When.</param>
    public sealed record During(Moment Moment) : TimeClause;

    /// <summary>Work that goes on from one moment to another, or a window with two ends.</summary>
    /// <param name="Start">From when.</param>
    /// <param name="End">To when; none while it is left open.</param>
    public sealed record FromTo(Moment Start, Moment? End) : TimeClause;

    /// <summary>Not before the moment has passed.</summary>
    /// <param name="Moment">The moment.</param>
    public sealed record After(Moment Moment) : TimeClause;

    /// <summary>Not once the moment has come.</summary>
    /// <param name="Moment">The moment.</param>
    public sealed record Before(Moment Moment) : TimeClause;

    /// <summary>So long after, or before, another task.</summary>
    /// <param name="Least">The least number of units, at least zero.</param>
    /// <param name="Most">The greatest number of units.</param>
    /// <param name="Unit">The unit of both.</param>
    /// <param name="IsAfter">True when after the other task, false when before it.</param>
    /// <param name="Task">The other task's name, known or not.</param>
    public sealed record Offset(int Least, int Most, TimeUnit Unit, bool IsAfter, string Task) : TimeClause;

    /// <summary>Again and again.</summary>
    /// <param name="Count">How many units lie between, at least one.</param>
    /// <param name="Unit">The unit.</param>
    public sealed record Every(int Count, TimeUnit Unit) : TimeClause;

    /// <summary>No longer than until the moment.</summary>
    /// <param name="Moment">The moment.</param>
    public sealed record Until(Moment Moment) : TimeClause;
}
