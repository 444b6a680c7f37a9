using System.Collections.Immutable;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Syntax.Tree;

/// <summary>
/// The tree of a text. Any text has one; joining the tokens that its statements own gives the text back.
/// </summary>
/// <param name="Text">The text it was read from.</param>
/// <param name="Tokens">Every token in order, covering the text without gap or overlap.</param>
/// <param name="Statements">Every statement in order; together they own every token once.</param>
/// <param name="Problems">What could not be read, in the order of the text.</param>
public sealed record SyntaxTree(
    SourceText Text,
    ImmutableArray<SyntaxToken> Tokens,
    ImmutableArray<Statement> Statements,
    ImmutableArray<SyntaxProblem> Problems);
