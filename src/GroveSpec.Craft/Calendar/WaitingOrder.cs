using System.Collections.Immutable;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;

namespace GroveSpec.Craft.Calendar;

/// <summary>Which tasks wait on which: one that is to come after another waits on it, and so does one that another is to come before.</summary>
public static class WaitingOrder
{
    /// <summary>What a clause says of which task waits on which.</summary>
    /// <param name="clause">Something said of a task's time.</param>
    /// <returns>The other task's name, known or not, and whether it is the one waited on; null where the clause says nothing of the kind.</returns>
    public static (string Task, bool IsWaitedOn)? LinkOf(TimeClause clause) => clause switch
    {
        TimeClause.During { Moment: Moment.OfTask of } => (of.Task, true),
        TimeClause.FromTo { Start: Moment.OfTask of } => (of.Task, true),
        TimeClause.After { Moment: Moment.OfTask of } => (of.Task, true),
        TimeClause.Before { Moment: Moment.OfTask of } => (of.Task, false),
        TimeClause.Offset offset => (offset.Task, offset.IsAfter),
        _ => null,
    };

    /// <summary>The tasks that wait, in the end, on themselves.</summary>
    /// <param name="tasks">All tasks.</param>
    /// <param name="byName">Where each stands among them.</param>
    /// <returns>Where they stand.</returns>
    internal static IEnumerable<int> InCircles(ImmutableArray<PlantingTask> tasks, Dictionary<string, int> byName)
    {
        var waits = new List<int>[tasks.Length];
        var followers = new List<int>[tasks.Length];
        for (var index = 0; index < tasks.Length; index++)
        {
            waits[index] = [];
            followers[index] = [];
        }

        for (var index = 0; index < tasks.Length; index++)
        {
            // What is done does not wait any longer, unless it comes again.
            if (!tasks[index].Done.IsEmpty && !TaskNetwork.Repeats(tasks[index]))
            {
                continue;
            }

            foreach (var clause in tasks[index].Times)
            {
                if (LinkOf(clause) is var (name, isWaitedOn) && byName.TryGetValue(name, out var other))
                {
                    var (later, sooner) = isWaitedOn ? (index, other) : (other, index);
                    waits[later].Add(sooner);
                    followers[sooner].Add(later);
                }
            }
        }

        // What can begin is taken away from the near end, and then what nothing else waits on from the far end.
        var isLeft = Enumerable.Repeat(true, tasks.Length).ToArray();
        TakeAway(waits, followers, isLeft);
        TakeAway(followers, waits, isLeft);
        return Enumerable.Range(0, tasks.Length).Where(index => isLeft[index]);
    }

    private static void TakeAway(List<int>[] before, List<int>[] behind, bool[] isLeft)
    {
        var open = before.Select(others => others.Count(other => isLeft[other])).ToArray();
        var loose = new Queue<int>(Enumerable.Range(0, open.Length).Where(index => isLeft[index] && open[index] == 0));
        while (loose.TryDequeue(out var index))
        {
            isLeft[index] = false;
            foreach (var other in behind[index])
            {
                if (--open[other] == 0 && isLeft[other])
                {
                    loose.Enqueue(other);
                }
            }
        }
    }
}
