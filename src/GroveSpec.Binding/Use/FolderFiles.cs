using System.Security;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Binding.Use;

/// <summary>
/// Reads used files from the disk. Links are followed only while they stay below the folder; folders, devices and pipes
/// are told apart before anything is opened, because opening a pipe would wait for its other end.
/// </summary>
public sealed class FolderFiles : IFileReader
{
    /// <summary>The largest used file that is read, in bytes: 4 MB.</summary>
    public const int LargestFile = 4 * 1024 * 1024;

    private const int MostLinks = 40;

    /// <inheritdoc/>
    public FileReading Read(string usingFile, string path)
    {
        try
        {
            var folderAsGiven = usingFile == "-" ? "" : Path.GetDirectoryName(usingFile) ?? "";
            var folder = Real(Path.GetFullPath(folderAsGiven.Length == 0 ? "." : folderAsGiven));
            if (folder is null)
            {
                return new FileReading.Missing();
            }

            var real = Real(Path.Combine(folder, path));
            if (real is null)
            {
                return new FileReading.Missing();
            }

            var below = Path.EndsInDirectorySeparator(folder) ? folder : folder + Path.DirectorySeparatorChar;
            if (!real.StartsWith(below, StringComparison.Ordinal))
            {
                return new FileReading.Outside();
            }

            return FileFacts.Of(real).Kind switch
            {
                FileKind.None => new FileReading.Missing(),
                FileKind.Regular => ReadAll(real) is { } text ? new FileReading.Found(Path.Combine(folderAsGiven, path), real, text) : new FileReading.TooLarge(),
                FileKind.Folder => new FileReading.NotAFile("a folder"),
                FileKind.Pipe => new FileReading.NotAFile("a pipe"),
                FileKind.Device => new FileReading.NotAFile("a device"),
                FileKind.Socket => new FileReading.NotAFile("a socket"),
                _ => new FileReading.NotAFile("no plain file"),
            };
        }
        catch (UnauthorizedAccessException)
        {
            return new FileReading.Unreadable("there is no right to read it");
        }
        catch (SecurityException)
        {
            return new FileReading.Unreadable("there is no right to read it");
        }
        catch (Exception fault) when (fault is IOException or ArgumentException or NotSupportedException)
        {
            return fault is FileNotFoundException or DirectoryNotFoundException
                ? new FileReading.Missing()
                : new FileReading.Unreadable("the disk or the system refused it");
        }
    }

    private static SourceText? ReadAll(string path)
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0);
        if (stream.CanSeek && stream.Length > LargestFile)
        {
            return null;
        }

        // The length may be a lie, or grow while it is read.
        var bytes = new byte[(stream.CanSeek ? (int)stream.Length : 0) + 1];
        var count = 0;
        while (true)
        {
            var read = stream.Read(bytes, count, bytes.Length - count);
            if (read == 0)
            {
                return SourceText.FromBytes(bytes.AsSpan(0, count));
            }

            count += read;
            if (count > LargestFile)
            {
                return null;
            }

            if (count == bytes.Length)
            {
                Array.Resize(ref bytes, Math.Min(bytes.Length * 2, LargestFile + 1));
            }
        }
    }

    /// <summary>The path with every link on the way resolved; null where it leads round and round.</summary>
    private static string? Real(string path)
    {
        var root = Path.GetPathRoot(path) ?? "";
        var pending = new Stack<string>();
        Push(pending, path[root.Length..]);
        var real = root;
        var links = 0;
        while (pending.TryPop(out var name))
        {
            if (name is "" or ".")
            {
                continue;
            }

            if (name == "..")
            {
                real = Path.GetDirectoryName(real) ?? root;
                continue;
            }

            var next = Path.Combine(real, name);
            if (new FileInfo(next).LinkTarget is not { } target)
            {
                real = next;
                continue;
            }

            if (++links > MostLinks)
            {
                return null;
            }

            if (Path.IsPathRooted(target))
            {
                real = root = Path.GetPathRoot(target) ?? root;
                target = target[root.Length..];
            }

            Push(pending, target);
        }

        return real;
    }

    private static void Push(Stack<string> pending, string path)
    {
        var names = path.Split([Path.DirectorySeparatorChar, Path.AltDirectorySeparatorChar]);
        for (var index = names.Length - 1; index >= 0; index--)
        {
            pending.Push(names[index]);
        }
    }
}
