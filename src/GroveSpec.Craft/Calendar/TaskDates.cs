using System.Collections.Immutable;
using GroveSpec.Model;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;

namespace GroveSpec.Craft.Calendar;

/// <summary>
/// Dates the tasks of a planting: each after all that it waits on, by intersecting what it says.
/// A later version sends what follows back as well (a task that must come before another narrows that other);
/// this one reads forward only, so its windows are never too narrow, though they may be wider than need be.
/// </summary>
public static class TaskDates
{
    /// <summary>The most days that one repeated task is unrolled to.</summary>
    public const int MostRepeats = 400;

    /// <summary>Dates every task.</summary>
    /// <param name="planting">The planting.</param>
    /// <returns>One entry for each task, in the order of the file. Time grows with the tasks and what they wait on, not with the length of chains.</returns>
    public static ImmutableArray<DatedTask> Of(Planting planting)
    {
        var tasks = planting.Tasks;
        var byName = new Dictionary<string, int>(tasks.Length, StringComparer.Ordinal);
        for (var index = 0; index < tasks.Length; index++)
        {
            byName.TryAdd(tasks[index].Name, index);
        }

        var waits = new List<int>[tasks.Length];
        var followers = new List<int>[tasks.Length];
        var open = new int[tasks.Length];
        for (var index = 0; index < tasks.Length; index++)
        {
            waits[index] = [];
            followers[index] = [];
        }

        for (var index = 0; index < tasks.Length; index++)
        {
            foreach (var name in NamesWaitedOn(tasks[index]))
            {
                if (byName.TryGetValue(name, out var other) && !waits[index].Contains(other))
                {
                    waits[index].Add(other);
                    followers[other].Add(index);
                    open[index]++;
                }
            }
        }

        var dated = new DatedTask?[tasks.Length];
        var clauses = new TaskClauseReader(planting, byName, dated);
        var ready = new Queue<int>(Enumerable.Range(0, tasks.Length).Where(index => open[index] == 0));
        while (ready.TryDequeue(out var index))
        {
            dated[index] = clauses.Date(tasks[index]) with { WaitsOn = Names(index) };
            foreach (var follower in followers[index])
            {
                if (--open[follower] == 0)
                {
                    ready.Enqueue(follower);
                }
            }
        }

        var inCircle = InCircle(waits, open);
        return
        [
            .. Enumerable.Range(0, tasks.Length).Select(index => dated[index] ?? new DatedTask
            {
                Task = tasks[index],
                Undated = inCircle[index] ? UndatedReason.Circle : UndatedReason.WaitsOnUndated,
                WaitsOn = Names(index),
            }),
        ];

        ImmutableArray<string> Names(int index) => [.. waits[index].Select(other => tasks[other].Name)];
    }

    /// <summary>Of the tasks left over, those on a circle: what is left when all that only waits on circles is taken away from the far end.</summary>
    private static bool[] InCircle(List<int>[] waits, int[] open)
    {
        var left = open.Select(count => count > 0).ToArray();
        var followers = new int[open.Length];
        for (var index = 0; index < open.Length; index++)
        {
            foreach (var other in waits[index])
            {
                followers[other] += left[index] ? 1 : 0;
            }
        }

        var loose = new Queue<int>(Enumerable.Range(0, open.Length).Where(index => left[index] && followers[index] == 0));
        while (loose.TryDequeue(out var index))
        {
            left[index] = false;
            foreach (var other in waits[index])
            {
                if (--followers[other] == 0 && left[other])
                {
                    loose.Enqueue(other);
                }
            }
        }

        return left;
    }

    private static IEnumerable<string> NamesWaitedOn(PlantingTask task)
    {
        var repeats = false;
        var hasStart = false;
        foreach (var clause in task.Times)
        {
            repeats |= clause is TimeClause.Every;
            hasStart |= clause is not (TimeClause.Every or TimeClause.Until or TimeClause.Before);
        }

        // What is done does not wait any longer, unless it comes again.
        if (!task.Done.IsEmpty && !repeats)
        {
            yield break;
        }

        foreach (var clause in task.Times)
        {
            var (first, second) = clause switch
            {
                TimeClause.During during => (during.Moment, null),
                TimeClause.FromTo span => (span.Start, span.End),
                TimeClause.After after => (after.Moment, null),
                TimeClause.Before before => (before.Moment, null),
                TimeClause.Until until => (until.Moment, null),
                TimeClause.Offset offset => (new Moment.OfTask(offset.Task), null),
                _ => ((Moment?)null, (Moment?)null),
            };
            if (first is Moment.OfTask one)
            {
                yield return one.Task;
            }

            if (second is Moment.OfTask two)
            {
                yield return two.Task;
            }
        }

        if (repeats && !hasStart && task.Target is TaskTarget.OfTask of)
        {
            yield return of.Name.Value;
        }
    }
}
