using GroveSpec.Binding.Use;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Binding.Tests;

/// <summary>Files that a test makes up, by their path from the planting's folder.</summary>
internal sealed class FilesInMemory(Dictionary<string, string> files) : IFileReader
{
    /// <summary>How many were read.</summary>
    public int Count { get; private set; }

    public FileReading Read(string usingFile, string path)
    {
        Count++;
        var slash = usingFile.LastIndexOf('/');
        var full = slash < 0 ? path : usingFile[..(slash + 1)] + path;
        return files.TryGetValue(full, out var text) ? new FileReading.Found(full, "/" + full, SourceText.FromText(text)) : new FileReading.Missing();
    }
}
