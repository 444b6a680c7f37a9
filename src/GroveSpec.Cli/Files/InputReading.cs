using GroveSpec.Binding.Use;
using GroveSpec.Cli.Terminals;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Files;

/// <summary>Reads a file whole.</summary>
internal static class InputReading
{
    /// <summary>The largest file that is read, in bytes. A planting of 10,000 trunks takes under one million.</summary>
    public const int LargestFile = 16 * 1024 * 1024;

    /// <summary>Reads a file or standard input.</summary>
    /// <param name="file">Which.</param>
    /// <param name="terminal">Where standard input comes from.</param>
    /// <returns>Its text.</returns>
    /// <exception cref="FileTroubleException">It cannot be read, or is larger than <see cref="LargestFile"/>.</exception>
    public static SourceText Read(InputFile file, Terminal terminal)
    {
        try
        {
            if (file.IsStandardInput)
            {
                return SourceText.FromBytes(ReadToEnd(file.Name, terminal.Input, 0));
            }

            if (NamedPipe.StandsAt(file.FullPath))
            {
                throw new FileTroubleException(file.Name, "it cannot be read: it is a named pipe, into which nobody may ever write. Lead it into standard input, and name that: - < PIPE.");
            }

            using var stream = new FileStream(file.FullPath, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0);
            var length = stream.CanSeek ? stream.Length : 0;
            if (length > LargestFile)
            {
                throw TooLarge(file.Name);
            }

            RoomInMemory.Take(length);
            return SourceText.FromBytes(ReadToEnd(file.Name, stream, length));
        }
        catch (UnauthorizedAccessException) when (FileFacts.Of(file.FullPath).Kind == FileKind.Folder)
        {
            throw new FileTroubleException(file.Name, "it cannot be read: it is a folder.");
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw FileTroubleException.From(file.Name, exception, writing: false);
        }
    }

    private static ReadOnlySpan<byte> ReadToEnd(string name, Stream stream, long expected)
    {
        // One byte more than expected, so that a file of the expected length ends in its first read but one.
        var bytes = new byte[Math.Max(expected + 1, 4096)];
        var length = 0;
        while (stream.Read(bytes, length, bytes.Length - length) is var read and > 0)
        {
            length += read;
            if (length > LargestFile)
            {
                throw TooLarge(name);
            }

            if (length == bytes.Length)
            {
                Array.Resize(ref bytes, bytes.Length * 2);
            }
        }

        return bytes.AsSpan(0, length);
    }

    private static FileTroubleException TooLarge(string name) => new(
        name,
        $"it is larger than {LargestFile / 1024 / 1024} MB, which no planting needs; it is not read. Give each planting a file of its own.");
}
