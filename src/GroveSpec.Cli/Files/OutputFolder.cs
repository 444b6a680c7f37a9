using GroveSpec.Binding.Use;
using GroveSpec.Cli.Terminals;

namespace GroveSpec.Cli.Files;

/// <summary>A folder for several results, each named after the planting it is of.</summary>
internal sealed class OutputFolder
{
    private readonly string name;
    private readonly IReadOnlyList<InputFile> inputs;
    private readonly Terminal terminal;

    /// <summary>Makes sure that two plantings do not ask for the same name.</summary>
    /// <param name="name">The folder as the person named it.</param>
    /// <param name="inputs">The plantings.</param>
    /// <param name="terminal">Where relative paths start from.</param>
    /// <exception cref="UsageException">Two plantings of the same name come from different folders.</exception>
    public OutputFolder(string name, IReadOnlyList<InputFile> inputs, Terminal terminal)
    {
        this.name = name;
        this.inputs = inputs;
        this.terminal = terminal;
        var taken = new Dictionary<string, InputFile>(StringComparer.OrdinalIgnoreCase);
        foreach (var input in inputs)
        {
            if (!taken.TryAdd(StemOf(input), input))
            {
                throw new UsageException($"{HarmlessText.OneLine(taken[StemOf(input)].Name)} and {HarmlessText.OneLine(input.Name)} would be written to one file. Name the folder above both, or write them one by one.");
            }
        }
    }

    /// <summary>Whether an output is meant as a folder.</summary>
    /// <param name="output">What stands behind <c>--output</c>.</param>
    /// <param name="from">The full path of the folder that a relative one starts from.</param>
    /// <param name="results">How many results there will be.</param>
    /// <returns>True when it is a folder, is written like one, or there are several results.</returns>
    /// <exception cref="UsageException">There are several results, but the output is a file.</exception>
    public static bool IsMeant(string output, string from, int results)
    {
        if (output.Length == 0 || output.Contains('\0', StringComparison.Ordinal))
        {
            throw new UsageException("--output needs the name of a file or folder.");
        }

        var kind = FileFacts.Of(Path.GetFullPath(output, from)).Kind;
        if (results > 1 && kind is not (FileKind.None or FileKind.Folder))
        {
            throw new UsageException($"There are {results} results, but {HarmlessText.OneLine(output)} is a file; name a folder for them.");
        }

        return kind == FileKind.Folder || results > 1 || Path.EndsInDirectorySeparator(output);
    }

    /// <summary>Writes a result.</summary>
    /// <param name="input">The planting it is of.</param>
    /// <param name="ending">What comes behind the planting's name.</param>
    /// <param name="content">The whole result.</param>
    /// <exception cref="FileTroubleException">It cannot be written.</exception>
    public void Write(InputFile input, string ending, ReadOnlySpan<byte> content)
    {
        var path = Path.Combine(name, StemOf(input) + ending);
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path, terminal.Folder))!);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw FileTroubleException.From(name, exception, writing: true);
        }

        Delivery.RefuseInputs(path, inputs, terminal);
        OutputFile.Write(path, terminal.Folder, content);
    }

    private static string StemOf(InputFile input) => input.Relative.EndsWith(InputSearch.Ending, StringComparison.Ordinal)
        ? input.Relative[..^InputSearch.Ending.Length]
        : input.Relative;
}
