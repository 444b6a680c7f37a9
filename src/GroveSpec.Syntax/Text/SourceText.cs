using System.Text;

namespace GroveSpec.Syntax.Text;

/// <summary>
/// A file's text with its line starts. Bytes that are not UTF-8 become single low surrogates U+DC80 to U+DCFF,
/// one a byte, so that <see cref="ToBytes"/> gives the very bytes back.
/// </summary>
public sealed class SourceText
{
    private int[]? lineStarts;

    private SourceText(string text) => Content = text;

    /// <summary>The text in UTF-16, a byte order mark included.</summary>
    public string Content { get; }

    /// <summary>How many UTF-16 code units it has.</summary>
    public int Length => Content.Length;

    /// <summary>Takes a text that is already decoded, such as one from an editor.</summary>
    /// <param name="text">Any text.</param>
    /// <returns>The text with its lines.</returns>
    public static SourceText FromText(string text) => new(text);

    /// <summary>Decodes a file.</summary>
    /// <param name="bytes">Any bytes.</param>
    /// <returns>The text with its lines.</returns>
    public static SourceText FromBytes(ReadOnlySpan<byte> bytes)
    {
        if (System.Text.Unicode.Utf8.IsValid(bytes))
        {
            return new(Encoding.UTF8.GetString(bytes));
        }

        var text = new StringBuilder(bytes.Length);
        while (!bytes.IsEmpty)
        {
            if (Rune.DecodeFromUtf8(bytes, out var rune, out var consumed) == System.Buffers.OperationStatus.Done)
            {
                text.Append(rune.ToString());
            }
            else
            {
                consumed = 1;
                text.Append((char)(0xDC00 + bytes[0]));
            }

            bytes = bytes[consumed..];
        }

        return new(text.ToString());
    }

    /// <summary>Encodes a text as <see cref="FromBytes"/> decoded it.</summary>
    /// <param name="text">A text, perhaps with single surrogates that stand for bytes.</param>
    /// <returns>The bytes; a single surrogate that stands for no byte becomes U+FFFD.</returns>
    public static byte[] ToBytes(string text)
    {
        using var bytes = new MemoryStream(text.Length + (text.Length / 8));
        Span<byte> buffer = stackalloc byte[4];
        for (var index = 0; index < text.Length;)
        {
            if (Rune.TryGetRuneAt(text, index, out var rune))
            {
                bytes.Write(buffer[..rune.EncodeToUtf8(buffer)]);
                index += rune.Utf16SequenceLength;
            }
            else
            {
                var unit = text[index++];
                if (unit is >= '\uDC80' and <= '\uDCFF')
                {
                    bytes.WriteByte((byte)(unit - 0xDC00));
                }
                else
                {
                    bytes.Write("\uFFFD"u8);
                }
            }
        }

        return bytes.ToArray();
    }

    /// <summary>The text of a span.</summary>
    /// <param name="span">A span within the text.</param>
    /// <returns>Its text.</returns>
    public string Slice(TextSpan span) => Content.Substring(span.Start, span.Length);

    /// <summary>The line and character of a place.</summary>
    /// <param name="position">A place from 0 to <see cref="Length"/>; beyond, the nearest end is taken.</param>
    /// <returns>Both from 0.</returns>
    public LinePosition PositionOf(int position)
    {
        position = Math.Clamp(position, 0, Content.Length);
        var starts = lineStarts ??= FindLineStarts(Content);
        var index = Array.BinarySearch(starts, position);
        var line = index >= 0 ? index : ~index - 1;
        return new(line, position - starts[line]);
    }

    /// <summary>The place of a line and character.</summary>
    /// <param name="position">Both from 0; beyond the line or the text, the nearest place is taken.</param>
    /// <returns>The place.</returns>
    public int OffsetOf(LinePosition position)
    {
        var starts = lineStarts ??= FindLineStarts(Content);
        if (position.Line < 0)
        {
            return 0;
        }

        if (position.Line >= starts.Length)
        {
            return Content.Length;
        }

        var start = starts[position.Line];
        var end = position.Line + 1 < starts.Length ? starts[position.Line + 1] : Content.Length;
        while (end > start && Content[end - 1] is '\n' or '\r' && (position.Line + 1 < starts.Length))
        {
            end--;
        }

        return Math.Clamp(start + position.Character, start, end);
    }

    /// <summary>Where the line ends on which a place lies.</summary>
    /// <param name="position">The place, in UTF-16 code units from the start; at most <see cref="Length"/>.</param>
    /// <returns>The place before the line's break, or the end of the text.</returns>
    public int EndOfLine(int position) => Content.AsSpan(position).IndexOfAny('\r', '\n') is var more and >= 0 ? position + more : Content.Length;

    /// <summary>How lines are broken about a place, so that what is written there is broken likewise.</summary>
    /// <param name="position">The place; at most <see cref="Length"/>.</param>
    /// <returns>The break of the place's own line; of the line before where it is the last and has none; a line feed where there is no other line.</returns>
    public string LineBreakAt(int position)
    {
        var end = EndOfLine(position);
        var at = end < Content.Length ? end : Content.AsSpan().LastIndexOfAny('\r', '\n');
        return at < 0 ? "\n"
            : Content[at] == '\r' ? (at + 1 < Content.Length && Content[at + 1] == '\n' ? "\r\n" : "\r")
            : at > 0 && Content[at - 1] == '\r' ? "\r\n"
            : "\n";
    }

    private static int[] FindLineStarts(string text)
    {
        var starts = new List<int> { 0 };
        for (var index = 0; index < text.Length; index++)
        {
            if (text[index] == '\n' || (text[index] == '\r' && (index + 1 == text.Length || text[index + 1] != '\n')))
            {
                starts.Add(index + 1);
            }
        }

        return [.. starts];
    }
}
