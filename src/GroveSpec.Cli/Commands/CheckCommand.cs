using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using GroveSpec.Cli.Arguments;
using GroveSpec.Cli.Files;
using GroveSpec.Cli.Judging;
using GroveSpec.Cli.Reports;
using GroveSpec.Cli.Terminals;
using GroveSpec.Model.States;
using GroveSpec.Publishing.Sarif;

namespace GroveSpec.Cli.Commands;

/// <summary>Tells what is wrong with plantings.</summary>
internal sealed class CheckCommand : GroveCommand
{
    private readonly Option<string?> form = new("--as") { HelpName = "text|lines|json|sarif" };
    private readonly Option<bool> json = new("--json");
    private readonly Option<bool> explain = new("--explain");
    private readonly Option<string?> output = SharedOptions.Output();
    private readonly Option<string?> on = SharedOptions.On();
    private readonly Option<string?> units = SharedOptions.Units();
    private readonly Option<bool> strict = SharedOptions.Strict();

    private enum Form
    {
        Text,
        Lines,
        Json,
        Sarif,
    }

    /// <inheritdoc/>
    public override string Name => "check";

    /// <inheritdoc/>
    public override string Purpose => "tells what is wrong with plantings";

    /// <inheritdoc/>
    public override string Help => """
        grovespec check FILE|FOLDER|- ...

        Tells what is wrong with plantings: their composition, and what the files say
        of themselves. Errors fail the run; warnings and hints do not.

          grovespec check salt-bank.grove               for people
          grovespec check . --strict                    all below this folder; warnings fail too
          grovespec check salt-bank.grove --on 2027-05-01
          grovespec check . --as lines                  a line each, for editors and scripts
          grovespec check . --json --output found.json  for programs

        --explain        also tells why each check that found something matters
        --as FORM        text; lines, which are path:line:column: severity: message [check];
                         json; or sarif, which is SARIF 2.1.0
        --json           the same as --as json
        --output PATH    writes to a file instead of standard output
        --on DATE        judges the planting as it is on that day; without it, on the day
                         of the newest reading or of the newest work done
        --units WHICH    metric or inch: the units messages speak in
        --strict         warnings fail the run as errors do
        --help           this page

        To let one finding stand, write into the file why:
          accept three-in-line A B C because "the sea wall runs along them"

        """;

    /// <inheritdoc/>
    public override IReadOnlyList<Option> Options => [form, json, explain, output, on, units, strict];

    /// <inheritdoc/>
    public override ExitStatus Run(ParseResult parsed, IReadOnlyList<string> names, Terminal terminal)
    {
        var chosen = FormOf(parsed);
        var reading = new PlantingReading(terminal, SharedOptions.ReadDay(parsed.GetValue(on)), SharedOptions.ReadUnits(parsed.GetValue(units)));
        var search = InputSearch.Find(names, terminal.Folder);
        if (parsed.GetValue(output) is { } path and not InputFile.StandardInput)
        {
            Delivery.RefuseInputs(path, search.Files, terminal);
        }

        var run = Check(search, reading, parsed.GetValue(strict), terminal);
        foreach (var trouble in run.Troubles)
        {
            GroveProgram.Tell(trouble, terminal);
        }

        using var page = new MemoryStream();
        Write(run, chosen, page, parsed, terminal);
        Delivery.Write(parsed.GetValue(output), page.GetBuffer().AsSpan(0, (int)page.Length), search.Files, terminal);
        return run.Status;
    }

    private static CheckRun Check(InputSearch search, PlantingReading reading, bool isStrict, Terminal terminal)
    {
        using var progress = new Progress(terminal);
        var troubles = search.Troubles.ToList();
        var files = ImmutableArray.CreateBuilder<CheckedFile>(search.Files.Count);
        foreach (var file in search.Files)
        {
            progress.Say($"checking {file.Name}", files.Count + 1, search.Files.Count);
            try
            {
                var assessment = reading.Read(file);
                files.Add(new(file.Name, assessment.Date, assessment.Planting.Trunks.Length, assessment.State.Trunks.Count(trunk => trunk.Presence == Presence.Standing), assessment.Findings));
            }
            catch (FileTroubleException trouble)
            {
                troubles.Add(trouble);
            }
        }

        return new(files.ToImmutable(), [.. troubles], reading.Sources, isStrict);
    }

    private void Write(CheckRun run, Form chosen, MemoryStream page, ParseResult parsed, Terminal terminal)
    {
        switch (chosen)
        {
            case Form.Json:
                JsonReport.Write(run, page);
                break;
            case Form.Sarif:
                SarifLog.Write(
                    page,
                    GroveProgram.Version,
                    [.. run.Files.SelectMany(file => file.Findings)],
                    run.Sources,
                    [.. run.Troubles.Select(trouble => (trouble.File, trouble.Message))]);
                break;
            default:
                using (var writer = new StreamWriter(page, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true))
                {
                    if (chosen == Form.Lines)
                    {
                        LinesReport.Write(run, writer);
                    }
                    else
                    {
                        var isColoured = terminal.IsColourWelcome && parsed.GetValue(output) is null;
                        TextReport.Write(run, writer, Math.Min(terminal.Width, Terminal.UsualWidth), isColoured, parsed.GetValue(explain));
                    }
                }

                break;
        }
    }

    private Form FormOf(ParseResult parsed)
    {
        var named = parsed.GetValue(form);
        if (parsed.GetValue(json))
        {
            return named is null or "json" ? Form.Json : throw new UsageException($"--json and --as {named} ask for two forms at once.");
        }

        return named is null
            ? Form.Text
            : SharedOptions.Choose("--as", named, [("text", Form.Text), ("lines", Form.Lines), ("json", Form.Json), ("sarif", Form.Sarif)]);
    }
}
