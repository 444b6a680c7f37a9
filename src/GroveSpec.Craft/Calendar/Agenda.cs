using System.Collections.Immutable;
using GroveSpec.Model;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Craft.Calendar;

/// <summary>What lies before a grower on a day: each task of a planting by how near it is.</summary>
public sealed class Agenda
{
    private Agenda(LocalDate? day, DateInterval? month, SeasonOfDay? season, ImmutableArray<AgendaEntry> entries) =>
        (Day, Month, Season, Entries) = (day, month, season, entries);

    /// <summary>The day it is seen from; null for none.</summary>
    public LocalDate? Day { get; }

    /// <summary>The month of the day; null without one.</summary>
    public DateInterval? Month { get; }

    /// <summary>The season of the day; null without one, and at the ends of the calendar.</summary>
    public SeasonOfDay? Season { get; }

    /// <summary>Every task, by term, within a term by its next day, then in the order of the file.</summary>
    public ImmutableArray<AgendaEntry> Entries { get; }

    /// <summary>Sees a planting's tasks from a day.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="day">The day; null to sort by date alone. What is marked as done later than that is not done yet.</param>
    /// <returns>All its tasks.</returns>
    public static Agenda Of(Planting planting, LocalDate? day)
    {
        var dated = TaskDates.Of(planting);
        if (day is not { } seen)
        {
            return new(null, null, null, Ordered(dated.Select(task => new AgendaEntry(task, TermWithoutDay(task)) { Next = NextOf(task, null) })));
        }

        var month = new YearMonth(seen.Year, seen.Month).ToDateInterval();
        var season = SeasonCalendar.SeasonOf(seen, planting.Site?.IsSouthern ?? false);
        var done = planting.Tasks.Where(task => task.Done.Any(on => on.Value <= seen)).Select(task => task.Name).ToHashSet(StringComparer.Ordinal);
        return new(seen, month, season, HeldUp(Ordered(dated.Select(EntryOf))));

        AgendaEntry EntryOf(DatedTask task)
        {
            if (task.Window is not { } window)
            {
                return new(task, AgendaTerm.Undated);
            }

            var next = NextOf(task, seen)!.Value;
            var repeats = TaskNetwork.Repeats(task.Task);
            if (!repeats && !task.Task.Done.IsEmpty)
            {
                return new(task, window.Last <= seen ? AgendaTerm.Done : TermOf(window.First)) { Next = next };
            }

            if (repeats)
            {
                var missed = task.Repeats.Count(turn => turn < seen);
                return IsEnded(task.Task) || (missed == task.Repeats.Length && task.Repeats.IsEmpty)
                    ? new(task, AgendaTerm.Done) { Next = next }
                    : missed > 0
                    ? new(task, AgendaTerm.Overdue) { Next = next, TurnsMissed = missed, DaysOver = Period.DaysBetween(task.Repeats[0], seen) }
                    : new(task, TermOf(next.First)) { Next = next };
            }

            return task.IsLate(seen) ? new(task, AgendaTerm.Overdue) { Next = next, DaysOver = Period.DaysBetween(window.Last, seen) }
                : window.Latest < seen ? new(task, AgendaTerm.Done) { Next = next }
                : new(task, window.Earliest is { } earliest ? TermOf(earliest) : AgendaTerm.Now) { Next = next };
        }

        // What goes on until some work is done is over with it.
        bool IsEnded(PlantingTask task) => task.Times.Any(clause => clause is TimeClause.Until { Moment: Moment.OfTask of } && done.Contains(of.Task));

        AgendaTerm TermOf(LocalDate begins) =>
            begins <= seen ? AgendaTerm.Now
            : begins <= month.End ? AgendaTerm.Month
            : season is { } now && begins <= now.Days.End ? AgendaTerm.Season
            : begins.Year == seen.Year ? AgendaTerm.Year
            : AgendaTerm.Later;
    }

    /// <summary>Says of each task which overdue work comes before it.</summary>
    private static ImmutableArray<AgendaEntry> HeldUp(ImmutableArray<AgendaEntry> entries)
    {
        var late = entries.Where(entry => entry.Term == AgendaTerm.Overdue).Select(entry => entry.Dated.Task.Name).ToHashSet(StringComparer.Ordinal);
        return [.. entries.Select(entry => entry.Term == AgendaTerm.Done ? entry : entry with { HeldUpBy = [.. ComesAfter(entry.Dated.Task).Where(late.Contains).Distinct(StringComparer.Ordinal)] })];
    }

    private static IEnumerable<string> ComesAfter(PlantingTask task)
    {
        foreach (var clause in task.Times)
        {
            if (clause switch
            {
                TimeClause.Offset { IsAfter: true } offset => offset.Task,
                TimeClause.After { Moment: Moment.OfTask of } => of.Task,
                TimeClause.FromTo { Start: Moment.OfTask of } => of.Task,
                _ => null,
            } is { } other)
            {
                yield return other;
            }
        }

        // Looking after work that was not done has nothing to look after; taking off what was not put on neither.
        if (task.Target is TaskTarget.OfTask whole)
        {
            yield return whole.Name.Value;
        }
    }

    private static AgendaTerm TermWithoutDay(DatedTask task) =>
        task.Window is null ? AgendaTerm.Undated
        : !task.Task.Done.IsEmpty && task.Repeats.IsEmpty ? AgendaTerm.Done
        : AgendaTerm.Later;

    private static TaskWindow? NextOf(DatedTask task, LocalDate? seen)
    {
        if (task.Repeats.IsEmpty)
        {
            return task.Window;
        }

        var turn = task.Repeats.FirstOrDefault(turn => seen is null || turn >= seen, task.Repeats[^1]);
        return new TaskWindow(turn, turn);
    }

    private static ImmutableArray<AgendaEntry> Ordered(IEnumerable<AgendaEntry> entries) =>
        [.. entries.OrderBy(entry => entry.Term).ThenBy(entry => entry.Day ?? LocalDate.MaxIsoValue)];
}
