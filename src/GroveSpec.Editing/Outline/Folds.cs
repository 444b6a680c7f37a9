using System.Collections.Immutable;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Editing.Outline;

/// <summary>Finds what of a file can be folded away.</summary>
public static class Folds
{
    /// <summary>Statements of several lines, runs of comment lines, and runs of lines that begin with the same word.</summary>
    /// <param name="tree">The file's tree.</param>
    /// <returns>Runs of text that span at least two lines, each with whether it is a comment.</returns>
    public static ImmutableArray<(TextSpan Span, bool IsComment)> Of(SyntaxTree tree)
    {
        ArgumentNullException.ThrowIfNull(tree);
        var found = ImmutableArray.CreateBuilder<(TextSpan Span, bool IsComment)>();
        Statement? first = null, last = null;
        var isComments = false;
        foreach (var statement in tree.Statements)
        {
            if (Lines(tree, statement.Span) > 1)
            {
                found.Add((statement.Span, false));
            }

            var isComment = IsComment(tree, statement);
            var goesOn = first is not null && (isComment ? isComments : !isComments && statement.GetType() == first.GetType() && statement is not (Statement.Empty or Statement.Unknown));
            if (goesOn)
            {
                last = statement;
                continue;
            }

            Close();
            (first, last, isComments) = (isComment || statement is not (Statement.Empty or Statement.Unknown) ? statement : null, null, isComment);
        }

        Close();
        found.Sort(static (left, right) => left.Span.CompareTo(right.Span));
        return found.ToImmutable();

        void Close()
        {
            if (first is not null && last is not null)
            {
                var start = isComments ? CommentOf(tree, first).Start : first.Span.Start;
                var end = isComments ? CommentOf(tree, last).End : last.Span.End;
                found.Add((TextSpan.FromBounds(start, end), isComments));
            }
        }
    }

    private static bool IsComment(SyntaxTree tree, Statement statement) => statement is Statement.Empty && CommentOf(tree, statement).Length > 0;

    private static TextSpan CommentOf(SyntaxTree tree, Statement statement)
    {
        for (var index = statement.FirstToken; index < statement.FirstToken + statement.TokenCount; index++)
        {
            if (tree.Tokens[index].Kind == TokenKind.Comment)
            {
                return tree.Tokens[index].Span;
            }
        }

        return default;
    }

    private static int Lines(SyntaxTree tree, TextSpan span) => tree.Text.PositionOf(span.End).Line - tree.Text.PositionOf(span.Start).Line + 1;
}
