using System.Collections.Immutable;
using GroveSpec.Model;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;

namespace GroveSpec.Craft.Calendar;

/// <summary>What each thing that is said of a task's time comes to, by itself.</summary>
public static class TaskMoments
{
    /// <summary>Reckons the moments of a task's time.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="task">One of its tasks.</param>
    /// <param name="tasks">The dates of all its tasks, from <see cref="TaskDates.Of"/>.</param>
    /// <returns>One entry for each moment, clause by clause in the order said; a clause that names none, such as how often, has no entry.</returns>
    public static ImmutableArray<TaskMoment> Of(Planting planting, PlantingTask task, ImmutableArray<DatedTask> tasks)
    {
        var days = new MomentDays(planting);
        var moments = ImmutableArray.CreateBuilder<TaskMoment>();
        foreach (var clause in task.Times)
        {
            var (first, second) = TaskDates.MomentsOf(clause);
            foreach (var moment in new[] { first, second })
            {
                if (moment is Moment.OfTask of)
                {
                    moments.Add(new(clause, moment) { Other = tasks.FirstOrDefault(dated => dated.Task.Name == of.Task) });
                }
                else if (moment is Moment.StageOfYear stage)
                {
                    moments.Add(new(clause, moment) { Onset = days.OnsetOf(stage, task) });
                }
                else if (moment is not null)
                {
                    moments.Add(new(clause, moment) { Days = days.Of(moment, task).Days });
                }
            }
        }

        return moments.ToImmutable();
    }
}
