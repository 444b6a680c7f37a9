using GroveSpec.Binding.Use;
using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Binding.Profiles;

/// <summary>The species profiles that come with the project, as a text in its own language. Only the profile that is asked for is read.</summary>
public static class BuiltInProfiles
{
    private const string Resource = "built-in.grove";
    private const string Keyword = "profile ";

    private static string? text;

    /// <summary>The names of the species, in the order of the text.</summary>
    public static IEnumerable<string> Names
    {
        get
        {
            for (var start = NextBlock(0); start >= 0; start = NextBlock(start + 1))
            {
                yield return NameAt(start);
            }
        }
    }

    /// <summary>The whole text.</summary>
    public static string Text => text ??= Load();

    /// <summary>The profile of a species.</summary>
    /// <param name="species">The name as files write it.</param>
    /// <returns>The profile's own lines as a file of their own; null where there is none.</returns>
    public static UsedFile? Find(string species)
    {
        for (var start = NextBlock(0); start >= 0; start = NextBlock(start + 1))
        {
            if (NameAt(start) == species)
            {
                var end = Text.IndexOf("\n}", start, StringComparison.Ordinal);
                var block = Text[start..(end < 0 ? Text.Length : end + 2)] + "\n";
                return new UsedFile($"built-in/{species}.grove", GroveParser.Parse(SourceText.FromText(block)));
            }
        }

        return null;
    }

    private static string NameAt(int start)
    {
        var from = start + Keyword.Length;
        return Text[from..Text.IndexOf(' ', from)];
    }

    private static int NextBlock(int from)
    {
        if (from == 0 && Text.StartsWith(Keyword, StringComparison.Ordinal))
        {
            return 0;
        }

        var at = Text.IndexOf("\n" + Keyword, Math.Max(0, from - 1), StringComparison.Ordinal);
        return at < 0 ? -1 : at + 1;
    }

    private static string Load()
    {
        using var stream = typeof(BuiltInProfiles).Assembly.GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException("The built-in profiles are missing from the program.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
