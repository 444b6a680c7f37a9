namespace GroveSpec.Syntax.Tree;

/// <summary>Two coordinates in the plan. A unit at the second, or behind a list of points, holds for those before it.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">To the back.</param>
public sealed record PlanPointSyntax(QuantitySyntax X, QuantitySyntax Y) : SyntaxNode;
