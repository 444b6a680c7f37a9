namespace GroveSpec.Syntax.Tree;

/// <summary>Three coordinates.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">To the back.</param>
/// <param name="Z">Above the soil.</param>
public sealed record SpacePointSyntax(QuantitySyntax X, QuantitySyntax Y, QuantitySyntax Z) : SyntaxNode;
