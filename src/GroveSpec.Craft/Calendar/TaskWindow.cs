using NodaTime;

namespace GroveSpec.Craft.Calendar;

/// <summary>The days on which a task may be done, both ends inclusive. At least one end is known.</summary>
/// <param name="Earliest">The first day; null where it is left open.</param>
/// <param name="Latest">The last day; null where it is left open.</param>
public readonly record struct TaskWindow(LocalDate? Earliest, LocalDate? Latest)
{
    /// <summary>The one end that is known, the first where both are.</summary>
    public LocalDate First => Earliest ?? Latest ?? default;

    /// <summary>The other end that is known, the last where both are.</summary>
    public LocalDate Last => Latest ?? Earliest ?? default;

    /// <summary>The days that both windows have.</summary>
    /// <param name="other">The other window.</param>
    /// <returns>Their overlap; null where they have no day in common.</returns>
    public TaskWindow? Intersect(TaskWindow other)
    {
        var earliest = Earliest is { } mine && other.Earliest is { } theirs ? LocalDate.Max(mine, theirs) : Earliest ?? other.Earliest;
        var latest = Latest is { } ours && other.Latest is { } others ? LocalDate.Min(ours, others) : Latest ?? other.Latest;
        return earliest > latest ? null : new TaskWindow(earliest, latest);
    }
}
