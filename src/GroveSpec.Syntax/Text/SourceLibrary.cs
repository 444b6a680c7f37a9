namespace GroveSpec.Syntax.Text;

/// <summary>The texts that places may lie in, by the path as the user gave it.</summary>
public sealed class SourceLibrary
{
    private readonly Dictionary<string, SourceText> texts = new(StringComparer.Ordinal);

    /// <summary>Takes a text in, in place of one of the same path.</summary>
    /// <param name="file">Its path as the user gave it.</param>
    /// <param name="text">The text.</param>
    public void Add(string file, SourceText text) => texts[file] = text;

    /// <summary>The text of a file.</summary>
    /// <param name="file">Its path as the user gave it.</param>
    /// <returns>The text, or null for one that was never taken in.</returns>
    public SourceText? Find(string file) => texts.GetValueOrDefault(file);

    /// <summary>Where a place is by line and character.</summary>
    /// <param name="place">The place.</param>
    /// <returns>Its range; the start of the file for a file that was never taken in.</returns>
    public LineRange RangeOf(SourceSpan place) => Find(place.File) is { } text
        ? new(text.PositionOf(place.Span.Start), text.PositionOf(place.Span.End))
        : default;
}
