using System.Collections.Immutable;

namespace GroveSpec.Syntax.Text;

/// <summary>Reads names that somebody wrote in a row outside a file, such as behind an option, as the language reads them in a statement.</summary>
public static class NameList
{
    // What parts names in a statement. A comma of another script is a character of a name there, and so it is here.
    private static readonly char[] Between = [',', ' ', '\t', '\r', '\n'];

    /// <summary>Reads names. A name is one word and is not quoted, so that no comma or blank can be part of it.</summary>
    /// <param name="text">Names parted by commas, blanks or both.</param>
    /// <returns>The names in composed form, in the order written, each once; none for an empty text.</returns>
    public static ImmutableArray<string> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return [.. text.Split(Between, StringSplitOptions.RemoveEmptyEntries).Select(NameForm.Of).Distinct(StringComparer.Ordinal)];
    }
}
