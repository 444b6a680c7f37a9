using System.Globalization;
using System.Text;

namespace GroveSpec.Cli.Terminals;

/// <summary>
/// Makes text from files fit to be shown on a terminal: whatever could move the cursor, change the direction of
/// writing, hide itself or pile up is written out as a code, so that it is seen and does nothing.
/// </summary>
internal static class HarmlessText
{
    /// <summary>How many marks may sit on one letter; scripts in use need at most three.</summary>
    public const int MostMarks = 3;

    /// <summary>Makes a text fit for one line of a terminal.</summary>
    /// <param name="text">Any text, line ends and single surrogates included.</param>
    /// <returns>The text on one line, the very same object where nothing had to be changed.</returns>
    public static string OneLine(string text)
    {
        foreach (var unit in text)
        {
            if (unit is < ' ' or > '~')
            {
                return Rewrite(text);
            }
        }

        return text;
    }

    /// <summary>Cuts a text down to what a person can take in.</summary>
    /// <param name="text">Any text.</param>
    /// <param name="most">How many UTF-16 code units to keep, at least 2.</param>
    /// <returns>The text, with a mark in its middle where something was left out.</returns>
    public static string Shorten(string text, int most)
    {
        if (text.Length <= most)
        {
            return text;
        }

        var head = (most - 1) / 2;
        var tail = text.Length - (most - 1 - head);
        head -= head > 0 && char.IsHighSurrogate(text[head - 1]) ? 1 : 0;
        tail += char.IsLowSurrogate(text[tail]) ? 1 : 0;
        return string.Concat(text.AsSpan(0, head), "…", text.AsSpan(tail));
    }

    /// <summary>How one character is shown.</summary>
    /// <param name="rune">The character.</param>
    /// <returns>The character itself, or its code.</returns>
    public static string Show(Rune rune) => IsHarmless(rune) ? rune.ToString() : Code(rune.Value);

    /// <summary>How a code unit that is no character is shown: as the byte that could not be read, else as its code.</summary>
    /// <param name="unit">A single surrogate.</param>
    /// <returns>Its code.</returns>
    public static string Show(char unit) => unit is >= '\uDC80' and <= '\uDCFF'
        ? $"<{unit - 0xDC00:X2}>"
        : Code(unit);

    /// <summary>How many cells of a terminal a shown text takes.</summary>
    /// <param name="rune">A character that is shown as itself.</param>
    /// <returns>0 for a mark on a letter, 2 for a wide character, else 1.</returns>
    public static int CellsOf(Rune rune)
    {
        if (rune.Value < 0x300)
        {
            return 1;
        }

        if (Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark)
        {
            return 0;
        }

        // The wide blocks of Unicode's East Asian Width (UAX 11), taken by whole blocks.
        return rune.Value is (>= 0x1100 and <= 0x115F) or (>= 0x2E80 and <= 0xA4CF) or (>= 0xAC00 and <= 0xD7A3)
            or (>= 0xF900 and <= 0xFAFF) or (>= 0xFE30 and <= 0xFE4F) or (>= 0xFF00 and <= 0xFF60)
            or (>= 0xFFE0 and <= 0xFFE6) or (>= 0x1F300 and <= 0x1F64F) or (>= 0x1F900 and <= 0x1F9FF) or (>= 0x20000 and <= 0x3FFFD)
            ? 2
            : 1;
    }

    /// <summary>Whether a character is a mark that sits on the letter before it.</summary>
    /// <param name="rune">The character.</param>
    /// <returns>True for a mark.</returns>
    public static bool IsMark(Rune rune) => rune.Value >= 0x300
        && Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark;

    private static string Rewrite(string text)
    {
        var shown = new StringBuilder(text.Length + 16);
        var marks = 0;
        for (var index = 0; index < text.Length;)
        {
            if (!Rune.TryGetRuneAt(text, index, out var rune))
            {
                shown.Append(Show(text[index++]));
                marks = 0;
                continue;
            }

            index += rune.Utf16SequenceLength;
            marks = IsMark(rune) ? marks + 1 : 0;
            if (marks <= MostMarks)
            {
                shown.Append(Show(rune));
            }
        }

        return shown.ToString();
    }

    private static bool IsHarmless(Rune rune) => rune.Value is >= ' ' and <= '~' || Rune.GetUnicodeCategory(rune) is not
        (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        or UnicodeCategory.PrivateUse or UnicodeCategory.Surrogate or UnicodeCategory.OtherNotAssigned);

    private static string Code(int value) => value switch
    {
        '\n' => "<line end>",
        '\r' => "<return>",
        '\t' => "<tab>",
        _ => $"<U+{value:X4}>",
    };
}
