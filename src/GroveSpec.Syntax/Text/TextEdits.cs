using System.Text;

namespace GroveSpec.Syntax.Text;

/// <summary>Makes edits in a text.</summary>
public static class TextEdits
{
    /// <summary>The text with edits made.</summary>
    /// <param name="text">The text.</param>
    /// <param name="edits">Edits of it in its order, none overlapping.</param>
    /// <returns>The text after them; what no edit covers is as it was.</returns>
    public static string Apply(string text, IReadOnlyCollection<TextEdit> edits)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(edits);
        var written = new StringBuilder(text.Length);
        var from = 0;
        foreach (var edit in edits)
        {
            written.Append(text, from, edit.Place.Span.Start - from).Append(edit.NewText);
            from = edit.Place.Span.End;
        }

        return written.Append(text, from, text.Length - from).ToString();
    }
}
