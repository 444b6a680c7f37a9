using System.Globalization;
using System.Text;

namespace GroveSpec.Drawing.Scene;

/// <summary>Makes text from a file fit to stand in a drawing: nothing that steers the page, nothing longer than its room.</summary>
internal static class DrawnText
{
    private const int MarksOnOneLetter = 4;
    private const int Longest = 2000;

    /// <summary>
    /// Takes out of a text what would steer the page rather than be read: line ends and control characters become spaces,
    /// overrides of the writing direction go, isolates that are never closed are closed, marks heaped on one letter stop at four.
    /// </summary>
    /// <param name="text">Any text.</param>
    /// <returns>The same where there was nothing to take out; at most 2,000 characters.</returns>
    public static string Clean(string text)
    {
        if (text.Length <= Longest && IsPlain(text))
        {
            return text;
        }

        var clean = new StringBuilder();
        var marks = 0;
        var isolates = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            if (clean.Length >= Longest)
            {
                clean.Append('…');
                break;
            }

            var category = Rune.GetUnicodeCategory(rune);
            if (category is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark)
            {
                if (++marks > MarksOnOneLetter)
                {
                    continue;
                }
            }
            else
            {
                marks = 0;
            }

            switch (rune.Value)
            {
                case (>= 0x202A and <= 0x202E) or 0xFEFF:
                    break;
                case >= 0x2066 and <= 0x2068:
                    isolates++;
                    clean.Append((char)rune.Value);
                    break;
                case 0x2069:
                    if (isolates > 0)
                    {
                        isolates--;
                        clean.Append((char)rune.Value);
                    }

                    break;
                default:
                    clean.Append(category is UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator ? " " : rune.ToString());
                    break;
            }
        }

        clean.Append('\u2069', isolates);
        return clean.ToString();
    }

    /// <summary>
    /// Keeps a name's writing direction to itself within a sentence: one that may run from right to left is wrapped in an isolate.
    /// Names in plain Latin letters are left alone, since some renderers reorder around the marks.
    /// </summary>
    /// <param name="name">Any name.</param>
    /// <returns>The cleaned name, wrapped where that is needed.</returns>
    public static string Isolated(string name)
    {
        var clean = Clean(name);
        return LeftwardWriting.Holds(clean) ? $"\u2068{clean}\u2069" : clean;
    }

    /// <summary>Shortens a cleaned text with an ellipsis until it fits.</summary>
    /// <param name="text">The text, cleaned.</param>
    /// <param name="widthPixels">The room, held against <see cref="TextMetrics.ReservedWidth"/>.</param>
    /// <param name="sizePixels">The size of its letters.</param>
    /// <param name="face">The face.</param>
    /// <returns>The text itself where it fits; otherwise as much of its beginning as fits, at least one letter, and an ellipsis.</returns>
    public static string Shortened(string text, double widthPixels, double sizePixels, Face face = Face.Regular)
    {
        if (TextMetrics.ReservedWidth(text, sizePixels, face) <= widthPixels)
        {
            return text;
        }

        var room = widthPixels - TextMetrics.ReservedWidth("…", sizePixels, face);
        var end = 0;
        double used = 0;
        while (end < text.Length)
        {
            var next = end + StringInfo.GetNextTextElementLength(text, end);
            used += TextMetrics.ReservedWidth(text.AsSpan(end, next - end), sizePixels, face);
            if (used > room && end > 0)
            {
                break;
            }

            end = next;
        }

        return end == text.Length ? text : string.Concat(text.AsSpan(0, end).TrimEnd(), "…");
    }

    /// <summary>Breaks a cleaned text into lines that fit.</summary>
    /// <param name="text">The text, cleaned.</param>
    /// <param name="widthPixels">The room for a line, held against <see cref="TextMetrics.ReservedWidth"/>.</param>
    /// <param name="sizePixels">The size of its letters.</param>
    /// <param name="face">The face.</param>
    /// <param name="mostLines">The most lines; what is left over ends the last with an ellipsis.</param>
    /// <returns>At least one line; a word too long for a line is shortened; a number and its unit, or "times", count as one word.</returns>
    public static List<string> Wrapped(string text, double widthPixels, double sizePixels, Face face = Face.Regular, int mostLines = int.MaxValue)
    {
        var lines = new List<string>();
        var line = "";
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        for (var index = 0; index < words.Length; index++)
        {
            // A number and its unit stay together.
            var word = words[index];
            if (index + 1 < words.Length && char.IsAsciiDigit(word[^1]) && IsUnit(words[index + 1]))
            {
                word = $"{word} {words[++index]}";
            }

            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && TextMetrics.ReservedWidth(longer, sizePixels, face) > widthPixels)
            {
                if (lines.Count + 1 == mostLines)
                {
                    lines.Add(Shortened(longer + " …", widthPixels, sizePixels, face));
                    return lines;
                }

                lines.Add(Shortened(line, widthPixels, sizePixels, face));
                longer = word;
            }

            line = longer;
        }

        lines.Add(Shortened(line, widthPixels, sizePixels, face));
        return lines;
    }

    // A full stop or comma may follow.
    private static bool IsUnit(string word) => word.AsSpan().TrimEnd(".,;:)") is "mm" or "cm" or "m" or "in" or "ft" or "deg" or "%" or "g" or "N" or "times";

    private static bool IsPlain(string text)
    {
        foreach (var c in text)
        {
            if (c is < ' ' or (>= '\x7f' and <= '\x9f') or >= '\u0300')
            {
                return false;
            }
        }

        return true;
    }
}
