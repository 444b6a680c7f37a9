using System.Text;

namespace GroveSpec.LanguageServer.Features.Hovers;

/// <summary>Writes plain text so that Markdown shows it as it is, whatever it holds.</summary>
internal static class MarkdownText
{
    /// <summary>The protocol's name for Markdown.</summary>
    public const string Kind = "markdown";

    private const string Marks = "\\`*_[]<>!|~&@";
    private const string MarksAtTheStart = "#+-=";

    /// <summary>Escapes a line.</summary>
    /// <param name="text">The line; line ends in it become blanks, and control characters are left out.</param>
    /// <returns>Markdown that reads as the line.</returns>
    public static string Escape(string text)
    {
        var escaped = new StringBuilder(text.Length + 16);
        for (var index = 0; index < text.Length; index++)
        {
            var unit = text[index];
            if (unit is '\n' or '\r' or '\t')
            {
                escaped.Append(' ');
            }
            else if (char.IsControl(unit))
            {
                continue;
            }
            else
            {
                // A colon before slashes would make an address that can be clicked.
                if (Marks.Contains(unit, StringComparison.Ordinal) || (escaped.Length == 0 && MarksAtTheStart.Contains(unit, StringComparison.Ordinal))
                    || (unit == ':' && index + 1 < text.Length && text[index + 1] == '/'))
                {
                    escaped.Append('\\');
                }

                escaped.Append(unit);
            }
        }

        return escaped.ToString();
    }
}
