using System.CommandLine;
using System.Text;
using GroveSpec.Cli.Arguments;
using GroveSpec.Cli.Files;
using GroveSpec.Cli.Judging;
using GroveSpec.Cli.Terminals;
using GroveSpec.Syntax.Parsing;
using GroveSpec.Syntax.Printing;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Commands;

/// <summary>Prints plantings in the usual layout.</summary>
internal sealed class TidyCommand : GroveCommand
{
    private readonly Option<bool> write = new("--write");
    private readonly Option<bool> tell = new("--tell");
    private readonly Option<string?> output = SharedOptions.Output();

    /// <inheritdoc/>
    public override string Name => "tidy";

    /// <inheritdoc/>
    public override string Purpose => "prints plantings in the usual layout";

    /// <inheritdoc/>
    public override string Help => """
        grovespec tidy FILE|FOLDER|- ...

        Prints plantings in the usual layout: columns lined up, units written out. No
        comment and no blank line is lost, nothing changes its meaning, and a line that
        cannot be read stays as it is. Doing it twice changes nothing more.

          grovespec tidy salt-bank.grove            prints it
          grovespec tidy salt-bank.grove --write    writes it back into the file
          grovespec tidy . --tell                   which files would change; ends with 1 if any

        --write          writes each file back where it changes, whole or not at all
        --tell           names the files that would change, and writes nothing
        --output PATH    a file, or a folder for several; standard output if left out
        --help           this page

        """;

    /// <inheritdoc/>
    public override IReadOnlyList<Option> Options => [write, tell, output];

    /// <inheritdoc/>
    public override ExitStatus Run(ParseResult parsed, IReadOnlyList<string> names, Terminal terminal)
    {
        var isWriting = parsed.GetValue(write);
        var isTelling = parsed.GetValue(tell);
        var path = parsed.GetValue(output) is InputFile.StandardInput ? null : parsed.GetValue(output);
        if ((isWriting ? 1 : 0) + (isTelling ? 1 : 0) + (path is null ? 0 : 1) > 1)
        {
            throw new UsageException("--write, --tell and --output each say what becomes of the result; give one of them.");
        }

        var search = InputSearch.Find(names, terminal.Folder);
        if (isWriting && search.Files.Any(file => file.IsStandardInput))
        {
            throw new UsageException("Standard input cannot be written back; leave --write out, and the result comes out on standard output.");
        }

        var isPrinting = !isWriting && !isTelling;
        if (isPrinting && path is null && search.Files.Count > 1)
        {
            throw new UsageException($"These are {search.Files.Count} files; write them back with --write, name a folder with --output, or ask with --tell which would change.");
        }

        var folder = path is not null && OutputFolder.IsMeant(path, terminal.Folder, search.Files.Count)
            ? new OutputFolder(path, search.Files, terminal)
            : null;
        var run = new FileRun(search, terminal);
        return run.Each("tidying", file =>
        {
            var text = InputReading.Read(file, terminal);
            var (tidied, unread) = Guard.Run(file.Name, "tidying it", () => Print(text));
            var isChanged = tidied != text.Content;
            if (isTelling && isChanged)
            {
                Delivery.Write(null, Encoding.UTF8.GetBytes(HarmlessText.OneLine(file.Name) + "\n"), [], terminal);
            }
            else if (isWriting && isChanged)
            {
                OutputFile.Write(file.Name, terminal.Folder, SourceText.ToBytes(tidied));
            }
            else if (isPrinting && folder is not null)
            {
                folder.Write(file, InputSearch.Ending, SourceText.ToBytes(tidied));
            }
            else if (isPrinting)
            {
                Delivery.Write(path, SourceText.ToBytes(tidied), search.Files, terminal);
            }

            if (unread > 0)
            {
                run.Tell($"{file.Name}: {unread} {(unread == 1 ? "place" : "places")} cannot be read; what stands there stays as it is. grovespec check tells more.");
            }

            return unread > 0 || (isTelling && isChanged) ? ExitStatus.Findings : ExitStatus.Good;
        });
    }

    private static (string Tidied, int Unread) Print(SourceText text)
    {
        var tree = GroveParser.Parse(text);
        return (Tidy.Format(tree), tree.Problems.Length);
    }
}
