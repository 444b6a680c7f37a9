using System.Collections.Immutable;
using GroveSpec.Model;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Craft.Calendar;

/// <summary>Dates one task, when those it waits on have been dated.</summary>
/// <param name="planting">The planting.</param>
/// <param name="byName">Where each task stands.</param>
/// <param name="dated">What is dated so far.</param>
internal sealed class TaskClauseReader(Planting planting, Dictionary<string, int> byName, DatedTask?[] dated)
{
    private readonly bool isSouthern = planting.Site?.IsSouthern ?? false;
    private readonly Dictionary<string, TreeYear> years = new(StringComparer.Ordinal);
    private Dictionary<string, string?>? speciesByTrunk;

    /// <summary>Dates a task.</summary>
    /// <param name="task">The task.</param>
    /// <returns>Its days, or why it has none.</returns>
    public DatedTask Date(PlantingTask task)
    {
        var every = task.Times.OfType<TimeClause.Every>().FirstOrDefault();
        if (every is null && !task.Done.IsEmpty)
        {
            var last = task.Done.Max(done => done.Value);
            return new DatedTask { Task = task, Window = new TaskWindow(last, last) };
        }

        TaskWindow? window = null;
        foreach (var clause in task.Times.Where(clause => clause is not TimeClause.Every))
        {
            var (read, undated) = Read(clause, task);
            if (undated is not null)
            {
                return new DatedTask { Task = task, Undated = undated };
            }

            window = window is { } had && read is { } more ? had.Intersect(more) : window ?? read;
            if (window is null)
            {
                return new DatedTask { Task = task, Undated = UndatedReason.Contradiction };
            }
        }

        if (every is not null)
        {
            return Repeated(task, every, window);
        }

        return window is null
            ? new DatedTask { Task = task, Undated = UndatedReason.NoTime }
            : new DatedTask
            {
                Task = task,
                Window = window,
                IsGrowing = task.Kind.Value == TaskKind.Sacrifice && task.Times.Any(clause => clause is TimeClause.FromTo),
            };
    }

    private DatedTask Repeated(PlantingTask task, TimeClause.Every every, TaskWindow? window)
    {
        var lastDone = task.Done.IsEmpty ? (LocalDate?)null : task.Done.Max(done => done.Value);
        LocalDate? start;
        if (lastDone is { } done)
        {
            start = DayCount.Shift(done, every.Count, every.Unit);
        }
        else if (window?.Earliest is { } earliest)
        {
            start = earliest;
        }
        else if (task.Target is TaskTarget.OfTask of)
        {
            if (!byName.TryGetValue(of.Name.Value, out var index))
            {
                return new DatedTask { Task = task, Undated = UndatedReason.UnknownTask };
            }

            if (dated[index]?.Window is not { } first)
            {
                return new DatedTask { Task = task, Undated = UndatedReason.WaitsOnUndated };
            }

            start = DayCount.Shift(first.First, every.Count, every.Unit);
        }
        else
        {
            return new DatedTask { Task = task, Undated = UndatedReason.NoStart };
        }

        // Without an end a year of it is shown.
        var last = window?.Latest ?? (start is { } from ? DayCount.Shift(from, 1, Model.Quantities.TimeUnit.Years) : null);
        if (start is not { } next || last is not { } end)
        {
            return new DatedTask { Task = task, Undated = UndatedReason.OutOfCalendar };
        }

        if (next > end && lastDone is null)
        {
            return new DatedTask { Task = task, Undated = UndatedReason.Contradiction };
        }

        var repeats = Unroll(next, end, every);
        var begins = lastDone is null ? next : LocalDate.Min(next, task.Done.Min(day => day.Value));
        var ends = repeats.IsEmpty ? lastDone ?? next : lastDone is { } newest ? LocalDate.Max(newest, repeats[^1]) : repeats[^1];
        return new DatedTask
        {
            Task = task,
            Window = new TaskWindow(begins, ends),
            Repeats = repeats,
            RepeatsGoOn = window?.Latest is null || (repeats.Length == TaskDates.MostRepeats && DayCount.Shift(repeats[^1], every.Count, every.Unit) <= end),
        };
    }

    private static ImmutableArray<LocalDate> Unroll(LocalDate first, LocalDate end, TimeClause.Every every)
    {
        var days = ImmutableArray.CreateBuilder<LocalDate>();

        // Counted from the first day each time, so that a month's end stays a month's end.
        for (var turn = 0L; days.Count < TaskDates.MostRepeats; turn++)
        {
            if (DayCount.Shift(first, turn * Math.Max(1, every.Count), every.Unit) is not { } day || day > end)
            {
                break;
            }

            days.Add(day);
        }

        return days.ToImmutable();
    }

    private (TaskWindow? Window, UndatedReason? Undated) Read(TimeClause clause, PlantingTask task)
    {
        switch (clause)
        {
            case TimeClause.During during:
                return Span(during.Moment, task) is var (days, why) && days is { } whole ? (whole, null) : (null, why);
            case TimeClause.FromTo span:
                var (from, noStart) = Span(span.Start, task);
                var (to, noEnd) = span.End is null ? (default, null) : Span(span.End, task, asEnd: true);
                return noStart is not null || noEnd is not null ? (null, noStart ?? noEnd)
                    : from?.Earliest > to?.Latest ? (null, UndatedReason.Contradiction)
                    : (new TaskWindow(from?.First, to?.Latest), null);
            case TimeClause.After after:
                return Passed(after.Moment, task);
            case TimeClause.Before before:
                return Span(before.Moment, task) is var (ahead, unknown) && ahead is { } bound
                    ? (new TaskWindow(null, before.Moment is Moment.OfTask ? bound.Last : bound.First.PlusDays(-1)), null)
                    : (null, unknown);
            case TimeClause.Until until:
                return Span(until.Moment, task, asEnd: true) is var (limit, none) && limit is { } stop ? (new TaskWindow(null, stop.Last), null) : (null, none);
            case TimeClause.Offset offset:
                return Offset(offset);
            default:
                return (null, UndatedReason.NoTime);
        }
    }

    private (TaskWindow? Window, UndatedReason? Undated) Passed(Moment moment, PlantingTask task)
    {
        if (moment is Moment.StageOfYear stage)
        {
            return YearOf(task).Onset(stage.Stage, stage.Number) is { } onset ? (new TaskWindow(onset.End, null), null) : (null, UndatedReason.UnknownStage);
        }

        return Span(moment, task) is var (days, why) && days is { } passed
            ? (new TaskWindow(moment is Moment.OfTask ? passed.First : passed.Last.PlusDays(1), null), null)
            : (null, why);
    }

    private (TaskWindow? Window, UndatedReason? Undated) Offset(TimeClause.Offset offset)
    {
        if (!byName.TryGetValue(offset.Task, out var index))
        {
            return (null, UndatedReason.UnknownTask);
        }

        if (dated[index]?.Window is not { } other)
        {
            return (null, UndatedReason.WaitsOnUndated);
        }

        var (least, most) = (Math.Min(offset.Least, offset.Most), Math.Max(offset.Least, offset.Most));
        var (toEarliest, toLatest) = offset.IsAfter ? ((long)least, (long)most) : (-(long)most, -(long)least);
        var earliest = other.Earliest is { } first ? DayCount.Shift(first, toEarliest, offset.Unit) : null;
        var latest = other.Latest is { } last ? DayCount.Shift(last, toLatest, offset.Unit) : null;
        return (other.Earliest is not null && earliest is null) || (other.Latest is not null && latest is null)
            ? (null, UndatedReason.OutOfCalendar)
            : (new TaskWindow(earliest, latest), null);
    }

    /// <summary>All the days of a moment. As the end of a span a stage counts until it has surely begun, not until it is over.</summary>
    private (TaskWindow? Days, UndatedReason? Undated) Span(Moment moment, PlantingTask task, bool asEnd = false)
    {
        switch (moment)
        {
            case Moment.StageOfYear stage:
                var year = YearOf(task);
                var days = asEnd ? year.Onset(stage.Stage, stage.Number) : year.Days(stage.Stage, stage.Number);
                return days is { } known ? (new TaskWindow(known.Start, known.End), null) : (null, UndatedReason.UnknownStage);
            case Moment.OfTask of:
                return !byName.TryGetValue(of.Task, out var index) ? (null, UndatedReason.UnknownTask)
                    : dated[index]?.Window is { } window ? (window, null)
                    : (null, UndatedReason.WaitsOnUndated);
            default:
                return Reckoned(moment) is { } plain ? (new TaskWindow(plain.Start, plain.End), null) : (null, UndatedReason.OutOfCalendar);
        }
    }

    /// <summary>Days of the calendar; years at its very ends are left out, so that a day before or after can always be named.</summary>
    private DateInterval? Reckoned(Moment moment) => moment switch
    {
        Moment.Day day when day.Date.Year is < 2 or > 9997 => null,
        Moment.Month month when month.Value.Year is < 2 or > 9997 => null,
        Moment.Year year when year.Number is < 2 or > 9997 => null,
        _ => SeasonCalendar.Days(moment, isSouthern),
    };

    /// <summary>The year of the tree a task is about: of the first trunk it names, else of the planting.</summary>
    private TreeYear YearOf(PlantingTask task)
    {
        var species = planting.Species?.Value;
        if (task.Target is TaskTarget.OnTrunks on)
        {
            speciesByTrunk ??= SpeciesByTrunk();
            species = on.Names.Select(name => speciesByTrunk.GetValueOrDefault(name.Value)).FirstOrDefault(own => own is not null) ?? species;
        }

        var key = species ?? "";
        if (!years.TryGetValue(key, out var year))
        {
            years.Add(key, year = TreeYear.Of(planting, species));
        }

        return year;
    }

    private Dictionary<string, string?> SpeciesByTrunk()
    {
        var map = new Dictionary<string, string?>(StringComparer.Ordinal);
        foreach (var trunk in planting.Trunks)
        {
            map.TryAdd(trunk.Name, planting.SpeciesOf(trunk));
        }

        return map;
    }
}
