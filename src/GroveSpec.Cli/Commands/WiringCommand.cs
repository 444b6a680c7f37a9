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
using GroveSpec.Craft.Calendar;
using GroveSpec.Craft.Care;
using GroveSpec.Craft.Wire;
using GroveSpec.Drawing;
using GroveSpec.Drawing.Wire;
using GroveSpec.Model.Quantities;
using GroveSpec.Publishing.Raster;

namespace GroveSpec.Cli.Commands;

/// <summary>Tells how each wire is cut and wound.</summary>
internal sealed class WiringCommand : GroveCommand
{
    private readonly Option<string?> sheet = new("--sheet") { HelpName = "PATH" };
    private readonly Option<string?> paper = new("--paper") { HelpName = "drawing|a4|letter" };
    private readonly Option<bool> json = new("--json");
    private readonly Option<string?> output = SharedOptions.Output();
    private readonly Option<string?> on = SharedOptions.On();
    private readonly Option<string?> units = SharedOptions.Units();
    private readonly Option<bool> strict = SharedOptions.Strict();

    /// <inheritdoc/>
    public override string Name => "wiring";

    /// <inheritdoc/>
    public override string Purpose => "tells what wire to cut, how to wind it, and when to look";

    /// <inheritdoc/>
    public override string Help => """
        grovespec wiring FILE|FOLDER|- ...

        Tells of each wire on each trunk: the thickness where it works and about a third of
        it, the sizes sold that come nearest, to what length it is cut, its turns, what the
        bend asks of the wood, and by when to look and take it off; then what to buy. It
        compares wire and wood, and promises nothing.

          grovespec wiring salt-bank.grove
          grovespec wiring salt-bank.grove --sheet bench.pdf --paper a4
          grovespec wiring . --json --output wire.json

        --sheet PATH     draws each wired trunk with its turns at their true angle, as .svg,
                         .png or .pdf, for the bench; a folder for several
        --paper PAPER    the page of a PDF: drawing, as large as the drawing; a4; letter
        --json           writes for programs
        --output PATH    writes to a file instead of standard output
        --on DATE        the day whose measures are taken; without it, the day of the newest
                         reading or of the newest work done
        --units WHICH    metric or inch
        --strict         warnings fail the run as errors do
        --help           this page

        """;

    /// <inheritdoc/>
    public override IReadOnlyList<Option> Options => [sheet, paper, json, output, on, units, strict];

    /// <inheritdoc/>
    public override ExitStatus Run(ParseResult parsed, IReadOnlyList<string> names, Terminal terminal)
    {
        var path = parsed.GetValue(output) is InputFile.StandardInput ? null : parsed.GetValue(output);
        var picture = parsed.GetValue(sheet);
        var form = PictureFile.FormatOf(picture);
        var page = PictureFile.PageOf(parsed.GetValue(paper), form);
        var measures = SharedOptions.ReadUnits(parsed.GetValue(units));
        var search = InputSearch.Find(names, terminal.Folder);
        var folder = picture is not (null or InputFile.StandardInput) && OutputFolder.IsMeant(picture, terminal.Folder, search.Files.Count) ? new OutputFolder(picture, search.Files, terminal) : null;
        var isStandardTaken = picture is InputFile.StandardInput;
        if (isStandardTaken && (parsed.GetValue(json) || path is not null || search.Files.Count > 1))
        {
            throw new UsageException("--sheet - writes one drawing to standard output, and nothing else then does. Name a file or a folder for --sheet.");
        }

        Delivery.RefuseSame([path, picture], search.Files, terminal);
        var reading = new PlantingReading(terminal, SharedOptions.ReadDay(parsed.GetValue(on)), measures);
        var run = new FileRun(search, terminal);
        var read = ImmutableArray.CreateBuilder<(Assessment Planting, ImmutableArray<WirePlan> Plans)>();
        var status = run.Each("reading", file =>
        {
            var assessment = reading.Read(file);
            if (Checker.IsJudged(assessment.State))
            {
                if (picture is not null)
                {
                    var options = new DrawingOptions { Units = measures, IsOnWhite = page != PdfPage.Drawing };
                    var drawn = Guard.Run(file.Name, "drawing its wire", () => PictureFile.Render(WirePlate.Draw(new DrawingSubject(assessment.State, assessment.Findings), options), form, page));
                    if (folder is not null)
                    {
                        folder.Write(file, $"-wiring.{PictureFile.Word(form)}", drawn);
                    }
                    else
                    {
                        Delivery.Write(picture, drawn, search.Files, terminal);
                    }
                }

                if (PlantingReading.IsPlanting(assessment) || search.Files.Count == 1)
                {
                    read.Add((assessment, Guard.Run(file.Name, "planning its wire", () => WirePlans.Of(assessment.State, WorkList.Of(assessment.Planting, TaskDates.Of(assessment.Planting))))));
                }
            }

            return run.Judge(assessment.Findings, reading.Sources, parsed.GetValue(strict));
        });
        if (!isStandardTaken)
        {
            WriteReport(read.ToImmutable(), run, measures, path, parsed.GetValue(json), search, terminal);
        }

        return status;
    }

    private static void WriteReport(ImmutableArray<(Assessment Planting, ImmutableArray<WirePlan> Plans)> plantings, FileRun run, UnitSystem measures, string? path, bool isJson, InputSearch search, Terminal terminal)
    {
        using var page = new MemoryStream();
        if (isJson)
        {
            WiringJson.Write(plantings, run.Troubles, page);
        }
        else
        {
            using var writer = new StreamWriter(page, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
            foreach (var (planting, plans) in plantings)
            {
                WiringText.Write(planting, plans, measures, writer, Math.Min(terminal.Width, Terminal.UsualWidth), terminal.IsColourWelcome && path is null);
            }
        }

        Delivery.Write(path, page.GetBuffer().AsSpan(0, (int)page.Length), search.Files, terminal);
    }
}
