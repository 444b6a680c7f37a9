namespace GroveSpec.Syntax.Tree;

/// <summary>A text in double quotes.</summary>
/// <param name="Value">What it says, with <c>\"</c>, <c>\\</c> and <c>\n</c> resolved.</param>
public sealed record TextSyntax(string Value) : SyntaxNode;
