using System.Collections.Immutable;

namespace GroveSpec.LanguageServer.Sessions;

/// <summary>What the grower has chosen, for the whole window and for single folders.</summary>
/// <param name="Window">What holds where no folder says otherwise.</param>
/// <param name="Folders">Folders by full path, each with what holds below it.</param>
internal sealed record ChosenSettings(ServerSettings Window, ImmutableArray<(string Folder, ServerSettings Settings)> Folders)
{
    /// <summary>Settings that hold everywhere.</summary>
    /// <param name="window">The settings.</param>
    public ChosenSettings(ServerSettings window)
        : this(window, [])
    {
    }

    /// <summary>What holds for a document.</summary>
    /// <param name="key">Its full path; the address of one that lies in no folder.</param>
    /// <returns>The settings of the innermost folder that it lies in, else those of the window.</returns>
    public ServerSettings Of(string key)
    {
        var (settings, depth) = (Window, -1);
        foreach (var (folder, own) in Folders)
        {
            var root = Path.TrimEndingDirectorySeparator(folder);
            var isBelow = key.StartsWith(root, StringComparison.Ordinal) && (Path.EndsInDirectorySeparator(root) || (key.Length > root.Length && key[root.Length] == Path.DirectorySeparatorChar));
            if (isBelow && root.Length > depth)
            {
                (settings, depth) = (own, root.Length);
            }
        }

        return settings;
    }
}
