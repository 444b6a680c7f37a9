namespace GroveSpec.Binding.Use;

/// <summary>A reader for texts that lie in no folder: it finds nothing.</summary>
public sealed class NoFiles : IFileReader
{
    /// <inheritdoc/>
    public FileReading Read(string usingFile, string path) => new FileReading.Missing();
}
