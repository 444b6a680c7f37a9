using GroveSpec.Binding.Use;
using GroveSpec.Syntax.Text;

namespace GroveSpec.LanguageServer.Sessions;

/// <summary>Reads the files that plantings use: the text in the editor where one is open, else the one on the disk.</summary>
/// <param name="openText">The text of an open document by its full path; null when it is not open.</param>
internal sealed class SessionFiles(Func<string, SourceText?> openText) : IFileReader
{
    private readonly FolderFiles disk = new();

    /// <inheritdoc/>
    public FileReading Read(string usingFile, string path)
    {
        var reading = disk.Read(usingFile, path);
        if (reading is FileReading.Found found)
        {
            var open = openText(Path.GetFullPath(found.Path)) ?? openText(found.Identity);
            return open is null ? reading : found with { Text = open };
        }

        // A document that was never saved may be used all the same.
        if (reading is FileReading.Missing && Path.GetDirectoryName(usingFile) is { } folder)
        {
            var full = Path.GetFullPath(Path.Combine(folder, path));
            if (openText(full) is { } unsaved)
            {
                return new FileReading.Found(full, full, unsaved);
            }
        }

        return reading;
    }
}
