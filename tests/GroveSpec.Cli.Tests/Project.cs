namespace GroveSpec.Cli.Tests;

/// <summary>The project's own files.</summary>
internal static class Project
{
    private static readonly string Root = Find(AppContext.BaseDirectory);

    public static string Path(string relative) => System.IO.Path.Combine(Root, relative);

    private static string Find(string folder) => File.Exists(System.IO.Path.Combine(folder, "GroveSpec.sln"))
        ? folder
        : Find(Directory.GetParent(folder)?.FullName ?? throw new InvalidOperationException("The tests do not lie in the project."));
}
