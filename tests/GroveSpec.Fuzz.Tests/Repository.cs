namespace GroveSpec.Fuzz.Tests;

/// <summary>The files of the project that tests read.</summary>
internal static class Repository
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>Every sample planting, in the order of their paths.</summary>
    public static IReadOnlyList<string> Samples { get; } =
        [.. Directory.Exists(Path.Combine(Root, "samples"))
            ? Directory.GetFiles(Path.Combine(Root, "samples"), "*.grove", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            : Enumerable.Empty<string>()];

    private static string FindRoot()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "GroveSpec.sln")))
        {
            folder = Path.GetDirectoryName(folder.TrimEnd(Path.DirectorySeparatorChar)) ?? throw new InvalidOperationException("The tests run outside the project.");
        }

        return folder;
    }
}
