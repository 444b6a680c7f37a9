using System.Globalization;
using System.Text;

namespace GroveSpec.Publishing.Book;

/// <summary>
/// Builds a page that is well-formed as XML too. Everything but the program's own markup goes through
/// <see cref="Text"/>, so that text from a file stays text.
/// </summary>
internal sealed class HtmlText
{
    private const int MarksOnOneLetter = 4;
    private const int Longest = 20_000;
    private const int LongWord = 22;
    private readonly StringBuilder page = new(200_000);

    /// <summary>Writes markup of the program's own.</summary>
    /// <param name="markup">Trusted markup.</param>
    /// <returns>This page.</returns>
    public HtmlText Raw(string markup)
    {
        page.Append(markup);
        return this;
    }

    /// <summary>Writes text from anywhere.</summary>
    /// <param name="text">Any text; control characters, direction overrides and heaps of marks on one letter are left out, and what goes on beyond 20,000 characters is cut.</param>
    /// <returns>This page.</returns>
    public HtmlText Text(string text)
    {
        Append(page, text);
        return this;
    }

    /// <summary>Writes a name or a sentence from a file, kept apart from the writing direction round it.</summary>
    /// <param name="text">Any text.</param>
    /// <returns>This page.</returns>
    public HtmlText Own(string text) => Raw(HasLongWord(text) ? "<bdi class=\"long\">" : "<bdi>").Text(text).Raw("</bdi>");

    /// <summary>Writes an element that holds text.</summary>
    /// <param name="tag">The tag with its attributes, such as <c>p class="remark"</c>; trusted.</param>
    /// <param name="text">Any text.</param>
    /// <returns>This page.</returns>
    public HtmlText Element(string tag, string text)
    {
        var end = tag.IndexOf(' ', StringComparison.Ordinal);
        return Raw("<" + tag + ">").Text(text).Raw("</" + (end < 0 ? tag : tag[..end]) + ">\n");
    }

    /// <inheritdoc/>
    public override string ToString() => page.ToString();

    private static void Append(StringBuilder to, string text)
    {
        var marks = 0;
        var written = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            if (++written > Longest)
            {
                to.Append('…');
                return;
            }

            var category = Rune.GetUnicodeCategory(rune);
            marks = category is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark ? marks + 1 : 0;
            if (marks > MarksOnOneLetter || IsOverride(rune.Value))
            {
                continue;
            }

            to.Append(rune.Value switch
            {
                '<' => "&lt;",
                '>' => "&gt;",
                '&' => "&amp;",
                '"' => "&quot;",
                '\'' => "&#39;",
                0xFFFE or 0xFFFF => "",
                _ when category is UnicodeCategory.Control => " ",
                _ => rune.ToString(),
            });
        }
    }

    /// <summary>Whether a word is too long for a column of a table, so that it has to be broken wherever the line ends.</summary>
    private static bool HasLongWord(string text)
    {
        var run = 0;
        foreach (var unit in text)
        {
            run = unit is ' ' or '\n' or '-' ? 0 : run + 1;
            if (run > LongWord)
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsOverride(int value) => value is >= 0x202A and <= 0x202E or >= 0x2066 and <= 0x2069 or 0x200E or 0x200F;
}
