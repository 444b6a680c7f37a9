namespace GroveSpec.LanguageServer.Tests;

/// <summary>A folder for one test, with a blank and letters beyond ASCII in its name.</summary>
internal sealed class ScratchFolder : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("grove spec é ");

    public string Path => folder.FullName;

    public string Write(string name, string text)
    {
        var path = System.IO.Path.Combine(Path, name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return UriOf(name);
    }

    public string Read(string name) => File.ReadAllText(System.IO.Path.Combine(Path, name));

    public string UriOf(string name) => new Uri(System.IO.Path.Combine(Path, name)).AbsoluteUri;

    public void Dispose() => folder.Delete(recursive: true);
}
