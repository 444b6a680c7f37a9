namespace GroveSpec.Binding.Use;

/// <summary>
/// What a search for plantings finds in one folder. Links are not followed, so a search never leaves the folder it began in and never
/// goes round; what begins with a dot is left out.
/// </summary>
public static class FolderListing
{
    /// <summary>The ending of planting files.</summary>
    public const string Ending = ".grove";

    /// <summary>Lists a folder, not those below it.</summary>
    /// <param name="folder">Its full path.</param>
    /// <returns>The folders and the planting files in it, in no particular order.</returns>
    /// <exception cref="IOException">It cannot be read, or not to its end.</exception>
    /// <exception cref="UnauthorizedAccessException">There is no right to read it.</exception>
    public static IEnumerable<FileSystemInfo> Of(string folder) => new DirectoryInfo(folder).EnumerateFileSystemInfos()
        .Where(entry => entry.Name[0] != '.' && !entry.Attributes.HasFlag(FileAttributes.ReparsePoint) && (entry is DirectoryInfo || entry.Name.EndsWith(Ending, StringComparison.Ordinal)));
}
