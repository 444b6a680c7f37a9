using System.Collections.Immutable;
using GroveSpec.Checks;
using GroveSpec.Cli.Files;
using GroveSpec.Cli.Reports;
using GroveSpec.Cli.Terminals;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Judging;

/// <summary>Does one piece of work on each file, whatever becomes of the others, and sums up how it ended.</summary>
/// <param name="search">The files.</param>
/// <param name="isStrict">Whether warnings fail the run.</param>
/// <param name="terminal">Whom to tell.</param>
internal sealed class FileRun(InputSearch search, bool isStrict, Terminal terminal)
{
    /// <summary>Does the work.</summary>
    /// <param name="doing">What is done, in a word such as "drawing".</param>
    /// <param name="work">The work on one file; it returns what was found in it and the texts that this lies in.</param>
    /// <returns>How it ended. Findings that fail the run are told on standard error, a line each.</returns>
    public ExitStatus Each(string doing, Func<InputFile, (ImmutableArray<Finding> Findings, SourceLibrary Sources)> work)
    {
        var status = ExitStatus.Good;
        using var lines = new StringWriter();
        var troubles = search.Troubles.ToList();
        using (var progress = new Progress(terminal))
        {
            for (var index = 0; index < search.Files.Count; index++)
            {
                var file = search.Files[index];
                progress.Say($"{doing} {file.Name}", index + 1, search.Files.Count);
                try
                {
                    var (findings, sources) = work(file);
                    var told = new CheckRun([new(file.Name, null, 0, [])], [], sources, isStrict);
                    ImmutableArray<Finding> failing = [.. findings.Where(told.Fails)];
                    LinesReport.Write(told with { Files = [new(file.Name, null, 0, failing)] }, lines);
                    status = failing.IsEmpty ? status : ExitStatus.Findings;
                }
                catch (FileTroubleException trouble)
                {
                    troubles.Add(trouble);
                }
            }
        }

        if (lines.GetStringBuilder() is { Length: > 0 } failed)
        {
            terminal.Tell(failed.ToString().TrimEnd('\n'));
        }

        foreach (var trouble in troubles)
        {
            GroveProgram.Tell(trouble, terminal);
        }

        return troubles.Count > 0 ? ExitStatus.Files : status;
    }
}
