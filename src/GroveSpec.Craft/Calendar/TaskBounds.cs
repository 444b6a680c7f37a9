using System.Collections.Immutable;
using GroveSpec.Model;
using GroveSpec.Model.Tasks;

namespace GroveSpec.Craft.Calendar;

/// <summary>The days that the calendar and the tree's year set to a task, before other tasks have a say.</summary>
public static class TaskBounds
{
    /// <summary>The bounds of a task, clause by clause.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="task">One of its tasks.</param>
    /// <returns>One entry for each clause of its time, in the order said; it has no end where the clause sets none, where another task sets it, and where its day is not known.</returns>
    public static ImmutableArray<TaskBound> Of(Planting planting, PlantingTask task)
    {
        var moments = new MomentDays(planting);
        return [.. task.Times.Select(clause => moments.BoundOf(clause, task))];
    }
}
