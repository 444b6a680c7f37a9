using GroveSpec.Binding.Use;

namespace GroveSpec.Cli.Files;

/// <summary>Finds the files that a command line means.</summary>
/// <param name="Files">The files in the order given, those of a folder by the code units of their paths, each once.</param>
/// <param name="Troubles">What was named but is not there.</param>
internal sealed record InputSearch(IReadOnlyList<InputFile> Files, IReadOnlyList<FileTroubleException> Troubles)
{
    /// <summary>The ending of planting files.</summary>
    public const string Ending = FolderListing.Ending;

    /// <summary>
    /// Takes files as they are and searches folders for <c>.grove</c> files. Links inside a folder are not followed, so a
    /// search never leaves the folder and never goes round; folders and files whose name begins with a dot are left out.
    /// </summary>
    /// <param name="given">Paths as given; "-" is standard input.</param>
    /// <param name="folder">The full path of the folder that relative ones start from.</param>
    /// <returns>What was found.</returns>
    /// <exception cref="UsageException">Standard input was named twice, or nothing at all.</exception>
    public static InputSearch Find(IReadOnlyList<string> given, string folder)
    {
        if (given.Count == 0)
        {
            throw new UsageException("Name a .grove file, a folder that holds some, or - for standard input.");
        }

        var files = new List<InputFile>();
        var troubles = new List<FileTroubleException>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var name in given)
        {
            if (name == InputFile.StandardInput)
            {
                if (!seen.Add(name))
                {
                    throw new UsageException("Standard input (-) can be read only once.");
                }

                files.Add(new(name, "", "planting" + Ending));
                continue;
            }

            Take(name, folder, files, troubles, seen);
        }

        return new(files, troubles);
    }

    private static void Take(string name, string folder, List<InputFile> files, List<FileTroubleException> troubles, HashSet<string> seen)
    {
        if (name.Length == 0 || name.Contains('\0', StringComparison.Ordinal))
        {
            troubles.Add(new(name, "it cannot be read: no file can have such a name."));
            return;
        }

        var full = Path.GetFullPath(name, folder);
        var facts = FileFacts.Of(full);
        switch (facts.Kind)
        {
            case FileKind.Folder:
                var before = files.Count;
                Search(name, full, files, troubles, seen);
                if (files.Count == before && troubles.Count == 0)
                {
                    troubles.Add(new(name, "there is no file in this folder whose name ends in .grove."));
                }

                break;
            default:
                // A path that is not there is left for the reading, which knows why.
                if (seen.Add(facts.Identity))
                {
                    files.Add(new(name, full, Path.GetFileName(full)));
                }

                break;
        }
    }

    private static void Search(string name, string top, List<InputFile> files, List<FileTroubleException> troubles, HashSet<string> seen)
    {
        var found = new List<string>();
        var waiting = new Stack<string>([top]);
        while (waiting.TryPop(out var folder))
        {
            try
            {
                foreach (var entry in FolderListing.Of(folder))
                {
                    if (entry is DirectoryInfo)
                    {
                        waiting.Push(entry.FullName);
                    }
                    else
                    {
                        found.Add(Path.GetRelativePath(top, entry.FullName).Replace(Path.DirectorySeparatorChar, '/'));
                    }
                }
            }
            catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
            {
                var where = folder == top ? name : Path.Combine(name, Path.GetRelativePath(top, folder));
                troubles.Add(FileTroubleException.From(where, exception, writing: false));
            }
        }

        found.Sort(StringComparer.Ordinal);
        foreach (var relative in found)
        {
            var full = Path.Combine(top, relative);
            var facts = FileFacts.Of(full);
            if (facts.Kind == FileKind.Regular && seen.Add(facts.Identity))
            {
                files.Add(new(Path.Combine(name, relative), full, relative));
            }
        }
    }
}
