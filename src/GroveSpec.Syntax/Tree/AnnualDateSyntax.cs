namespace GroveSpec.Syntax.Tree;

/// <summary>A day of every year: <c>2 May</c>.</summary>
/// <param name="Day">The day's digits.</param>
/// <param name="Month">The month's name, whole or its first three letters.</param>
public sealed record AnnualDateSyntax(string Day, NameSyntax Month) : SyntaxNode;
