namespace GroveSpec.Syntax.Tree;

/// <summary>A bare word that names something or chooses among known words.</summary>
/// <param name="Text">The word as written; where it was to be one of some known words and is only near to one, that word, with a problem in the tree.</param>
public sealed record NameSyntax(string Text) : SyntaxNode;
