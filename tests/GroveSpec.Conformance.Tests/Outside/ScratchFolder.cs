namespace GroveSpec.Conformance.Tests.Outside;

/// <summary>A folder that is there as long as this is.</summary>
internal sealed class ScratchFolder : IDisposable
{
    /// <summary>The folder.</summary>
    public string Folder { get; } = Directory.CreateTempSubdirectory("grovespec-").FullName;

    /// <summary>A file in it.</summary>
    /// <param name="name">The file's name.</param>
    /// <param name="text">What to write into it.</param>
    /// <returns>Its path.</returns>
    public string Write(string name, string text)
    {
        var path = Path.Combine(Folder, name);
        File.WriteAllText(path, text);
        return path;
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
