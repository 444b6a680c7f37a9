using GroveSpec.Binding.Names;
using GroveSpec.Checks;

namespace GroveSpec.Binding.Use;

/// <summary>Judges the path of a use statement by its letters alone, before any disk is asked.</summary>
internal static class UsePath
{
    private const int Longest = 1024;

    /// <summary>What is wrong with a path.</summary>
    /// <param name="path">As written.</param>
    /// <returns>The check and the sentence; null where the path may be tried.</returns>
    public static (CheckDescription Check, string Message)? Fault(string path)
    {
        var said = Saying.Short(path);
        if (path.Trim().Length == 0)
        {
            return (FileDescriptions.UseNotFound, "No file is named here: write its name, such as \"club-roles.grove\".");
        }

        if (path.Length > Longest || path.AsSpan().IndexOfAnyInRange('\0', '\u001F') >= 0 || HasSingleSurrogate(path))
        {
            return (FileDescriptions.UseNotFound, $"\"{said}\" cannot be the name of a file.");
        }

        if (path.Contains('\\', StringComparison.Ordinal))
        {
            return (FileDescriptions.UseOutsideFolder, $"\"{said}\" is written with backslashes: write folders with /, relative to this file's folder.");
        }

        var colon = path.IndexOf(':', StringComparison.Ordinal);
        if (colon >= 0)
        {
            return colon == 1 && char.IsAsciiLetter(path[0])
                ? (FileDescriptions.UseOutsideFolder, $"\"{said}\" names a drive: only files beside or below this one can be used.")
                : (FileDescriptions.UseOutsideFolder, $"\"{said}\" is an address, not the name of a file: only files beside or below this one can be used.");
        }

        if (path[0] is '/' or '~')
        {
            return (FileDescriptions.UseOutsideFolder, $"\"{said}\" begins at the root or a home folder: only files beside or below this one can be used.");
        }

        foreach (var range in path.AsSpan().Split('/'))
        {
            if (path.AsSpan(range) is "..")
            {
                return (FileDescriptions.UseOutsideFolder, $"\"{said}\" leads out of this file's folder: copy the file beside this one.");
            }
        }

        return path.EndsWith('/') || path == "." || path.EndsWith("/.", StringComparison.Ordinal)
            ? (FileDescriptions.UseNotFound, $"\"{said}\" is a folder: name the file in it.")
            : null;
    }

    private static bool HasSingleSurrogate(string path)
    {
        foreach (var rune in path.EnumerateRunes())
        {
            if (rune.Value == 0xFFFD)
            {
                return true;
            }
        }

        return false;
    }
}
