using GroveSpec.Binding.Use;
using GroveSpec.LanguageServer.Sessions;

namespace GroveSpec.LanguageServer.Features.WorkspaceFiles;

/// <summary>Finds the planting files of the folders that are open.</summary>
internal static class PlantingFiles
{
    /// <summary>More than anybody keeps: a folder with more is not the grower's own, and is not read through.</summary>
    public const int Most = 2_000;

    private const int MostFolders = 20_000;

    /// <summary>The documents that are open, and the files below the folders that are not. Links are not followed, and what begins with a dot is left out.</summary>
    /// <param name="session">The session.</param>
    /// <param name="work">Is told each file before it is given out, and ends the search.</param>
    /// <returns>Each file once, by path.</returns>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public static IEnumerable<OpenDocument> All(Session session, WorkProgress work)
    {
        var open = session.Documents;
        var paths = new SortedSet<string>(StringComparer.Ordinal);
        var waiting = new Stack<string>(session.Folders);
        for (var folders = 0; folders < MostFolders && paths.Count < Most && waiting.TryPop(out var folder); folders++)
        {
            work.Ended.ThrowIfCancellationRequested();
            Search(folder, waiting, paths);
        }

        foreach (var document in open)
        {
            paths.Remove(document.Key);
            work.Say(Path.GetFileName(document.Key));
            yield return document;
        }

        foreach (var path in paths)
        {
            work.Ended.ThrowIfCancellationRequested();
            work.Say(Path.GetFileName(path));
            if (session.Read(path) is { } document)
            {
                yield return document;
            }
        }
    }

    private static void Search(string folder, Stack<string> waiting, SortedSet<string> paths)
    {
        try
        {
            foreach (var entry in FolderListing.Of(folder))
            {
                if (entry is not DirectoryInfo)
                {
                    paths.Add(entry.FullName);
                }
                else if (entry.Name != "node_modules")
                {
                    waiting.Push(entry.FullName);
                }
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // A folder that cannot be read holds nothing that could be shown.
        }
    }
}
