using System.Collections.Immutable;

namespace GroveSpec.Syntax.Tree;

/// <summary>One row of a <c>measured</c> block: a trunk and what was read of it.</summary>
/// <param name="Trunk">The trunk's name.</param>
/// <param name="Values">Only <see cref="Clause.Thickness"/>, <see cref="Clause.Height"/> and <see cref="Clause.Crown"/>.</param>
public sealed record ReadingSyntax(NameSyntax Trunk, ImmutableArray<Clause> Values) : SyntaxNode;
