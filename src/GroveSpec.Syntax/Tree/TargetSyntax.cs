using System.Collections.Immutable;

namespace GroveSpec.Syntax.Tree;

/// <summary>What a task is done to, as written. Closed.</summary>
public abstract record TargetSyntax : SyntaxNode
{
    private TargetSyntax()
    {
    }

    /// <summary><c>on A B C</c>.</summary>
    public sealed record OnTrunks(ImmutableArray<NameSyntax> Names) : TargetSyntax;

    /// <summary><c>on all</c>.</summary>
    public sealed record OnAll : TargetSyntax;

    /// <summary><c>on role R</c>.</summary>
    public sealed record OnRole(NameSyntax Name) : TargetSyntax;

    /// <summary><c>of TASK</c>.</summary>
    public sealed record OfTask(NameSyntax Name) : TargetSyntax;
}
