namespace GroveSpec.Syntax.Tree;

/// <summary>A bare word that names something or chooses among known words.</summary>
/// <param name="Text">The word as written.</param>
public sealed record NameSyntax(string Text) : SyntaxNode;
