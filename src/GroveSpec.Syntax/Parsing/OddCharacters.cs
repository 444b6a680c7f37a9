using System.Globalization;
using System.Text;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Syntax.Parsing;

/// <summary>Finds characters that cannot be seen, that turn the direction of writing, or that are not UTF-8.</summary>
internal static class OddCharacters
{
    /// <summary>The first such character of a run.</summary>
    /// <param name="content">The text.</param>
    /// <param name="start">Where the run begins.</param>
    /// <param name="end">The first place after it.</param>
    /// <param name="isWord">Whether the run is a bare word, in which no character may be invisible; a text in quotes or a comment may hold joiners, which some scripts need.</param>
    /// <returns>Where it is and what to say; null when there is none.</returns>
    public static (TextSpan Span, string Message, string? Replacement)? FindFirst(string content, int start, int end, bool isWord)
    {
        for (var index = start; index < end;)
        {
            if (!Rune.TryGetRuneAt(content, index, out var rune))
            {
                return (
                    new TextSpan(index, 1),
                    content[index] is >= '\uDC80' and <= '\uDCFF'
                        ? $"The byte {content[index] - 0xDC00:X2} here is not UTF-8; save the file as UTF-8, or write the character anew."
                        : "Half a character stands here; write it anew.",
                    null);
            }

            var length = rune.Utf16SequenceLength;
            if (IsTurning(rune.Value))
            {
                return (new TextSpan(index, length), $"A mark that turns the direction of writing (U+{rune.Value:X4}) stands here; what is read may not be what is seen. Take it out.", string.Empty);
            }

            if (isWord ? IsInvisible(content, index, rune) : IsControl(rune))
            {
                return (new TextSpan(index, length), $"A character that cannot be seen (U+{rune.Value:X4}) stands here; take it out.", string.Empty);
            }

            index += length;
        }

        return null;
    }

    private static bool IsTurning(int value) => value is (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069) or 0x200E or 0x200F or 0x061C;

    private static bool IsControl(Rune rune) => Rune.GetUnicodeCategory(rune) == UnicodeCategory.Control && rune.Value != '\t';

    private static bool IsInvisible(string content, int index, Rune rune)
    {
        // Within an emoji a joiner and a variation selector are part of the picture.
        if (rune.Value is 0x200D or 0xFE0F)
        {
            return index == 0 || CharUnicodeInfo.GetUnicodeCategory(content[index - 1]) is not (UnicodeCategory.Surrogate or UnicodeCategory.OtherSymbol or UnicodeCategory.NonSpacingMark);
        }

        return rune.Value is (>= 0xFE00 and <= 0xFE0E) or (>= 0xE0100 and <= 0xE01EF) or 0x115F or 0x1160 or 0x3164 or 0xFFA0 or 0x034F
            || Rune.GetUnicodeCategory(rune) is UnicodeCategory.Format or UnicodeCategory.Control or UnicodeCategory.LineSeparator
                or UnicodeCategory.ParagraphSeparator or UnicodeCategory.OtherNotAssigned or UnicodeCategory.PrivateUse;
    }
}
