using GroveSpec.Binding.Use;
using GroveSpec.Cli.Terminals;

namespace GroveSpec.Cli.Files;

/// <summary>Brings what a command made to where it was asked for.</summary>
internal static class Delivery
{
    /// <summary>Writes to the file that was asked for, or to standard output where none was.</summary>
    /// <param name="output">What stands behind <c>--output</c>; null or "-" for standard output.</param>
    /// <param name="content">The whole of what to write.</param>
    /// <param name="inputs">The files that were read, none of which may be written over.</param>
    /// <param name="terminal">Where standard output is.</param>
    /// <exception cref="UsageException">The output is one of the inputs.</exception>
    /// <exception cref="FileTroubleException">It cannot be written.</exception>
    public static void Write(string? output, ReadOnlySpan<byte> content, IReadOnlyList<InputFile> inputs, Terminal terminal)
    {
        if (output is null or InputFile.StandardInput)
        {
            WriteStandard(content, terminal);
            return;
        }

        RefuseInputs(output, inputs, terminal);
        OutputFile.Write(output, terminal.Folder, content);
    }

    /// <summary>Refuses an output that is one of the inputs, by whatever name or link.</summary>
    /// <param name="output">The output.</param>
    /// <param name="inputs">The inputs.</param>
    /// <param name="terminal">Where relative paths start from.</param>
    /// <exception cref="UsageException">It is one of them.</exception>
    public static void RefuseInputs(string output, IReadOnlyList<InputFile> inputs, Terminal terminal)
    {
        if (output.Length == 0 || output.Contains('\0', StringComparison.Ordinal))
        {
            throw new UsageException("--output needs the name of a file.");
        }

        var facts = FileFacts.Of(Path.GetFullPath(output, terminal.Folder));
        if (facts.Kind != FileKind.Regular)
        {
            return;
        }

        foreach (var input in inputs)
        {
            if (!input.IsStandardInput && FileFacts.Of(input.FullPath) is { Kind: FileKind.Regular } read && read.Identity == facts.Identity)
            {
                throw new UsageException($"--output {HarmlessText.OneLine(output)} is the planting itself, which would be lost. Name another file.");
            }
        }
    }

    /// <summary>Refuses an output that is one of the inputs, or that two options name.</summary>
    /// <param name="outputs">What stands behind the options; null for one that was left out. Folders may be named twice.</param>
    /// <param name="inputs">The inputs.</param>
    /// <param name="terminal">Where relative paths start from.</param>
    /// <exception cref="UsageException">One of them is.</exception>
    public static void RefuseSame(ReadOnlySpan<string?> outputs, IReadOnlyList<InputFile> inputs, Terminal terminal)
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        foreach (var path in outputs)
        {
            if (path is null or InputFile.StandardInput)
            {
                continue;
            }

            var full = Path.GetFullPath(path, terminal.Folder);
            if (Directory.Exists(full))
            {
                continue;
            }

            if (!Path.EndsInDirectorySeparator(path) && !taken.Add(full))
            {
                throw new UsageException($"{HarmlessText.OneLine(path)} is named for two things, and the one would overwrite the other. Name a file for each.");
            }

            RefuseInputs(path, inputs, terminal);
        }
    }

    private static void WriteStandard(ReadOnlySpan<byte> content, Terminal terminal)
    {
        try
        {
            terminal.Output.Write(content);
            terminal.Output.Flush();
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ObjectDisposedException)
        {
            throw FileTroubleException.From("standard output", exception, writing: true);
        }
    }
}
