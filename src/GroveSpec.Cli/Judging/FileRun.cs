using System.Collections.Immutable;
using GroveSpec.Checks;
using GroveSpec.Cli.Files;
using GroveSpec.Cli.Reports;
using GroveSpec.Cli.Terminals;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Judging;

/// <summary>Does one piece of work on each file, whatever becomes of the others, and sums up how it ended.</summary>
internal sealed class FileRun
{
    private readonly InputSearch search;
    private readonly Terminal terminal;
    private readonly List<string> told = [];
    private readonly List<FileTroubleException> troubles;

    /// <summary>Makes one.</summary>
    /// <param name="search">The files.</param>
    /// <param name="terminal">Whom to tell.</param>
    public FileRun(InputSearch search, Terminal terminal)
    {
        this.search = search;
        this.terminal = terminal;
        troubles = [.. search.Troubles];
    }

    /// <summary>The files that could not be read or written, so far.</summary>
    public IReadOnlyList<FileTroubleException> Troubles => troubles;

    /// <summary>Does the work.</summary>
    /// <param name="doing">What is done, in a word such as "drawing".</param>
    /// <param name="work">The work on one file, and how it ended.</param>
    /// <returns>How all of it ended.</returns>
    public ExitStatus Each(string doing, Func<InputFile, ExitStatus> work)
    {
        var status = search.Troubles.Count > 0 ? ExitStatus.Files : ExitStatus.Good;
        using (var progress = new Progress(terminal))
        {
            for (var index = 0; index < search.Files.Count; index++)
            {
                progress.Say($"{doing} {search.Files[index].Name}", index + 1, search.Files.Count);
                try
                {
                    var ended = work(search.Files[index]);
                    status = ended > status ? ended : status;
                }
                catch (FileTroubleException trouble)
                {
                    troubles.Add(trouble);
                    status = ExitStatus.Files;
                }
            }
        }

        // Told when all is done, so that the line of progress does not run into them.
        told.ForEach(terminal.Tell);
        troubles.ForEach(trouble => GroveProgram.Tell(trouble, terminal));
        return status;
    }

    /// <summary>Keeps a line to tell on standard error when the work is done.</summary>
    /// <param name="line">The line; it may hold any text.</param>
    public void Tell(string line) => told.Add(HarmlessText.OneLine(line));

    /// <summary>Keeps the findings that fail the run, to tell when the work is done.</summary>
    /// <param name="findings">What was found in a file.</param>
    /// <param name="sources">The texts that this lies in.</param>
    /// <param name="isStrict">Whether warnings fail the run.</param>
    /// <returns>How the work on the file ended.</returns>
    public ExitStatus Judge(ImmutableArray<Finding> findings, SourceLibrary sources, bool isStrict)
    {
        var status = ExitStatus.Good;
        foreach (var finding in findings)
        {
            if (CheckRun.Fails(finding, isStrict))
            {
                told.Add(LinesReport.LineOf(finding, sources));
                status = ExitStatus.Findings;
            }
        }

        return status;
    }
}
