namespace GroveSpec.Syntax.Tests;

/// <summary>The files of the project that tests read.</summary>
internal static class Repository
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = FindRoot();

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
