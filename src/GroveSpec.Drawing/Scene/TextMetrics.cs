using System.Globalization;

namespace GroveSpec.Drawing.Scene;

/// <summary>How much room text takes, from the widths of EB Garamond and a careful guess for letters it lacks.</summary>
internal static class TextMetrics
{
    /// <summary>The families to set text in, the first that is there; all of them with lining numerals, as far as they have a choice.</summary>
    public const string Families = "'EB Garamond',Garamond,'Times New Roman',serif";

    /// <summary>
    /// How much wider than measured a box for text is kept, so that the widest of the usual fallback faces still fits.
    /// A wide face that a system may give for serif runs about a quarter wider than EB Garamond (from memory).
    /// </summary>
    public const double Reserve = 1.3;

    /// <summary>From the baseline up to the top of the tallest letters, in ems.</summary>
    public const double Ascent = 0.78;

    /// <summary>From the baseline down to the foot of the lowest letters, in ems.</summary>
    public const double Descent = 0.27;

    /// <summary>How wide a line of text is in EB Garamond.</summary>
    /// <param name="text">The text.</param>
    /// <param name="sizePixels">The size of its letters.</param>
    /// <param name="face">The face.</param>
    /// <returns>Pixels; 0 for an empty text. Letters that the face lacks count one em, Hebrew and Arabic ones less, wide ones and pictures 1.1 em, combining marks nothing.</returns>
    public static double Width(ReadOnlySpan<char> text, double sizePixels, Face face = Face.Regular)
    {
        long thousandths = 0;
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                i++;
                thousandths += 1300;
                continue;
            }

            thousandths += Advance(text[i], face);
        }

        return thousandths * sizePixels / 1000;
    }

    /// <summary>The room kept for a line of text, whatever serif face it is set in.</summary>
    /// <param name="text">The text.</param>
    /// <param name="sizePixels">The size of its letters.</param>
    /// <param name="face">The face.</param>
    /// <returns>Pixels.</returns>
    public static double ReservedWidth(ReadOnlySpan<char> text, double sizePixels, Face face = Face.Regular) => Width(text, sizePixels, face) * Reserve;

    private static int Advance(char c, Face face)
    {
        var table = face == Face.Italic ? AdvanceWidths.Italic : AdvanceWidths.Regular;
        var width = c switch
        {
            >= (char)AdvanceWidths.FirstLetter and <= (char)AdvanceWidths.LastLetter => table[c - AdvanceWidths.FirstLetter],
            >= (char)AdvanceWidths.FirstPunctuation and <= (char)AdvanceWidths.LastPunctuation =>
                table[c - AdvanceWidths.FirstPunctuation + AdvanceWidths.LastLetter - AdvanceWidths.FirstLetter + 1],
            _ => (ushort)0,
        };
        return width > 0 ? width : Guessed(c);
    }

    private static int Guessed(char c) => char.GetUnicodeCategory(c) switch
    {
        UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format or UnicodeCategory.Control => 0,
        _ => c switch
        {
            // In the faces that pictures have for them the widest Hebrew letter measures 613, and Arabic ones that stand alone 603 on average and 1,096 at most.
            (>= '\u05D0' and <= '\u05F4') or (>= '\uFB1D' and <= '\uFB4F') => 620,
            (>= '\u0620' and <= '\u06FF') or (>= '\u0750' and <= '\u077F') => 850,
            >= '\u1100' => 1100,
            _ => 1000,
        },
    };
}
