using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Checks.Moving;
using GroveSpec.Cli.Arguments;
using GroveSpec.Cli.Files;
using GroveSpec.Cli.Judging;
using GroveSpec.Cli.Reports;
using GroveSpec.Cli.Terminals;
using GroveSpec.Craft.Survey;
using GroveSpec.Drawing;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Commands;

/// <summary>Finds where trunks stand from tape readings.</summary>
internal sealed class SurveyCommand : GroveCommand
{
    private readonly Option<bool> write = new("--write");
    private readonly Option<bool> mirrored = new("--mirrored");
    private readonly Option<string?> picture = new("--picture") { HelpName = "PATH" };
    private readonly Option<bool> json = new("--json");
    private readonly Option<string?> output = SharedOptions.Output();
    private readonly Option<string?> on = SharedOptions.On();
    private readonly Option<string?> units = SharedOptions.Units();
    private readonly Option<bool> strict = SharedOptions.Strict();

    /// <inheritdoc/>
    public override string Name => "survey";

    /// <inheritdoc/>
    public override string Purpose => "finds where trunks stand from tape readings";

    /// <inheritdoc/>
    public override string Help => """
        grovespec survey FILE|FOLDER|- ...

        Finds where trunks stand from tape readings, centre to centre or between bark,
        all of them together; trunks with an "at" stay where they are. Tells how sure
        each place is, which reading does not fit, what is still free, and which reading
        to take next.

          grovespec survey salt-bank.grove
          grovespec survey salt-bank.grove --write      writes the places into the file
          grovespec survey salt-bank.grove --picture survey.svg
          grovespec survey . --json --output places.json

        --write          writes an "at" for each trunk whose place is found, and touches
                         nothing else; what may be its mirror image, or hangs on a
                         reading that may be off, is left alone
        --mirrored       where the file gives no trunk a place: the other way round
        --picture PATH   draws the places, how sure they are, and the readings on the plan:
                         a file that ends in .svg, .png or .pdf, or a folder for several
        --json           writes for programs
        --output PATH    writes to a file instead of standard output
        --on DATE        the day whose thicknesses count, for readings between bark
        --units WHICH    metric or inch
        --strict         warnings of the file fail the run as errors do
        --help           this page

        """;

    /// <inheritdoc/>
    public override IReadOnlyList<Option> Options => [write, mirrored, picture, json, output, on, units, strict];

    /// <inheritdoc/>
    public override ExitStatus Run(ParseResult parsed, IReadOnlyList<string> names, Terminal terminal)
    {
        var path = parsed.GetValue(output) is InputFile.StandardInput ? null : parsed.GetValue(output);
        var measures = SharedOptions.ReadUnits(parsed.GetValue(units));
        var search = InputSearch.Find(names, terminal.Folder);
        var isWriting = parsed.GetValue(write);
        if (isWriting && search.Files.Any(file => file.IsStandardInput))
        {
            throw new UsageException("Standard input cannot be written back; leave --write out, and the places are told.");
        }

        var beside = PictureBeside.Of(parsed.GetValue(picture), "survey", path, parsed.GetValue(json), search, terminal);
        var reading = new PlantingReading(terminal, SharedOptions.ReadDay(parsed.GetValue(on)), measures);
        var run = new FileRun(search, terminal);
        var surveyed = ImmutableArray.CreateBuilder<(Assessment Planting, TapeSurvey Survey)>();
        var status = run.Each("surveying", file =>
        {
            var assessment = reading.Read(file);
            if (Checker.IsJudged(assessment.State) && (!assessment.Planting.Trunks.IsEmpty || search.Files.Count == 1))
            {
                var survey = Guard.Run(file.Name, "surveying it", () => TapeSurvey.Of(assessment.State, parsed.GetValue(mirrored)));
                surveyed.Add((assessment, survey));
                beside.Write(file, run, null, () => SurveyPlate.Draw(assessment.State, survey, new DrawingOptions { Units = measures }));

                if (isWriting)
                {
                    Write(file, assessment, survey, run, terminal);
                }
            }

            return run.Judge(assessment.Findings, reading.Sources, parsed.GetValue(strict));
        });

        if (!beside.IsAlone)
        {
            Tell(surveyed, run, path, parsed.GetValue(json), measures, search, terminal);
        }

        return status;
    }

    private static void Tell(ImmutableArray<(Assessment Planting, TapeSurvey Survey)>.Builder surveyed, FileRun run, string? path, bool isJson, UnitSystem measures, InputSearch search, Terminal terminal)
    {
        using var page = new MemoryStream();
        if (isJson)
        {
            SurveyJson.Write(surveyed, run.Troubles, page);
        }
        else
        {
            using var writer = new StreamWriter(page, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
            foreach (var (planting, survey) in surveyed)
            {
                SurveyText.Write(planting, survey, measures, writer, Math.Min(terminal.Width, Terminal.UsualWidth), terminal.IsColourWelcome && path is null);
            }
        }

        Delivery.Write(path, page.GetBuffer().AsSpan(0, (int)page.Length), search.Files, terminal);
    }

    private static void Write(InputFile file, Assessment assessment, TapeSurvey survey, FileRun run, Terminal terminal)
    {
        var edits = Guard.Run(file.Name, "writing its places", () => SurveyedPlaces.Edits(survey, assessment.Tree, assessment.Origins, assessment.Units));
        if (!edits.IsEmpty)
        {
            OutputFile.Write(file.Name, terminal.Folder, SourceText.ToBytes(TextEdits.Apply(assessment.Tree.Text.Content, edits)));
        }

        run.Tell($"{file.Name}: {(edits.Length == 0 ? "no place was written" : edits.Length == 1 ? "the place of 1 trunk was written" : $"the places of {edits.Length} trunks were written")}.");
    }
}
