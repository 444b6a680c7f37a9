using System.Collections.Immutable;
using NodaTime;

namespace GroveSpec.Craft.Calendar;

/// <summary>A task as it lies before a grower on a day.</summary>
/// <param name="Dated">The task with its dates.</param>
/// <param name="Term">How near it is.</param>
public sealed record AgendaEntry(DatedTask Dated, AgendaTerm Term)
{
    /// <summary>
    /// The days that count next: the whole window of a task that is done once; of one that comes again its first turn that is not
    /// over, or its last one where all are. Null without a date.
    /// </summary>
    public TaskWindow? Next { get; init; }

    /// <summary>How many days ago its last day was, or that of its first turn that was missed; 0 unless it is <see cref="AgendaTerm.Overdue"/>.</summary>
    public int DaysOver { get; init; }

    /// <summary>Of a task that comes again, how many turns are over and not done; 0 for any other.</summary>
    public int TurnsMissed { get; init; }

    /// <summary>
    /// The overdue tasks that come before it, by name, each once: until they are done its own days are those of the plan and not of
    /// the tree. Empty for a task that is done.
    /// </summary>
    public ImmutableArray<string> HeldUpBy { get; init; } = [];

    /// <summary>The day it is sorted by; null without a date.</summary>
    internal LocalDate? Day => Next?.First;
}
