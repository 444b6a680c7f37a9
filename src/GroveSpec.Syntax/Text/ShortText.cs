namespace GroveSpec.Syntax.Text;

/// <summary>Cuts names and other texts of a file to what fits into a sentence.</summary>
public static class ShortText
{
    private const int Longest = 40;

    /// <summary>A text, cut where it is too long for a sentence.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The text itself up to 40 UTF-16 code units; else its beginning, never half a character, and an ellipsis.</returns>
    public static string Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length <= Longest)
        {
            return text;
        }

        var end = char.IsHighSurrogate(text[Longest - 1]) ? Longest - 1 : Longest;
        return string.Concat(text.AsSpan(0, end), "…");
    }
}
