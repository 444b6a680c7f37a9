using System.Collections.Immutable;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Parsing;

/// <summary>Reads a text into its tree.</summary>
public static class GroveParser
{
    /// <summary>Reads any text; it never throws, and takes time in proportion to the text's length.</summary>
    /// <param name="text">The text of a file, whatever it holds.</param>
    /// <returns>The tree, with a problem for each place that could not be read. At most 4,194,304 characters and 120,000 lines are read, lines of up to 100,000 characters and words of up to 10,000; what lies beyond is kept in the tree as text and told.</returns>
    public static SyntaxTree Parse(SourceText text) => Parse(text, isPlainAllowed: true);

    /// <summary>Reads a text that came of another by an edit: statements that the edit left as they were are taken from the tree of the other.</summary>
    /// <param name="text">The text.</param>
    /// <param name="before">The tree of another text; the more the two texts have in common at their starts and ends, the less is read. It is not changed.</param>
    /// <returns>The very tree that <see cref="Parse(SourceText)"/> makes of the text.</returns>
    public static SyntaxTree Parse(SourceText text, SyntaxTree before)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(before);
        return IncrementalParse.Of(text, before) ?? Parse(text);
    }

    /// <summary>Reads a text, on request with the generated parser alone, so that a test can hold the short way to it.</summary>
    internal static SyntaxTree Parse(SourceText text, bool isPlainAllowed)
    {
        ArgumentNullException.ThrowIfNull(text);
        var problems = new ProblemList();
        var scanner = new Scanner(text.Content, problems);
        scanner.Scan();
        var reader = new StatementReader(text.Content, scanner, problems, isPlainAllowed);
        var statements = ImmutableArray.CreateBuilder<Statement>(scanner.Slices.Count);
        foreach (var slice in scanner.Slices)
        {
            statements.Add(reader.Read(slice));
        }

        return new SyntaxTree(text, reader.Tokens, statements.MoveToImmutable(), problems.ToImmutable(text.Length));
    }
}
