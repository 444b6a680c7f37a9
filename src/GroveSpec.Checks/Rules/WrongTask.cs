using System.Collections.Immutable;
using GroveSpec.Model.Tasks;

namespace GroveSpec.Checks.Rules;

/// <summary>Wire taken off, or a sacrifice removed, of a task that is neither.</summary>
internal sealed class WrongTask : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "wrong-task",
        Severity = Severity.Error,
        Meaning = "A task belongs to another that is not of the kind it needs.",
        Explanation = "Wire is taken off where a wire task put it on, and a sacrifice branch is removed where a sacrifice task let it grow.",
        Source = "the language",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        Dictionary<string, TaskKind>? kinds = null;
        foreach (var task in context.Planting.Tasks)
        {
            if (task.Target is not TaskTarget.OfTask of || task.Kind.Value is not (TaskKind.Unwire or TaskKind.RemoveSacrifice)
                || !(kinds ??= KindsOf(context.Planting.Tasks)).TryGetValue(of.Name.Value, out var kind))
            {
                continue;
            }

            var message = task.Kind.Value switch
            {
                TaskKind.Unwire when kind != TaskKind.Wire => $"{Wording.Name(task.Name)} takes wire off, but {Wording.Name(of.Name.Value)} puts none on: name a wire task.",
                TaskKind.RemoveSacrifice when kind != TaskKind.Sacrifice => $"{Wording.Name(task.Name)} removes a sacrifice branch, but {Wording.Name(of.Name.Value)} lets none grow: name a sacrifice task.",
                _ => null,
            };
            if (message is not null)
            {
                yield return new Finding
                {
                    Check = Description,
                    Severity = Description.Severity,
                    Place = context.Origins.Locate(of.Name.Origin),
                    Message = message,
                };
            }
        }
    }

    private static Dictionary<string, TaskKind> KindsOf(ImmutableArray<PlantingTask> tasks)
    {
        var kinds = new Dictionary<string, TaskKind>(tasks.Length, StringComparer.Ordinal);
        foreach (var task in tasks)
        {
            kinds.TryAdd(task.Name, task.Kind.Value);
        }

        return kinds;
    }
}
