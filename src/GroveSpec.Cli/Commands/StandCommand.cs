using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Cli.Arguments;
using GroveSpec.Cli.Files;
using GroveSpec.Cli.Judging;
using GroveSpec.Cli.Reports;
using GroveSpec.Cli.Terminals;
using GroveSpec.Craft.Stand;
using GroveSpec.Drawing;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Cli.Commands;

/// <summary>Tells how natural spacing and sizes are.</summary>
internal sealed class StandCommand : GroveCommand
{
    private readonly Option<string?> picture = new("--picture") { HelpName = "PATH" };
    private readonly Option<bool> json = new("--json");
    private readonly Option<string?> output = SharedOptions.Output();
    private readonly Option<string?> on = SharedOptions.On();
    private readonly Option<string?> units = SharedOptions.Units();
    private readonly Option<bool> strict = SharedOptions.Strict();

    /// <inheritdoc/>
    public override string Name => "stand";

    /// <inheritdoc/>
    public override string Purpose => "tells how natural spacing and sizes are, in forestry's numbers";

    /// <inheritdoc/>
    public override string Help => """
        grovespec stand FILE|FOLDER|- ...

        Tells how natural spacing and sizes are, in forestry's numbers: how far apart
        the trunks stand and how evenly all round, how neighbours differ, who stands
        over whom, and how the wood is shared. Each number stands beside what chance
        gives for as few trunks, and beside real stands. Where a number cannot be told
        from chance, that is said. Nothing here is a warning.

          grovespec stand salt-bank.grove
          grovespec stand salt-bank.grove --on 2030-05-01
          grovespec stand salt-bank.grove --picture stand.svg
          grovespec stand . --json --output stands.json

        --picture PATH   draws each number on its scale, beside chance and real stands:
                         a file that ends in .svg, .png or .pdf, or a folder for several
        --json           writes for programs
        --output PATH    writes to a file instead of standard output
        --on DATE        the day to see it on; without it, the day of the newest
                         reading or of the newest work done
        --units WHICH    metric or inch
        --strict         warnings of the file fail the run as errors do
        --help           this page

        """;

    /// <inheritdoc/>
    public override IReadOnlyList<Option> Options => [picture, json, output, on, units, strict];

    /// <inheritdoc/>
    public override ExitStatus Run(ParseResult parsed, IReadOnlyList<string> names, Terminal terminal)
    {
        var path = parsed.GetValue(output) is InputFile.StandardInput ? null : parsed.GetValue(output);
        var measures = SharedOptions.ReadUnits(parsed.GetValue(units));
        var search = InputSearch.Find(names, terminal.Folder);
        var beside = PictureBeside.Of(parsed.GetValue(picture), "stand", path, parsed.GetValue(json), search, terminal);
        var reading = new PlantingReading(terminal, SharedOptions.ReadDay(parsed.GetValue(on)), measures);
        var run = new FileRun(search, terminal);
        var described = ImmutableArray.CreateBuilder<(Assessment Planting, StandDescription Described)>();
        var status = run.Each("reading", file =>
        {
            var assessment = reading.Read(file);
            if (Checker.IsJudged(assessment.State) && (PlantingReading.IsPlanting(assessment) || search.Files.Count == 1))
            {
                var stands = Guard.Run(file.Name, "seeing how it stands", () => StandDescription.Of(assessment.State));
                described.Add((assessment, stands));
                beside.Write(file, run, null, () => StandPlate.Draw(assessment.State, stands, new DrawingOptions { Units = measures }));
            }

            return run.Judge(assessment.Findings, reading.Sources, parsed.GetValue(strict));
        });

        if (!beside.IsAlone)
        {
            Tell(described, run, path, parsed.GetValue(json), measures, search, terminal);
        }

        return status;
    }

    private static void Tell(ImmutableArray<(Assessment Planting, StandDescription Described)>.Builder described, FileRun run, string? path, bool isJson, UnitSystem measures, InputSearch search, Terminal terminal)
    {
        using var page = new MemoryStream();
        if (isJson)
        {
            StandJson.Write(described, run.Troubles, page);
        }
        else
        {
            using var writer = new StreamWriter(page, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
            foreach (var (planting, stands) in described)
            {
                StandText.Write(planting, stands, measures, writer, Math.Min(terminal.Width, Terminal.UsualWidth), terminal.IsColourWelcome && path is null);
            }
        }

        Delivery.Write(path, page.GetBuffer().AsSpan(0, (int)page.Length), search.Files, terminal);
    }
}
