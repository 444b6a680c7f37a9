namespace GroveSpec.Conformance.Tests;

/// <summary>Where the project lies.</summary>
internal static class Repository
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = Find();

    /// <summary>A place below it.</summary>
    /// <param name="parts">The folders and the file.</param>
    /// <returns>The absolute path.</returns>
    public static string Path(params string[] parts) => System.IO.Path.Combine([Root, .. parts]);

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(System.IO.Path.Combine(folder.FullName, "GroveSpec.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests do not run below the folder of the solution.");
    }
}
