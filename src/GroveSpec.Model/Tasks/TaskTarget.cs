using System.Collections.Immutable;

namespace GroveSpec.Model.Tasks;

/// <summary>What a task is done to. Closed.</summary>
public abstract record TaskTarget
{
    private TaskTarget()
    {
    }

    /// <summary>Some trunks by name, in the order written; names may be unknown.</summary>
    /// <param name="Names">At least one.</param>
    public sealed record OnTrunks(ImmutableArray<Stated<string>> Names) : TaskTarget;

    /// <summary>Every trunk.</summary>
    public sealed record OnAll : TaskTarget;

    /// <summary>All trunks of a role; the name may be unknown.</summary>
    /// <param name="Name">The role.</param>
    public sealed record OnRole(Stated<string> Name) : TaskTarget;

    /// <summary>Whatever another task was done to; its name may be unknown.</summary>
    /// <param name="Name">The other task.</param>
    public sealed record OfTask(Stated<string> Name) : TaskTarget;
}
