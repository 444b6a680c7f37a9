using System.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Printing;

/// <summary>Gives the text back from a tree.</summary>
public static class TreeText
{
    /// <summary>Joins the tokens that the tree's statements own.</summary>
    /// <param name="tree">A tree.</param>
    /// <returns>The very text that it was read from.</returns>
    public static string Of(SyntaxTree tree)
    {
        ArgumentNullException.ThrowIfNull(tree);
        var text = new StringBuilder(tree.Text.Length);
        foreach (var statement in tree.Statements)
        {
            for (var index = 0; index < statement.TokenCount; index++)
            {
                var span = tree.Tokens[statement.FirstToken + index].Span;
                text.Append(tree.Text.Content, span.Start, span.Length);
            }
        }

        return text.ToString();
    }
}
