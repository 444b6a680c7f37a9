using GroveSpec.LanguageServer.Protocol;
using GroveSpec.Syntax.Text;
using Range = GroveSpec.LanguageServer.Protocol.Range;

namespace GroveSpec.LanguageServer.Sessions;

/// <summary>Counts places of a text as the editor does. The only place where lines and characters are known.</summary>
/// <param name="Text">The text.</param>
/// <param name="IsUtf8">Whether characters are counted in bytes of UTF-8; else in code units of UTF-16.</param>
internal readonly record struct PositionMap(SourceText Text, bool IsUtf8)
{
    /// <summary>The position of a place.</summary>
    /// <param name="offset">UTF-16 code units from the start; beyond the text, its end is taken.</param>
    /// <returns>The position.</returns>
    public Position PositionOf(int offset)
    {
        var (line, character) = Text.PositionOf(offset);
        return new(line, IsUtf8 ? BytesOf(Text.Content.AsSpan(Math.Clamp(offset, 0, Text.Length) - character, character)) : character);
    }

    /// <summary>The range of a run of text.</summary>
    /// <param name="span">The run.</param>
    /// <returns>Its range.</returns>
    public Range RangeOf(TextSpan span) => new(PositionOf(span.Start), PositionOf(span.End));

    /// <summary>An edit as the editor makes it.</summary>
    /// <param name="edit">An edit of this text.</param>
    /// <returns>It.</returns>
    public Protocol.TextEdit EditOf(Syntax.Text.TextEdit edit) => new(RangeOf(edit.Place.Span), edit.NewText);

    /// <summary>The place of a position.</summary>
    /// <param name="position">A position; beyond a line or the text the nearest place is taken, within a character the place before it.</param>
    /// <returns>UTF-16 code units from the start.</returns>
    public int OffsetOf(Position position)
    {
        var start = Text.OffsetOf(new LinePosition(position.Line, 0));
        if (position.Line < 0 || position.Character <= 0)
        {
            return start;
        }

        var end = Text.OffsetOf(new LinePosition(position.Line, int.MaxValue - start));
        if (IsUtf8)
        {
            return start + UnitsOf(Text.Content.AsSpan(start, end - start), position.Character);
        }

        var offset = (int)Math.Min((long)start + position.Character, end);
        return offset > start && offset < Text.Length && char.IsLowSurrogate(Text.Content[offset]) && char.IsHighSurrogate(Text.Content[offset - 1]) ? offset - 1 : offset;
    }

    /// <summary>The run of a range; one whose ends are the wrong way round is turned.</summary>
    /// <param name="range">The range.</param>
    /// <returns>The run.</returns>
    public TextSpan SpanOf(Range range)
    {
        var (start, end) = (OffsetOf(range.Start), OffsetOf(range.End));
        return start <= end ? TextSpan.FromBounds(start, end) : TextSpan.FromBounds(end, start);
    }

    private static int BytesOf(ReadOnlySpan<char> text)
    {
        var bytes = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            bytes += rune.Utf8SequenceLength;
        }

        return bytes;
    }

    private static int UnitsOf(ReadOnlySpan<char> text, int bytes)
    {
        var units = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            bytes -= rune.Utf8SequenceLength;
            if (bytes < 0)
            {
                break;
            }

            units += rune.Utf16SequenceLength;
        }

        return units;
    }
}
