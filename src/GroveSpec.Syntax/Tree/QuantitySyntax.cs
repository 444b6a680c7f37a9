namespace GroveSpec.Syntax.Tree;

/// <summary>A number with or without a unit.</summary>
/// <param name="Number">The number as written, such as <c>-12.5</c>; decimal digits only.</param>
/// <param name="Unit">The unit as written, such as <c>mm</c>, <c>deg</c> or <c>%</c>; null when left out.</param>
public sealed record QuantitySyntax(string Number, NameSyntax? Unit) : SyntaxNode;
