using GroveSpec.Syntax.Text;

namespace GroveSpec.Syntax.Tree;

/// <summary>Something that could not be read.</summary>
/// <param name="Kind">Which kind of trouble.</param>
/// <param name="Span">Where.</param>
/// <param name="Message">A sentence that says what was expected and what to do, in a grower's words.</param>
/// <param name="Replacement">What would be right in its place; null when unknown.</param>
public sealed record SyntaxProblem(SyntaxProblemKind Kind, TextSpan Span, string Message, string? Replacement);
