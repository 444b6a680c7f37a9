namespace GroveSpec.Conformance.Tests.Drawn;

/// <summary>One of the project's samples.</summary>
/// <param name="Name">Its folder's name.</param>
/// <param name="Path">Its file.</param>
internal sealed record SampleFile(string Name, string Path)
{
    /// <summary>Every sample, in the order of their names.</summary>
    public static IReadOnlyList<SampleFile> All { get; } =
    [
        .. Directory.GetDirectories(Repository.Path("samples"))
            .Select(folder => System.IO.Path.GetFileName(folder))
            .Order(StringComparer.Ordinal)
            .Select(name => new SampleFile(name, Repository.Path("samples", name, name + ".grove"))),
    ];

    /// <summary>A file beside it.</summary>
    /// <param name="name">The file's name.</param>
    /// <returns>Its path.</returns>
    public string Beside(string name) => System.IO.Path.Combine(System.IO.Path.GetDirectoryName(Path)!, name);

    /// <summary>The sample of a name.</summary>
    /// <param name="name">Its folder's name.</param>
    /// <returns>The sample.</returns>
    public static SampleFile Named(string name) => All.First(sample => sample.Name == name);
}
