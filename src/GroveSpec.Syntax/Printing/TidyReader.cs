using System.Text;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Syntax.Printing;

/// <summary>Turns statements into lines of the tidy form.</summary>
internal sealed class TidyReader
{
    private const int BlockIndent = 2;

    private readonly SyntaxTree tree;
    private readonly TidyPage page;
    private readonly DefaultUnits units = new();
    private readonly TidyColumns columns = new();
    private readonly HashSet<TextSpan> zones = [];

    public TidyReader(SyntaxTree tree, TidyPage page)
    {
        this.tree = tree;
        this.page = page;
    }

    /// <summary>Adds the lines of a statement.</summary>
    public void Add(Statement statement)
    {
        var tokens = tree.Tokens.AsSpan(statement.FirstToken, statement.TokenCount);
        if (statement is Statement.Empty)
        {
            AddEmpty(tokens);
            return;
        }

        if (statement.IsBroken || statement is Statement.Unknown)
        {
            AddVerbatim(tokens);
            return;
        }

        units.Collect(statement);
        zones.Clear();
        zones.UnionWith(ZonesOf(statement));
        var layout = columns.Collect(statement);
        if (IsOnOneLine(tokens))
        {
            page.Add(ReadLine(tokens, statement is Statement.Measured or Statement.Profile ? null : layout, 0));
        }
        else
        {
            AddBlock(tokens, statement is Statement.Role ? null : layout);
        }
    }

    private static bool IsOnOneLine(ReadOnlySpan<SyntaxToken> tokens)
    {
        foreach (var token in tokens[..^1])
        {
            if (token.Kind == TokenKind.LineEnd)
            {
                return false;
            }
        }

        return true;
    }

    private void AddEmpty(ReadOnlySpan<SyntaxToken> tokens)
    {
        string? comment = null;
        foreach (var token in tokens)
        {
            if (token.Kind == TokenKind.Comment)
            {
                comment = TextOf(token).TrimEnd();
            }
        }

        if (comment is not null || tokens[^1].Kind == TokenKind.LineEnd)
        {
            page.Add(new TidyLine { Comment = comment });
        }
    }

    private void AddVerbatim(ReadOnlySpan<SyntaxToken> tokens)
    {
        var start = tokens[0].Span.Start;
        var end = tokens[^1].Kind == TokenKind.LineEnd ? tokens[^1].Span.Start : tokens[^1].Span.End;
        page.Add(new TidyLine
        {
            // The file's own byte order mark is printed before everything; one that stands elsewhere is a fault to keep.
            Verbatim = start == 0 && tree.Text.Content.StartsWith('\uFEFF') ? tree.Text.Content[1..end] : tree.Text.Content[start..end],
            HasLineEnd = tokens[^1].Kind == TokenKind.Stray && tree.Text.Content[end - 1] is '\n' or '\r',
        });
    }

    /// <summary>A block of several lines: its opening, its rows and its closing each on lines of their own.</summary>
    private void AddBlock(ReadOnlySpan<SyntaxToken> tokens, TidyLayout? rowLayout)
    {
        var part = new List<SyntaxToken>();
        TidyLine? opening = null;
        TidyLine? closing = null;
        var isOnOpeningLine = true;
        foreach (var token in tokens)
        {
            if (closing is not null)
            {
                closing.Comment ??= token.Kind == TokenKind.Comment ? TextOf(token).TrimEnd() : null;
                continue;
            }

            if (opening is null)
            {
                part.Add(token);
                if (IsMark(token, '{'))
                {
                    opening = ReadLine(part.ToArray(), null, 0);
                    page.Add(opening);
                    part.Clear();
                }

                continue;
            }

            if (IsMark(token, '}'))
            {
                AddRow(part, rowLayout, isAfterAll: true);
                closing = new TidyLine();
                closing.Cells.Add((0, "}"));
                page.Add(closing);
            }
            else if (token.Kind == TokenKind.LineEnd)
            {
                AddRow(part, rowLayout, isOnOpeningLine);
                isOnOpeningLine = false;
            }
            else if (token.Kind == TokenKind.Comment && isOnOpeningLine && opening.Comment is null && part.TrueForAll(static blank => blank.Kind == TokenKind.Blank))
            {
                opening.Comment = TextOf(token).TrimEnd();
            }
            else
            {
                part.Add(token);
            }
        }
    }

    /// <summary>Adds a row of a block; nothing when it is only what stands between a brace and the end or the beginning of its line.</summary>
    private void AddRow(List<SyntaxToken> part, TidyLayout? layout, bool isAfterAll)
    {
        if (!isAfterAll || part.Exists(static token => token.Kind != TokenKind.Blank))
        {
            var row = ReadLine(part.ToArray(), layout, BlockIndent);
            page.Add(row.Cells.Count == 0 && row.Comment is null ? new TidyLine() : row);
        }

        part.Clear();
    }

    /// <summary>The cells of the tokens of a line; without a layout all of them are one.</summary>
    private TidyLine ReadLine(ReadOnlySpan<SyntaxToken> tokens, TidyLayout? layout, int indent)
    {
        var cells = new List<(int Column, string Text)>();
        var cell = new StringBuilder();
        var column = 0;
        string? comment = null;
        SyntaxToken? before = null;
        var isWithinParentheses = false;
        foreach (var token in tokens)
        {
            if (token.Kind == TokenKind.Comment)
            {
                comment = TextOf(token).TrimEnd();
            }

            if (token.Kind is TokenKind.Blank or TokenKind.LineEnd or TokenKind.Comment)
            {
                continue;
            }

            var begins = BreakAt(token, layout, cells.Count == 0 && before is not null);
            if (begins is { } broken && before is { } last)
            {
                if (IsMark(last, ','))
                {
                    cell.Length--;
                }

                if (layout is not null && broken.Column > column)
                {
                    cells.Add((column, cell.ToString()));
                    cell.Clear();
                    column = broken.Column;
                }
                else
                {
                    cell.Append(IsMark(last, '{') ? " " : broken.Joiner ?? "   ");
                }
            }
            else if (before is { } previous)
            {
                cell.Append(Between(previous, token, isWithinParentheses));
            }

            AppendToken(cell, token);
            isWithinParentheses = IsMark(token, '(') || (isWithinParentheses && !IsMark(token, ')'));
            before = token;
        }

        if (before is { } end && IsMark(end, ','))
        {
            cell.Length--;
        }

        if (cell.Length > 0)
        {
            cells.Add((column, cell.ToString()));
        }

        var line = new TidyLine { Layout = cells.Count > 0 ? layout : null, Indent = indent, Comment = comment };
        line.Cells.AddRange(cells);
        return line;
    }

    private (int Column, string? Joiner)? BreakAt(SyntaxToken token, TidyLayout? layout, bool isSecond)
    {
        if (layout == TidyLayout.Head)
        {
            return isSecond ? (1, null) : IsBecause(token) ? (2, null) : null;
        }

        return layout == TidyLayout.Role && IsMark(token, '{') ? (1, null) : columns.At(token.Span.Start);
    }

    private void AppendToken(StringBuilder cell, SyntaxToken token)
    {
        cell.Append(tree.Text.Content, token.Span.Start, token.Span.Length);
        if (units.At(token.Span.End) is { } unit)
        {
            cell.Append(' ').Append(unit);
        }
    }

    private string Between(SyntaxToken before, SyntaxToken token, bool isWithinParentheses)
    {
        if (IsMark(token, ',') || IsMark(token, ')') || IsMark(before, '(') || (IsMark(before, ',') && isWithinParentheses))
        {
            return string.Empty;
        }

        // 8b is one word to a grower, though it is scanned as two; so is a zone that there is not.
        return zones.Contains(TextSpan.FromBounds(before.Span.Start, token.Span.End)) ? string.Empty : " ";
    }

    /// <summary>Where the hardiness zones of a statement stand.</summary>
    private static IEnumerable<TextSpan> ZonesOf(Statement statement) => statement switch
    {
        Statement.Site site => site.Clauses.OfType<Clause.Zone>().Select(zone => zone.Value.Span),
        Statement.Profile profile => profile.Entries.Where(entry => entry.Keyword.Text == "hardiness").SelectMany(entry => entry.Values).Select(zone => zone.Span),
        _ => [],
    };

    private bool IsBecause(SyntaxToken token) => token.Kind == TokenKind.Keyword && tree.Text.Content.AsSpan(token.Span.Start, token.Span.Length) is "because";

    private bool IsMark(SyntaxToken token, char mark) => token.Kind == TokenKind.Mark && tree.Text.Content[token.Span.Start] == mark;

    private string TextOf(SyntaxToken token) => tree.Text.Slice(token.Span);
}
