using System.Buffers;
using System.Text;

namespace GroveSpec.Drawing.Scene;

/// <summary>Markup in UTF-8, written straight into a pooled buffer: letters, text made harmless, and numbers with at most two decimals.</summary>
internal sealed class MarkupBuffer
{
    private static readonly SearchValues<char> NeedCare = SearchValues.Create(
        [.. "&<>\"'\ufffe\uffff", .. Range('\0', '\x1f'), .. Range('\x7f', '\x9f'), .. Range('\ud800', '\udfff')]);

    private byte[] buffer;
    private int length;

    /// <summary>Starts an empty text.</summary>
    /// <param name="capacity">How many bytes are likely to be written.</param>
    public MarkupBuffer(int capacity) => buffer = ArrayPool<byte>.Shared.Rent(capacity);

    /// <summary>How many bytes have been written.</summary>
    public int Length => length;

    /// <summary>The byte written last; there must be one.</summary>
    public char Last => (char)buffer[length - 1];

    /// <summary>Takes the text and gives the buffer back; the writer is of no use afterwards.</summary>
    /// <returns>All that was written.</returns>
    public string Finish()
    {
        var text = Encoding.UTF8.GetString(buffer, 0, length);
        GiveBack();
        return text;
    }

    /// <summary>Takes the text as it is stored in a file, and gives the buffer back; the writer is of no use afterwards.</summary>
    /// <returns>All that was written, in UTF-8 without a byte order mark.</returns>
    public byte[] FinishBytes()
    {
        var bytes = buffer.AsSpan(0, length).ToArray();
        GiveBack();
        return bytes;
    }

    /// <summary>Takes back all that was written since a place: an element that turned out to hold nothing.</summary>
    /// <param name="place">The <see cref="Length"/> to go back to.</param>
    public void TakeBack(int place) => length = place;

    /// <summary>Writes markup as it is. Never give it text from a file.</summary>
    /// <param name="markup">The markup.</param>
    public void Raw(ReadOnlySpan<char> markup)
    {
        Need(markup.Length * 3);
        length += Encoding.UTF8.GetBytes(markup, buffer.AsSpan(length));
    }

    /// <summary>Writes any text so that it is nothing but text, in an element or in a quoted attribute.</summary>
    /// <param name="text">The text; characters that XML 1.0 forbids become U+FFFD, line ends and tabs become spaces.</param>
    public void Escaped(ReadOnlySpan<char> text)
    {
        while (!text.IsEmpty)
        {
            var plain = text.IndexOfAny(NeedCare);
            if (plain != 0)
            {
                var run = plain < 0 ? text : text[..plain];
                Raw(run);
                text = text[run.Length..];
                continue;
            }

            var c = text[0];
            var isPair = char.IsHighSurrogate(c) && text.Length > 1 && char.IsLowSurrogate(text[1]);
            switch (c)
            {
                case '&': Raw("&amp;"); break;
                case '<': Raw("&lt;"); break;
                case '>': Raw("&gt;"); break;
                case '"': Raw("&quot;"); break;
                case '\'': Raw("&#39;"); break;
                case '\t' or '\n' or '\r': One(' '); break;
                default: Raw(isPair ? text[..2] : "\ufffd"); break;
            }

            text = text[(isPair ? 2 : 1)..];
        }
    }

    /// <summary>Writes a number without trailing zeros.</summary>
    /// <param name="value">The number, in hundredths.</param>
    public void Hundredths(long value)
    {
        Need(24);
        if (value < 0)
        {
            buffer[length++] = (byte)'-';
            value = -value;
        }

        var whole = value / 100;
        var part = (int)(value % 100);
        if (whole > 0 || part == 0)
        {
            whole.TryFormat(buffer.AsSpan(length), out var written);
            length += written;
        }

        if (part > 0)
        {
            buffer[length++] = (byte)'.';
            buffer[length++] = (byte)('0' + (part / 10));
            if (part % 10 != 0)
            {
                buffer[length++] = (byte)('0' + (part % 10));
            }
        }
    }

    /// <summary>Writes one character of plain ASCII.</summary>
    /// <param name="c">The character.</param>
    public void One(char c)
    {
        Need(1);
        buffer[length++] = (byte)c;
    }

    private static char[] Range(char first, char last)
    {
        var range = new char[last - first + 1];
        for (var index = 0; index < range.Length; index++)
        {
            range[index] = (char)(first + index);
        }

        return range;
    }

    private void GiveBack()
    {
        ArrayPool<byte>.Shared.Return(buffer);
        buffer = [];
        length = 0;
    }

    private void Need(int more)
    {
        if (length + more <= buffer.Length)
        {
            return;
        }

        var larger = ArrayPool<byte>.Shared.Rent(Math.Max(buffer.Length * 2, length + more));
        buffer.AsSpan(0, length).CopyTo(larger);
        ArrayPool<byte>.Shared.Return(buffer);
        buffer = larger;
    }
}
