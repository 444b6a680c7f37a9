using System.Text;
using GroveSpec.Cli.Terminals;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Reports;

/// <summary>A line of a file as it can be shown, and the line that marks a place under it.</summary>
/// <param name="Line">The line, cut to the width, with all that could do harm written as codes.</param>
/// <param name="Mark">Spaces and marks, as wide as what they stand under.</param>
internal readonly record struct SourceExcerpt(string Line, string Mark)
{
    private const char Cut = '…';

    /// <summary>Shows the first line of a place.</summary>
    /// <param name="text">The text it lies in.</param>
    /// <param name="span">The place.</param>
    /// <param name="width">How many cells may be taken, at least 20.</param>
    /// <returns>What to show.</returns>
    public static SourceExcerpt Of(SourceText text, TextSpan span, int width)
    {
        var content = text.Content;
        var start = Math.Clamp(span.Start, 0, content.Length);
        var lineStart = start - text.PositionOf(start).Character;
        var lineEnd = content.AsSpan(start) is var rest && rest.IndexOfAny('\r', '\n') is var at and >= 0 ? start + at : content.Length;
        var end = Math.Clamp(span.End, start, lineEnd);

        // A little of what stands before is kept where not all fits, and no more of a long line is looked at than can be shown.
        var from = start - lineStart < width ? lineStart : start - (width / 3);
        from -= from > lineStart && from < content.Length && char.IsLowSurrogate(content[from]) ? 1 : 0;
        var line = new StringBuilder();
        var mark = new StringBuilder();
        var cells = 0;
        if (from > lineStart)
        {
            line.Append(Cut);
            mark.Append(' ');
            cells++;
        }

        for (var index = from; index < lineEnd;)
        {
            var isMarked = index >= start && (index < end || index == start);
            var (shown, taken, wide) = Next(content, index);
            if (cells + wide > width - 1)
            {
                line.Append(Cut);
                break;
            }

            line.Append(shown);
            mark.Append(isMarked ? '~' : ' ', wide);
            cells += wide;
            index += taken;
        }

        if (start >= lineEnd && cells < width)
        {
            mark.Append('~');
        }

        return new(line.ToString().TrimEnd(), mark.ToString().TrimEnd());
    }

    private static (string Shown, int Taken, int Cells) Next(string content, int index)
    {
        if (content[index] == '\t')
        {
            return ("    ", 1, 4);
        }

        if (!Rune.TryGetRuneAt(content, index, out var rune))
        {
            var code = HarmlessText.Show(content[index]);
            return (code, 1, code.Length);
        }

        // Marks that pile up on one letter are shown as far as scripts in use need them, and the rest is passed over.
        var taken = rune.Utf16SequenceLength;
        var shown = HarmlessText.Show(rune);
        var cells = shown.Length == taken ? HarmlessText.CellsOf(rune) : shown.Length;
        for (var marks = 0; Rune.TryGetRuneAt(content, Math.Min(index + taken, content.Length - 1), out var next)
            && index + taken < content.Length && HarmlessText.IsMark(next); marks++)
        {
            shown += marks < HarmlessText.MostMarks ? next.ToString() : "";
            taken += next.Utf16SequenceLength;
        }

        return (shown, taken, cells);
    }
}
