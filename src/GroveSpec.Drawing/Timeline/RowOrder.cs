using GroveSpec.Craft.Calendar;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model;
using GroveSpec.Model.Tasks;
using NodaTime;

namespace GroveSpec.Drawing.Timeline;

/// <summary>Puts tasks in the order of their rows: by family of work, and within a family each chain of work that follows from itself together.</summary>
internal static class RowOrder
{
    /// <summary>The rows of a timeline.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="dated">Its tasks; those without a date have no row.</param>
    /// <returns>The rows from top to bottom.</returns>
    public static List<TimelineRow> Of(Planting planting, IReadOnlyList<DatedTask> dated)
    {
        var byName = new Dictionary<string, DatedTask>(StringComparer.Ordinal);
        foreach (var task in dated)
        {
            byName.TryAdd(task.Task.Name, task);
        }

        var ordered = dated
            .Select((task, index) => (Task: task, Index: index, Root: RootOf(task, byName)))
            .Where(entry => entry.Task.Window is not null)
            .OrderBy(entry => Family(entry.Root.Task.Kind.Value))
            .ThenBy(entry => First(entry.Root))
            .ThenBy(entry => entry.Root.Task.Name, StringComparer.Ordinal)
            .ThenBy(entry => First(entry.Task))
            .ThenBy(entry => entry.Index);
        var rows = new List<TimelineRow>();
        var family = -1;
        foreach (var (task, _, root) in ordered)
        {
            var own = Family(root.Task.Kind.Value);
            rows.Add(new TimelineRow(
                task,
                DrawnText.Clean(TaskWords.Kind(task.Task)),
                DrawnText.Clean(task.Task.Name),
                string.Join(", ", TaskWords.Target(planting, task.Task).Take(40).Select(DrawnText.Isolated)),
                own != family));
            family = own;
        }

        return rows;
    }

    private static DatedTask RootOf(DatedTask task, Dictionary<string, DatedTask> byName)
    {
        for (var step = 0; step < 8 && task.Task.Target is TaskTarget.OfTask of; step++)
        {
            if (!byName.TryGetValue(of.Name.Value, out var other) || other.Window is null)
            {
                break;
            }

            task = other;
        }

        return task;
    }

    private static LocalDate First(DatedTask task) => task.Window?.First ?? LocalDate.MinIsoValue;

    private static int Family(TaskKind kind) => kind switch
    {
        TaskKind.Wire or TaskKind.Unwire or TaskKind.LookOver => 0,
        TaskKind.Prune or TaskKind.Pinch or TaskKind.Disbud or TaskKind.Defoliate => 1,
        TaskKind.Sacrifice or TaskKind.RemoveSacrifice or TaskKind.Graft or TaskKind.Seal => 2,
        TaskKind.Repot or TaskKind.RootPrune => 3,
        TaskKind.Feed or TaskKind.Shelter => 4,
        TaskKind.Measure or TaskKind.Photograph => 5,
        _ => 6,
    };
}
