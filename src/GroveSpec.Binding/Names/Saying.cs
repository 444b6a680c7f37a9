using GroveSpec.Syntax.Text;

namespace GroveSpec.Binding.Names;

/// <summary>Puts text of a file into sentences.</summary>
internal static class Saying
{
    /// <summary>A text of the file, cut where it is too long for a sentence.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The text itself, or its beginning and an ellipsis.</returns>
    public static string Short(string text) => ShortText.Of(text);

    /// <summary>Choices as part of a sentence.</summary>
    /// <param name="words">At least one word.</param>
    /// <returns>Such as "mm, cm or m".</returns>
    public static string Either(IReadOnlyList<string> words) => words.Count == 1
        ? words[0]
        : string.Concat(string.Join(", ", words.Take(words.Count - 1)), " or ", words[^1]);
}
