namespace GroveSpec.Publishing.Book;

/// <summary>A drawing taken apart for a page: its style goes into the page's one style block, the rest stands where it is.</summary>
/// <param name="Style">The rules of its style block.</param>
/// <param name="Picture">The drawing without them.</param>
internal sealed record InlinePlate(string Style, string Picture)
{
    private const string Open = "<style>";
    private const string Close = "</style>";

    /// <summary>Takes a drawing apart.</summary>
    /// <param name="svg">A drawing of ours, which has one style block.</param>
    /// <returns>Its parts.</returns>
    /// <exception cref="ArgumentException">It has no style block.</exception>
    public static InlinePlate Of(string svg)
    {
        var start = svg.IndexOf(Open, StringComparison.Ordinal);
        var end = svg.IndexOf(Close, StringComparison.Ordinal);
        return start >= 0 && end > start
            ? new(svg[(start + Open.Length)..end].Trim('\n'), string.Concat(svg.AsSpan(0, start), svg.AsSpan(end + Close.Length).TrimStart('\n')))
            : throw new ArgumentException("The drawing has no style block.", nameof(svg));
    }
}
