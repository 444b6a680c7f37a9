using GroveSpec.Binding.Use;

namespace GroveSpec.Cli.Files;

/// <summary>Writes a file so that nobody ever finds half of it: whoever reads it meanwhile, and whoever writes it too, sees the old or the new.</summary>
internal static class OutputFile
{
    private const int ExistsOnUnix = 17;
    private const int ExistsOnWindows = unchecked((int)0x80070050);

    private static int partials;

    /// <summary>Writes a file, in place of one that is there. A link stays, and the file it leads to is written.</summary>
    /// <param name="name">Its path as the person gave it.</param>
    /// <param name="folder">The full path of the folder that a relative one starts from.</param>
    /// <param name="content">What it is to hold.</param>
    /// <exception cref="FileTroubleException">It cannot be written; what was there before is untouched.</exception>
    public static void Write(string name, string folder, ReadOnlySpan<byte> content)
    {
        try
        {
            var path = TargetOf(Path.GetFullPath(name, folder));
            if (IsReplaced(name, path))
            {
                Replace(path, content);
                return;
            }

            // A device or a pipe cannot be replaced, only written to.
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Write, FileShare.ReadWrite, bufferSize: 0);
            stream.Write(content);
        }
        catch (Exception exception) when (IsTrouble(exception))
        {
            throw FileTroubleException.From(name, exception, writing: true);
        }
    }

    /// <summary>Refuses a file that cannot be written, before anything is changed: by writing beside it and taking that away again.</summary>
    /// <param name="name">Its path as the person gave it.</param>
    /// <param name="folder">The full path of the folder that a relative one starts from.</param>
    /// <exception cref="FileTroubleException">It cannot be written.</exception>
    public static void Prove(string name, string folder)
    {
        try
        {
            var path = TargetOf(Path.GetFullPath(name, folder));
            if (IsReplaced(name, path))
            {
                ModeOf(path);
                File.Delete(WritePartial(path, [], null));
            }
        }
        catch (Exception exception) when (IsTrouble(exception))
        {
            throw FileTroubleException.From(name, exception, writing: true);
        }
    }

    /// <summary>Writes a file that must not be there yet.</summary>
    /// <param name="name">Its path as the person gave it.</param>
    /// <param name="folder">The full path of the folder that a relative one starts from.</param>
    /// <param name="content">What it is to hold.</param>
    /// <exception cref="FileTroubleException">It is there already, or cannot be written.</exception>
    public static void Create(string name, string folder, ReadOnlySpan<byte> content)
    {
        try
        {
            var path = Path.GetFullPath(name, folder);
            if (Path.Exists(path) || new FileInfo(path).LinkTarget is not null)
            {
                throw new FileTroubleException(name, "it is there already, and is left as it is. Choose another name, or move that file first.");
            }

            var partial = WritePartial(path, content, null);
            try
            {
                File.Move(partial, path, overwrite: false);
            }
            catch
            {
                File.Delete(partial);
                throw;
            }
        }
        catch (Exception exception) when (IsTrouble(exception))
        {
            throw FileTroubleException.From(name, exception, writing: true);
        }
    }

    /// <summary>Whether a file is replaced, or begun; else it is a device or a pipe that is written to. A folder, and a named pipe, are refused.</summary>
    private static bool IsReplaced(string name, string path) => FileFacts.Of(path).Kind switch
    {
        FileKind.Folder => throw new FileTroubleException(name, "it cannot be written: it is a folder."),
        FileKind.Pipe when NamedPipe.StandsAt(path) => throw new FileTroubleException(name, "it cannot be written: it is a named pipe, from which nobody may ever read. Lead standard output into it instead: > PIPE."),
        FileKind.None or FileKind.Regular => true,
        _ => false,
    };

    /// <summary>The rights of a file that may be written; null where there is none yet, or no such rights.</summary>
    private static UnixFileMode? ModeOf(string path)
    {
        if (!File.Exists(path))
        {
            return null;
        }

        // Replacing would get round a file's own protection, because it needs only the folder's leave.
        using (new FileStream(path, FileMode.Open, FileAccess.Write, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0))
        {
            return OperatingSystem.IsWindows() ? null : File.GetUnixFileMode(path);
        }
    }

    private static void Replace(string path, ReadOnlySpan<byte> content)
    {
        var partial = WritePartial(path, content, ModeOf(path));
        try
        {
            File.Move(partial, path, overwrite: true);
        }
        catch
        {
            File.Delete(partial);
            throw;
        }
    }

    private static string WritePartial(string path, ReadOnlySpan<byte> content, UnixFileMode? mode)
    {
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write, Share = FileShare.None, BufferSize = 0 };
        // The process id keeps runs apart; the number keeps apart what one run writes, and what an earlier run with that id left behind.
        for (var tries = 0; ; tries++)
        {
            var number = Interlocked.Increment(ref partials);
            var partial = Path.Combine(Path.GetDirectoryName(path)!, $".grovespec-{Environment.ProcessId}-{number}.part");
            FileStream stream;
            try
            {
                stream = new FileStream(partial, options);
            }
            catch (IOException taken) when (tries < 1000 && taken.HResult is ExistsOnUnix or ExistsOnWindows)
            {
                continue;
            }

            try
            {
                using (stream)
                {
                    stream.Write(content);
                    stream.Flush(flushToDisk: true);
                }

                if (!OperatingSystem.IsWindows() && mode is { } known)
                {
                    File.SetUnixFileMode(partial, known);
                }

                return partial;
            }
            catch
            {
                File.Delete(partial);
                throw;
            }
        }
    }

    private static string TargetOf(string path) => new FileInfo(path).LinkTarget is null
        ? path
        : File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? path;

    private static bool IsTrouble(Exception exception) => exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException;
}
