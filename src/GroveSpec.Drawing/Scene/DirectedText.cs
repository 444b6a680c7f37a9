using System.Globalization;
using System.Text;

namespace GroveSpec.Drawing.Scene;

/// <summary>Keeps what is written from right to left to itself in a line that runs from left to right, so that it does not change places with numbers and names beside it.</summary>
internal static class DirectedText
{
    private const char Begin = '\u2068';
    private const char End = '\u2069';

    /// <summary>
    /// Wraps each name that is written from right to left in an isolate (U+2068 to U+2069), and names that only a blank parts in one together.
    /// What stands in an isolate already is left as it is; one that a broken line left open is closed.
    /// </summary>
    /// <param name="line">A line of text, from anywhere.</param>
    /// <returns>The line itself where nothing of it runs leftward.</returns>
    public static string Of(string line)
    {
        if (!LeftwardWriting.Holds(line))
        {
            return line;
        }

        var directed = new StringBuilder(line.Length + 8);
        var open = 0;
        for (var place = 0; place < line.Length;)
        {
            var c = line[place];
            if (c is >= '\u2066' and <= Begin)
            {
                open++;
            }
            else if (c == End && --open < 0)
            {
                // Its beginning stands on the line before.
                open = 0;
                place++;
                continue;
            }

            if (open == 0 && PhraseAt(line, place) is var end && end > place)
            {
                var phrase = line.AsSpan(place, end - place);
                directed.Append(LeftwardWriting.Holds(phrase) ? $"{Begin}{phrase}{End}" : phrase);
                place = end;
                continue;
            }

            directed.Append(c);
            place++;
        }

        return directed.Append(End, open).ToString();
    }

    /// <summary>Where the words end that begin at a place: one word, or several that all run leftward and are parted by single blanks.</summary>
    private static int PhraseAt(string line, int place)
    {
        var end = WordAt(line, place);
        while (end > place && end + 1 < line.Length && line[end] == ' ' && LeftwardWriting.Holds(line.AsSpan(place, end - place)))
        {
            var next = WordAt(line, end + 1);
            if (!LeftwardWriting.Holds(line.AsSpan(end + 1, next - end - 1)))
            {
                break;
            }

            end = next;
        }

        return end;
    }

    /// <summary>Where a word ends that begins at a place: the letters, marks, digits and signs that a name may hold, without the 's of an owner.</summary>
    private static int WordAt(string line, int place)
    {
        var end = place;
        while (end < line.Length && Rune.TryGetRuneAt(line, end, out var rune) && IsOfName(rune))
        {
            end += rune.Utf16SequenceLength;
        }

        return line.AsSpan(place, end - place).EndsWith("'s", StringComparison.Ordinal) ? end - 2 : end;
    }

    private static bool IsOfName(Rune rune) => rune.Value is '-' or '_' or '\'' || Rune.IsLetterOrDigit(rune)
        || Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark or UnicodeCategory.EnclosingMark;
}
