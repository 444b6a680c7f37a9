using GroveSpec.Binding.Use;

namespace GroveSpec.Cli.Files;

/// <summary>Tells pipes that have a name of their own: opening one waits, for ever if need be, until somebody opens its other end.</summary>
internal static class NamedPipe
{
    /// <summary>Whether a named pipe stands at a path.</summary>
    /// <param name="path">A full path.</param>
    /// <returns>False too for a pipe that a shell has opened already and hands over by number, as in /dev/fd/63.</returns>
    public static bool StandsAt(string path) =>
        FileFacts.Of(path).Kind == FileKind.Pipe
        && !path.StartsWith("/dev/", StringComparison.Ordinal)
        && !path.StartsWith("/proc/", StringComparison.Ordinal);
}
