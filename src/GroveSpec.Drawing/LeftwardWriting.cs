using System.Text;

namespace GroveSpec.Drawing;

/// <summary>The scripts that are written from right to left, such as Hebrew, Arabic, Syriac, Thaana and N'Ko.</summary>
/// <remarks>Ranges of Unicode's blocks whose letters have the bidirectional class R or AL (Unicode Standard Annex 9 and its data), without their digits.</remarks>
public static class LeftwardWriting
{
    /// <summary>Whether a text holds a letter that is written from right to left.</summary>
    /// <param name="text">Any text.</param>
    /// <returns>Whether it does; false for an empty text.</returns>
    public static bool Holds(ReadOnlySpan<char> text)
    {
        foreach (var c in text)
        {
            if (c >= '\u0590')
            {
                return HoldsBeyondLatin(text);
            }
        }

        return false;
    }

    /// <summary>Whether a letter is written from right to left.</summary>
    /// <param name="rune">Any character.</param>
    /// <returns>Whether it is; false for digits, marks and punctuation of those scripts.</returns>
    public static bool IsLetter(Rune rune) =>
        rune.Value is (>= 0x0590 and <= 0x08FF) or (>= 0xFB1D and <= 0xFDFF) or (>= 0xFE70 and <= 0xFEFE) or (>= 0x10800 and <= 0x10FFF) or (>= 0x1E800 and <= 0x1EFFF)
        && Rune.IsLetter(rune);

    /// <summary>Whether a letter is one of Arabic's kind, after which numbers run as Arabic's own do.</summary>
    /// <param name="rune">Any character.</param>
    /// <returns>Whether it is.</returns>
    public static bool IsArabicLetter(Rune rune) =>
        rune.Value is (>= 0x0600 and <= 0x07BF) or (>= 0x0860 and <= 0x08FF) or (>= 0xFB50 and <= 0xFDFF) or (>= 0xFE70 and <= 0xFEFE) or (>= 0x1EE00 and <= 0x1EEFF)
        && Rune.IsLetter(rune);

    private static bool HoldsBeyondLatin(ReadOnlySpan<char> text)
    {
        foreach (var rune in text.EnumerateRunes())
        {
            if (IsLetter(rune))
            {
                return true;
            }
        }

        return false;
    }
}
