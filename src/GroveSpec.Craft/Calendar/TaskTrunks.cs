using System.Collections.Immutable;
using GroveSpec.Model;
using GroveSpec.Model.Tasks;

namespace GroveSpec.Craft.Calendar;

/// <summary>Which trunks a task is done to.</summary>
public static class TaskTrunks
{
    private const int LongestChain = 8;

    /// <summary>The trunks of a task; of a task that looks after another, those of that one.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="task">One of its tasks.</param>
    /// <returns>Names of trunks that the planting has, each once, in the order of the file; empty where the task names none of them.</returns>
    public static ImmutableArray<string> Of(Planting planting, PlantingTask task)
    {
        // A chain longer than any that is meant is a circle.
        for (var step = 0; step < LongestChain; step++)
        {
            switch (task.Target)
            {
                case TaskTarget.OnTrunks on:
                    var named = on.Names.Select(name => name.Value).ToHashSet(StringComparer.Ordinal);
                    return [.. planting.Trunks.Select(trunk => trunk.Name).Where(named.Contains).Distinct(StringComparer.Ordinal)];
                case TaskTarget.OnAll:
                    return [.. planting.Trunks.Select(trunk => trunk.Name).Distinct(StringComparer.Ordinal)];
                case TaskTarget.OnRole role:
                    return [.. planting.Trunks.Where(trunk => trunk.Role?.Value == role.Name.Value).Select(trunk => trunk.Name).Distinct(StringComparer.Ordinal)];
                case TaskTarget.OfTask of when planting.Tasks.FirstOrDefault(other => other.Name == of.Name.Value) is { } other && other != task:
                    task = other;
                    continue;
                default:
                    return [];
            }
        }

        return [];
    }
}
