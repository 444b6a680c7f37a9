using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Printing;

/// <summary>Prints a file in the one form that the language has for it.</summary>
public static class Tidy
{
    /// <summary>
    /// The text in its tidy form: lines of one kind that follow each other stand in columns, every number has its unit,
    /// trailing blanks are gone. Every comment and blank line stays, a statement that could not be read stays as it was
    /// written, and nothing changes its meaning. Doing it again changes nothing.
    /// </summary>
    /// <param name="tree">The tree of a file.</param>
    /// <returns>The text, with the line ends of the file's first line, ending with one; empty for an empty file.</returns>
    public static string Format(SyntaxTree tree)
    {
        ArgumentNullException.ThrowIfNull(tree);
        var page = new TidyPage(LineEndOf(tree));
        var reader = new TidyReader(tree, page);
        foreach (var statement in tree.Statements)
        {
            reader.Add(statement);
        }

        return (tree.Text.Content.StartsWith('\uFEFF') ? "\uFEFF" : string.Empty) + page.Print();
    }

    private static string LineEndOf(SyntaxTree tree)
    {
        foreach (var token in tree.Tokens)
        {
            if (token.Kind == TokenKind.LineEnd)
            {
                return token.Span.Length == 2 ? "\r\n" : "\n";
            }
        }

        return "\n";
    }
}
