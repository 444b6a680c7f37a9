using System.Collections.Immutable;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Craft.Calendar;

/// <summary>
/// The network of the days on which a planting's tasks are due. A task is one day in it; one that repeats, and is so spread over
/// time, is two: its first and its last. What is done stands on the day it was done, whatever was planned for it.
/// </summary>
internal sealed class TaskNetwork
{
    private readonly ImmutableArray<PlantingTask> tasks;
    private readonly Dictionary<string, int> byName;
    private readonly MomentDays moments;
    private readonly bool[] isIn;
    private readonly TimeNetwork network;
    private readonly List<(int Task, Origin Origin, bool IsDone)> clauses = [];

    /// <summary>Makes one.</summary>
    /// <param name="tasks">All tasks of the planting.</param>
    /// <param name="byName">Where each stands among them.</param>
    /// <param name="moments">The days of moments.</param>
    /// <param name="isIn">Which tasks can be reckoned with: those whose moments have days, and that name only such tasks.</param>
    public TaskNetwork(ImmutableArray<PlantingTask> tasks, Dictionary<string, int> byName, MomentDays moments, bool[] isIn)
    {
        (this.tasks, this.byName, this.moments, this.isIn) = (tasks, byName, moments, isIn);
        network = new TimeNetwork(2 * tasks.Length);
        for (var task = 0; task < tasks.Length; task++)
        {
            if (isIn[task])
            {
                Add(task);
            }
        }
    }

    /// <summary>Whether a task comes again and again.</summary>
    /// <param name="task">The task.</param>
    /// <returns>True when it does.</returns>
    public static bool Repeats(PlantingTask task) => task.Times.Any(clause => clause is TimeClause.Every);

    /// <summary>Whether something said of a task's time tells when it can begin.</summary>
    /// <param name="task">The task.</param>
    /// <returns>True when something does.</returns>
    public static bool HasStart(PlantingTask task) => task.Times.Any(clause => clause is not (TimeClause.Every or TimeClause.Until or TimeClause.Before));

    /// <summary>Finds the days, and what was said that cannot hold together. Of each set that cannot, the plan that was written last is left out to find the days of the rest; what was done stays.</summary>
    /// <returns>The first and last day of each task, null where nothing bounds it; the sets; and the tasks of which something was left out.</returns>
    public (Func<int, (int? First, int? Last)> Days, ImmutableArray<TaskConflict> Conflicts, IReadOnlySet<int> Spoilt) Solve()
    {
        var conflicts = new List<TimeConflict>();
        var spoilt = new HashSet<int>();
        while (true)
        {
            var solution = network.Solve();
            if (solution.Conflicts.IsEmpty)
            {
                return (
                    task => (solution.Earliest[2 * task], solution.Latest[LastNode(task)]),
                    [.. conflicts.OrderBy(conflict => conflict.Clauses[0]).Select(conflict => new TaskConflict([.. conflict.Clauses.Select(clause => (tasks[clauses[clause].Task], clauses[clause].Origin)).Distinct()], conflict.DaysShort))],
                    spoilt);
            }

            conflicts.AddRange(solution.Conflicts);
            HashSet<int> leftOut = [.. solution.Conflicts.Select(conflict => conflict.Clauses.Last(clause => !clauses[clause].IsDone))];
            network.Remove(leftOut);
            spoilt.UnionWith(leftOut.Select(clause => clauses[clause].Task));
        }
    }

    private int LastNode(int task) => Repeats(tasks[task]) ? (2 * task) + 1 : 2 * task;

    private int Clause(int task, Origin origin, bool isDone = false)
    {
        clauses.Add((task, origin, isDone));
        return clauses.Count - 1;
    }

    private void Add(int index)
    {
        var task = tasks[index];
        var isDone = !task.Done.IsEmpty;
        if (isDone)
        {
            var first = task.Done.MinBy(done => done.Value)!;
            var day = Repeats(task) ? first : task.Done.MaxBy(done => done.Value)!;
            var clause = Clause(index, day.Origin, isDone: true);
            Bound(2 * index, day.Value, isEarliest: true, clause);
            Bound(2 * index, day.Value, isEarliest: false, clause);
            if (!Repeats(task))
            {
                return;
            }
        }

        foreach (var time in task.Times)
        {
            Add(index, time, Clause(index, time.Origin), isDone);
        }
    }

    private void Add(int index, TimeClause time, int clause, bool isDone)
    {
        var task = tasks[index];
        var (first, last) = (2 * index, LastNode(index));
        var (_, earliest, latest) = moments.BoundOf(time, task);
        switch (time)
        {
            case TimeClause.During during:
                NotBefore(during.Moment, earliest);
                NotAfter(during.Moment, latest);
                break;
            case TimeClause.FromTo span:
                NotBefore(span.Start, earliest);
                if (span.End is { } end)
                {
                    NotAfter(end, latest);
                }

                break;
            case TimeClause.After after:
                NotBefore(after.Moment, earliest);
                break;
            case TimeClause.Before { Moment: Moment.OfTask of }:
                network.Add(new TimeLink(2 * byName[of.Task], last, 0, TimeUnit.Days, IsAtLeast: false, clause));
                break;
            case TimeClause.Before before:
                NotAfter(before.Moment, latest);
                break;
            case TimeClause.Until until:
                NotAfter(until.Moment, latest);
                break;
            case TimeClause.Offset offset:
                var other = byName[offset.Task];
                var (least, most) = offset.IsAfter ? (Math.Min(offset.Least, offset.Most), Math.Max(offset.Least, offset.Most)) : (-Math.Max(offset.Least, offset.Most), -Math.Min(offset.Least, offset.Most));
                if (!isDone)
                {
                    network.Add(new TimeLink(2 * other, first, least, offset.Unit, IsAtLeast: true, clause));
                }

                network.Add(new TimeLink(LastNode(other), last, most, offset.Unit, IsAtLeast: false, clause));
                break;
            case TimeClause.Every every when !isDone:
                network.Add(new TimeLink(first, last, 0, TimeUnit.Days, IsAtLeast: true, clause));
                if (!HasStart(task) && task.Target is TaskTarget.OfTask whole)
                {
                    network.Add(new TimeLink(2 * byName[whole.Name.Value], first, every.Count, every.Unit, IsAtLeast: true, clause));
                }

                break;
            default:
                break;
        }

        void NotBefore(Moment moment, LocalDate? day)
        {
            if (isDone)
            {
                return;
            }

            if (moment is Moment.OfTask of)
            {
                network.Add(new TimeLink(2 * byName[of.Task], first, 0, TimeUnit.Days, IsAtLeast: true, clause));
            }
            else if (day is { } start)
            {
                Bound(first, start, isEarliest: true, clause);
            }
        }

        void NotAfter(Moment moment, LocalDate? day)
        {
            if (moment is Moment.OfTask of)
            {
                network.Add(new TimeLink(LastNode(byName[of.Task]), last, 0, TimeUnit.Days, IsAtLeast: false, clause));
            }
            else if (day is { } end)
            {
                Bound(last, end, isEarliest: false, clause);
            }
        }
    }

    private void Bound(int node, LocalDate day, bool isEarliest, int clause) =>
        network.Add(new TimeBound(node, Math.Clamp(DayCount.NumberOf(day), DayCount.FirstDay, DayCount.LastDay), isEarliest, clause));
}
