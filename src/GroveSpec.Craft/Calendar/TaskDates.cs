using System.Collections.Immutable;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Craft.Calendar;

/// <summary>Dates the tasks of a planting: all that is said of their times holds at once, whichever task it is said of.</summary>
public static class TaskDates
{
    /// <summary>The most days that one repeated task is unrolled to.</summary>
    public const int MostRepeats = 400;

    private const int MostYears = 10_000;

    /// <summary>Dates every task.</summary>
    /// <param name="planting">The planting.</param>
    /// <returns>One entry for each task, in the order of the file.</returns>
    public static ImmutableArray<DatedTask> Of(Planting planting) => Reckon(planting).Tasks;

    /// <summary>Dates every task, and finds what cannot hold together.</summary>
    /// <param name="planting">The planting.</param>
    /// <returns>The tasks with their days, and the conflicts.</returns>
    public static TaskReckoning Reckon(Planting planting)
    {
        var tasks = planting.Tasks;
        var byName = new Dictionary<string, int>(tasks.Length, StringComparer.Ordinal);
        for (var index = 0; index < tasks.Length; index++)
        {
            byName.TryAdd(tasks[index].Name, index);
        }

        var waits = new ImmutableArray<string>[tasks.Length];
        var moments = new MomentDays(planting);
        var undated = new UndatedReason?[tasks.Length];
        var named = new List<string>();
        for (var index = 0; index < tasks.Length; index++)
        {
            named.Clear();
            AddNamesWaitedOn(tasks[index], named);
            var known = named.RemoveAll(name => !byName.ContainsKey(name)) == 0;
            waits[index] = named.Count > 1 ? [.. named.Distinct(StringComparer.Ordinal)] : [.. named];
            undated[index] = Reason(tasks[index], moments) ?? (known ? null : UndatedReason.UnknownTask);
        }

        foreach (var index in WaitingOrder.InCircles(tasks, byName))
        {
            undated[index] ??= UndatedReason.Circle;
        }

        var followers = new List<int>?[tasks.Length];
        for (var index = 0; index < tasks.Length; index++)
        {
            foreach (var name in waits[index])
            {
                (followers[byName[name]] ??= []).Add(index);
            }
        }

        Spread(undated, followers);
        var (days, conflicts, spoilt) = new TaskNetwork(tasks, byName, moments, [.. undated.Select(reason => reason is null)]).Solve();
        foreach (var index in spoilt)
        {
            // What is done has its day whatever follows from it.
            undated[index] ??= tasks[index].Done.IsEmpty || TaskNetwork.Repeats(tasks[index]) ? UndatedReason.Contradiction : null;
        }

        Spread(undated, followers);
        var dated = new DatedTask[tasks.Length];
        for (var index = 0; index < tasks.Length; index++)
        {
            dated[index] = (undated[index] is { } reason ? new DatedTask { Task = tasks[index], Undated = reason } : Dated(tasks[index], days(index))) with { WaitsOn = waits[index] };
            undated[index] = dated[index].Undated;
        }

        Spread(undated, followers);
        return new([.. dated.Select((task, index) => undated[index] == task.Undated ? task : new DatedTask { Task = task.Task, Undated = undated[index], WaitsOn = task.WaitsOn })], conflicts);
    }

    /// <summary>What hangs on a task without days has none itself.</summary>
    private static void Spread(UndatedReason?[] undated, List<int>?[] followers)
    {
        var left = new Queue<int>(Enumerable.Range(0, undated.Length).Where(index => undated[index] is not null));
        while (left.TryDequeue(out var index))
        {
            foreach (var follower in followers[index] ?? [])
            {
                if (undated[follower] is null)
                {
                    undated[follower] = UndatedReason.WaitsOnUndated;
                    left.Enqueue(follower);
                }
            }
        }
    }

    /// <summary>Why what is said of a task's own time gives no days; null when it does.</summary>
    private static UndatedReason? Reason(PlantingTask task, MomentDays moments)
    {
        var repeats = TaskNetwork.Repeats(task);
        if (!task.Done.IsEmpty && !repeats)
        {
            return null;
        }

        foreach (var clause in task.Times)
        {
            var (first, second) = MomentsOf(clause);
            if ((ReasonOf(first, first == second || clause is TimeClause.Until or TimeClause.After) ?? ReasonOf(second, asEnd: true)) is { } why)
            {
                return why;
            }

            if (clause is TimeClause.Offset offset && Math.Max(Math.Abs((long)offset.Least), Math.Abs((long)offset.Most)) > MostYears * TurnsOfYear(offset.Unit))
            {
                return UndatedReason.OutOfCalendar;
            }
        }

        return task.Times.IsEmpty ? UndatedReason.NoTime
            : repeats && task.Done.IsEmpty && !TaskNetwork.HasStart(task) && task.Target is not TaskTarget.OfTask ? UndatedReason.NoStart
            : null;

        UndatedReason? ReasonOf(Moment? moment, bool asEnd) => moment is null or Moment.OfTask ? null : moments.Of(moment, task, asEnd).Undated;
    }

    private static long TurnsOfYear(TimeUnit unit) => unit switch
    {
        TimeUnit.Days => 366,
        TimeUnit.Weeks => 53,
        TimeUnit.Months => 12,
        _ => 1,
    };

    private static DatedTask Dated(PlantingTask task, (int? First, int? Last) days)
    {
        var window = new TaskWindow(DayOf(days.First), DayOf(days.Last));
        if (task.Times.OfType<TimeClause.Every>().FirstOrDefault() is { } every)
        {
            return Repeated(task, every, window);
        }

        if (!task.Done.IsEmpty)
        {
            var done = task.Done.Max(done => done.Value);
            return new DatedTask { Task = task, Window = new TaskWindow(done, done) };
        }

        return window is { Earliest: null, Latest: null }
            ? new DatedTask { Task = task, Undated = UndatedReason.WaitsOnUndated }
            : new DatedTask
            {
                Task = task,
                Window = window,
                IsGrowing = task.Kind.Value == TaskKind.Sacrifice && task.Times.Any(clause => clause is TimeClause.FromTo),
            };
    }

    private static LocalDate? DayOf(int? number) => number is { } known ? DayCount.DayOf(known) : null;

    private static DatedTask Repeated(PlantingTask task, TimeClause.Every every, TaskWindow window)
    {
        var lastDone = task.Done.IsEmpty ? (LocalDate?)null : task.Done.Max(done => done.Value);
        if (lastDone is null && window.Earliest is null)
        {
            return new DatedTask { Task = task, Undated = UndatedReason.NoStart };
        }

        // Without an end a year of it is shown.
        var start = lastDone is { } done ? DayCount.Shift(done, every.Count, every.Unit) : window.Earliest;
        var last = window.Latest ?? (start is { } from ? DayCount.Shift(from, 1, TimeUnit.Years) : null);
        if (start is not { } next || last is not { } end)
        {
            return new DatedTask { Task = task, Undated = UndatedReason.OutOfCalendar };
        }

        var repeats = Unroll(next, end, every);
        var begins = lastDone is null ? next : LocalDate.Min(next, task.Done.Min(day => day.Value));
        var ends = repeats.IsEmpty ? lastDone ?? next : lastDone is { } newest ? LocalDate.Max(newest, repeats[^1]) : repeats[^1];
        return new DatedTask
        {
            Task = task,
            Window = new TaskWindow(begins, ends),
            Repeats = repeats,
            RepeatsGoOn = window.Latest is null || (repeats.Length == MostRepeats && DayCount.Shift(repeats[^1], every.Count, every.Unit) <= end),
        };
    }

    private static ImmutableArray<LocalDate> Unroll(LocalDate first, LocalDate end, TimeClause.Every every)
    {
        var days = ImmutableArray.CreateBuilder<LocalDate>();

        // Counted from the first day each time, so that a month's end stays a month's end.
        for (var turn = 0L; days.Count < MostRepeats; turn++)
        {
            if (DayCount.Shift(first, turn * Math.Max(1, every.Count), every.Unit) is not { } day || day > end)
            {
                break;
            }

            days.Add(day);
        }

        return days.ToImmutable();
    }

    /// <summary>The moments that a clause names.</summary>
    /// <param name="clause">The clause.</param>
    /// <returns>Both ends of a span, else one; none for a clause that says how often.</returns>
    internal static (Moment? First, Moment? Second) MomentsOf(TimeClause clause) => clause switch
    {
        TimeClause.During during => (during.Moment, null),
        TimeClause.FromTo span => (span.Start, span.End),
        TimeClause.After after => (after.Moment, null),
        TimeClause.Before before => (before.Moment, null),
        TimeClause.Until until => (until.Moment, null),
        TimeClause.Offset offset => (new Moment.OfTask(offset.Task), null),
        _ => (null, null),
    };

    private static void AddNamesWaitedOn(PlantingTask task, List<string> names)
    {
        // What is done does not wait any longer, unless it comes again.
        var repeats = TaskNetwork.Repeats(task);
        if (!task.Done.IsEmpty && !repeats)
        {
            return;
        }

        foreach (var clause in task.Times)
        {
            var (first, second) = MomentsOf(clause);
            if (first is Moment.OfTask one)
            {
                names.Add(one.Task);
            }

            if (second is Moment.OfTask two)
            {
                names.Add(two.Task);
            }
        }

        if (repeats && !TaskNetwork.HasStart(task) && task.Target is TaskTarget.OfTask of)
        {
            names.Add(of.Name.Value);
        }
    }
}
