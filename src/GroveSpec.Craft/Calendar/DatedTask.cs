using System.Collections.Immutable;
using GroveSpec.Model.Tasks;
using NodaTime;

namespace GroveSpec.Craft.Calendar;

/// <summary>A task with the days that follow from what the file says.</summary>
public sealed record DatedTask
{
    /// <summary>The task.</summary>
    public required PlantingTask Task { get; init; }

    /// <summary>
    /// When it may be done; for a task that was done and does not repeat, the day it was done;
    /// for one that repeats, from its first to its last day. Null when it has no date.
    /// </summary>
    public TaskWindow? Window { get; init; }

    /// <summary>By how many days it can be put off from its earliest day and all that is said still hold; null for one that repeats or is done, and where an end is open.</summary>
    public int? Slack => Task.Done.IsEmpty && !TaskNetwork.Repeats(Task) && Window is { Earliest: { } earliest, Latest: { } latest } ? Period.DaysBetween(earliest, latest) : null;

    /// <summary>For a task that repeats, the days on which it is due and that no done date has passed, in order.</summary>
    public ImmutableArray<LocalDate> Repeats { get; init; } = [];

    /// <summary>Whether the repeats go on beyond the last of <see cref="Repeats"/>.</summary>
    public bool RepeatsGoOn { get; init; }

    /// <summary>Whether it is work that goes on through its whole window, such as a branch left to grow.</summary>
    public bool IsGrowing { get; init; }

    /// <summary>Why there is no window; null when there is one.</summary>
    public UndatedReason? Undated { get; init; }

    /// <summary>The tasks of the planting whose dates it follows, by name, each once, in the order said.</summary>
    public ImmutableArray<string> WaitsOn { get; init; } = [];

    /// <summary>Whether its last day is over and it was not done. Growth left to run, and work that comes again, is never late in this sense.</summary>
    /// <param name="day">The day it is seen from.</param>
    /// <returns>True from the day after its last one.</returns>
    public bool IsLate(LocalDate day) => Window?.Latest is { } latest && latest < day && Task.Done.IsEmpty && !IsGrowing && !TaskNetwork.Repeats(Task);
}
