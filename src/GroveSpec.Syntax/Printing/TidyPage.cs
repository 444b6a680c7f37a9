using System.Globalization;
using System.Text;

namespace GroveSpec.Syntax.Printing;

/// <summary>Sets the columns of lines and puts them together.</summary>
internal sealed class TidyPage
{
    // A cell wider than this does not push the columns of its neighbours out.
    private const int WidestCell = 48;

    // A line longer than this carries its comment where it ends.
    private const int LongestBeforeComment = 90;
    private const int GapBeforeComment = 3;

    private readonly string lineEnd;
    private readonly List<TidyLine> lines = [];

    public TidyPage(string lineEnd) => this.lineEnd = lineEnd;

    /// <summary>Adds a line behind the others.</summary>
    public void Add(TidyLine line) => lines.Add(line);

    /// <summary>The whole text.</summary>
    public string Print()
    {
        var bodies = new string[lines.Count];
        for (var index = 0; index < lines.Count;)
        {
            index = lines[index].Layout is null ? PrintPlain(bodies, index) : PrintRun(bodies, index);
        }

        var text = new StringBuilder();
        for (var index = 0; index < lines.Count;)
        {
            index = AppendParagraph(text, bodies, index);
        }

        return text.ToString();
    }

    private static int WidthOf(string text)
    {
        var width = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            if (Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format))
            {
                width++;
            }
        }

        return width;
    }

    private int PrintPlain(string[] bodies, int index)
    {
        var line = lines[index];
        bodies[index] = line.Verbatim ?? (line.Cells.Count == 0 ? string.Empty : new string(' ', line.Indent) + string.Join(' ', line.Cells.Select(static cell => cell.Text)));
        return index + 1;
    }

    /// <summary>Lines of one layout up to the next blank line or line of another kind; comments and what could not be read do not part them.</summary>
    private int PrintRun(string[] bodies, int start)
    {
        var layout = lines[start].Layout!;
        var end = start;
        var last = start;
        while (end < lines.Count && !lines[end].IsBlank && (lines[end].Layout == layout || lines[end].Layout is null && (lines[end].IsComment || lines[end].Verbatim is not null)))
        {
            last = lines[end].Layout == layout ? end : last;
            end++;
        }

        end = last + 1;
        var widths = new int[layout.Gaps.Length];
        Array.Fill(widths, -1);
        for (var index = start; index < end; index++)
        {
            foreach (var (column, text) in lines[index].Cells)
            {
                var width = WidthOf(text);
                widths[column] = Math.Max(widths[column], width > WidestCell ? 0 : width);
            }
        }

        widths[0] = Math.Max(widths[0], layout.FirstWidth);
        for (var index = start; index < end; index++)
        {
            if (lines[index].Layout is null)
            {
                PrintPlain(bodies, index);
            }
            else
            {
                bodies[index] = SetColumns(lines[index], layout, widths);
            }
        }

        return end;
    }

    private static string SetColumns(TidyLine line, TidyLayout layout, int[] widths)
    {
        var text = new StringBuilder();
        text.Append(' ', line.Indent);
        var used = line.Indent;
        var columnStart = line.Indent;
        var next = 0;
        foreach (var (column, cell) in line.Cells)
        {
            for (; next < column; next++)
            {
                columnStart += widths[next] < 0 ? 0 : widths[next] + layout.Gaps[next];
            }

            var least = used == line.Indent ? used : used + layout.Gaps[Math.Max(0, column - 1)];
            var place = Math.Max(columnStart, least);
            text.Append(' ', place - used).Append(cell);
            used = place + WidthOf(cell);
        }

        return text.ToString();
    }

    /// <summary>Lines without a blank one between them; their comments stand in one column.</summary>
    private int AppendParagraph(StringBuilder text, string[] bodies, int start)
    {
        var end = start;
        var commentColumn = 0;
        while (end < lines.Count && !lines[end].IsBlank)
        {
            if (lines[end].Comment is not null && !lines[end].IsComment && WidthOf(bodies[end]) is var width && width <= LongestBeforeComment)
            {
                commentColumn = Math.Max(commentColumn, width + GapBeforeComment);
            }

            end++;
        }

        for (var index = start; index < end; index++)
        {
            var line = lines[index];
            text.Append(bodies[index]);
            if (line.IsComment)
            {
                text.Append(' ', line.Indent).Append(line.Comment);
            }
            else if (line.Comment is not null)
            {
                text.Append(' ', Math.Max(GapBeforeComment, commentColumn - WidthOf(bodies[index]))).Append(line.Comment);
            }

            text.Append(line.HasLineEnd ? string.Empty : lineEnd);
        }

        if (end < lines.Count)
        {
            text.Append(lineEnd);
            end++;
        }

        return end;
    }
}
