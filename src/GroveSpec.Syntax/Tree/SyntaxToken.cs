using GroveSpec.Syntax.Text;

namespace GroveSpec.Syntax.Tree;

/// <summary>The smallest piece of text with a meaning. The tokens of a tree cover its text without gap or overlap.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Span">Where it stands.</param>
public readonly record struct SyntaxToken(TokenKind Kind, TextSpan Span);
