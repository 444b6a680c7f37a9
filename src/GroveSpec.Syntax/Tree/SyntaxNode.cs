using GroveSpec.Syntax.Text;

namespace GroveSpec.Syntax.Tree;

/// <summary>A part of a statement.</summary>
public abstract record SyntaxNode
{
    /// <summary>What it covers, without the blanks and comments round it.</summary>
    public required TextSpan Span { get; init; }
}
