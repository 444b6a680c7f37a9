using System.Collections.Immutable;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Editing.Completing;

/// <summary>Where the caret stands in the grammar of its line.</summary>
/// <param name="Words">The words and marks of the statement before the caret, the word begun there left out; of a block in braces its head, and then the words of the row or of the braces.</param>
/// <param name="Row">In a block, the words since the brace or the line's start; empty elsewhere.</param>
/// <param name="Replaced">The word begun at the caret.</param>
/// <param name="IsInBraces">Whether it stands between the braces of a block.</param>
/// <param name="IsInText">Whether it stands in a comment or a quoted text, where nothing is completed.</param>
internal sealed record CaretPlace(ImmutableArray<string> Words, ImmutableArray<string> Row, TextSpan Replaced, bool IsInBraces, bool IsInText)
{
    private const int FarthestBack = 2_000;

    /// <summary>The first word of the statement; empty at its start.</summary>
    public string Head => Words.IsEmpty ? "" : Words[0];

    /// <summary>The words that decide: of the row in braces, else of the statement.</summary>
    public ImmutableArray<string> Near => IsInBraces ? Row : Words;

    /// <summary>A word before the caret.</summary>
    /// <param name="back">How many words back, from 1.</param>
    /// <returns>The word, or nothing.</returns>
    public string Back(int back) => Near.Length >= back ? Near[^back] : "";

    /// <summary>Looks at the place of a caret.</summary>
    /// <param name="tree">The file's tree.</param>
    /// <param name="offset">The caret.</param>
    /// <returns>Where it stands.</returns>
    public static CaretPlace At(SyntaxTree tree, int offset)
    {
        var tokens = tree.Tokens;
        var end = FirstNotBefore(tokens, offset);
        var replaced = new TextSpan(offset, 0);
        if (end > 0 && tokens[end - 1] is { Span: var span } last && offset <= span.End)
        {
            if ((last.Kind == TokenKind.Comment) || (last.Kind == TokenKind.Text && (offset < span.End || !IsClosed(tree.Text, span))))
            {
                return new([], [], replaced, IsInBraces: false, IsInText: true);
            }

            if (last.Kind is TokenKind.Word or TokenKind.Keyword or TokenKind.Stray)
            {
                replaced = span;
                end--;
            }
        }

        var lineStart = LineStart(tokens, end);
        var open = OpenBrace(tree, end);
        var words = Texts(tree, open >= 0 ? LineStart(tokens, open) : lineStart, end);
        var row = open < 0 ? [] : Texts(tree, Math.Max(open + 1, lineStart), end);
        return new(words, row, replaced, open >= 0, IsInText: false);
    }

    private static int FirstNotBefore(ImmutableArray<SyntaxToken> tokens, int offset)
    {
        int low = 0, high = tokens.Length;
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = tokens[middle].Span.Start < offset ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    private static bool IsClosed(SourceText text, TextSpan span) => span.Length > 1 && text.Content[span.End - 1] == '"';

    private static int LineStart(ImmutableArray<SyntaxToken> tokens, int end)
    {
        while (end > 0 && tokens[end - 1].Kind != TokenKind.LineEnd)
        {
            end--;
        }

        return end;
    }

    /// <summary>The brace that is open at a place; -1 where none is. A line that begins another statement closes all before it.</summary>
    private static int OpenBrace(SyntaxTree tree, int end)
    {
        var depth = 0;
        for (var index = end - 1; index >= 0 && index > end - FarthestBack; index--)
        {
            var token = tree.Tokens[index];
            if (token.Kind == TokenKind.Mark && token.Span.Length == 1)
            {
                switch (tree.Text.Content[token.Span.Start])
                {
                    case '}':
                        depth++;
                        break;
                    case '{' when depth-- == 0:
                        return index;
                    default:
                        break;
                }
            }
            else if (depth == 0 && token.Kind == TokenKind.Keyword && IsFirst(tree.Tokens, index) && tree.Text.Slice(token.Span) is "trunk" or "tape" or "task" or "planting" or "accept" or "mute" or "tolerance" or "seen" or "use" or "site" or "viewed" or "container" or "habit" or "concept")
            {
                return -1;
            }
        }

        return -1;
    }

    private static bool IsFirst(ImmutableArray<SyntaxToken> tokens, int index)
    {
        while (index > 0 && tokens[index - 1].Kind == TokenKind.Blank)
        {
            index--;
        }

        return index == 0 || tokens[index - 1].Kind == TokenKind.LineEnd;
    }

    private static ImmutableArray<string> Texts(SyntaxTree tree, int start, int end)
    {
        var words = ImmutableArray.CreateBuilder<string>();
        for (var index = start; index < end; index++)
        {
            if (tree.Tokens[index].Kind is not (TokenKind.Blank or TokenKind.Comment or TokenKind.LineEnd))
            {
                words.Add(tree.Text.Slice(tree.Tokens[index].Span));
            }
        }

        return words.ToImmutable();
    }
}
