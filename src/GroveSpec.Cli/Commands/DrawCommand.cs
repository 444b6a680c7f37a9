using System.CommandLine;
using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Cli.Arguments;
using GroveSpec.Cli.Files;
using GroveSpec.Cli.Judging;
using GroveSpec.Cli.Terminals;
using GroveSpec.Drawing;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Drawing.Wire;
using GroveSpec.Publishing.Faces;
using GroveSpec.Publishing.Raster;

namespace GroveSpec.Cli.Commands;

/// <summary>Draws plantings.</summary>
internal sealed class DrawCommand : GroveCommand
{
    private readonly Option<string?> view = new("--view") { HelpName = "plan|front|timeline|wiring" };
    private readonly Option<string?> format = new("--format") { HelpName = "svg|png|pdf" };
    private readonly Option<string?> paper = new("--paper") { HelpName = "drawing|a4|letter" };
    private readonly Option<bool> bearings = new("--bearings");
    private readonly Option<bool> hidden = new("--hidden");
    private readonly Option<bool> faces = new("--faces");
    private readonly Option<string?> output = SharedOptions.Output();
    private readonly Option<string?> on = SharedOptions.On();
    private readonly Option<string?> units = SharedOptions.Units();
    private readonly Option<bool> strict = SharedOptions.Strict();

    /// <inheritdoc/>
    public override string Name => "draw";

    /// <inheritdoc/>
    public override string Purpose => "draws plantings from above, from the front, and through the year";

    /// <inheritdoc/>
    public override string Help => """
        grovespec draw FILE|FOLDER|- ...

        Draws plantings to scale. What the checks find is marked in the drawing, with a
        number and a sentence each; a finding that fails the run is told as well.

          grovespec draw salt-bank.grove --output salt-bank.svg
          grovespec draw salt-bank.grove --view front --output front.png
          grovespec draw salt-bank.grove --view timeline --output year.pdf --paper a4
          grovespec draw . --view plan --format png --output drawings/

        --view VIEW      plan, from above; front, from the viewer's place; timeline, the
                         work through the seasons; wiring, each wired trunk with its
                         turns, for the bench. Without it: plan
        --format FORM    svg, png or pdf. Without it: what the output's name ends in, else svg
        --output PATH    a file, or a folder for several; standard output if left out
        --bearings       draws a dial of bearings round the plan
        --hidden         draws in the front view, broken, what nearer trunks hide
        --faces          carries the letters' face in the SVG, for a viewer that lacks it
        --paper PAPER    the page of a PDF: drawing, as large as the drawing; a4; letter
        --on DATE        draws the planting as it is on that day; without it, on the day
                         of the newest reading or of the newest work done
        --units WHICH    metric or inch
        --strict         warnings fail the run as errors do
        --help           this page

        """;

    /// <inheritdoc/>
    public override IReadOnlyList<Option> Options => [view, format, paper, bearings, hidden, faces, output, on, units, strict];

    /// <inheritdoc/>
    public override ExitStatus Run(ParseResult parsed, IReadOnlyList<string> names, Terminal terminal)
    {
        var path = parsed.GetValue(output) is InputFile.StandardInput ? null : parsed.GetValue(output);
        var seen = SharedOptions.Choose("--view", parsed.GetValue(view) ?? "plan", [("plan", PictureView.Plan), ("front", PictureView.Front), ("timeline", PictureView.Timeline), ("wiring", PictureView.Wiring)]);
        var form = PictureFile.FormatOf(parsed.GetValue(format), path);
        var page = PictureFile.PageOf(parsed.GetValue(paper), form);
        var measures = SharedOptions.ReadUnits(parsed.GetValue(units));
        var options = new DrawingOptions
        {
            Units = measures,
            ShowBearings = parsed.GetValue(bearings),
            ShowHidden = parsed.GetValue(hidden),
            IsOnWhite = page != PdfPage.Drawing,
            FaceRules = parsed.GetValue(faces) && form == PictureFormat.Svg ? PageFaces.Rules() : "",
        };
        var search = InputSearch.Find(names, terminal.Folder);
        if (path is null && search.Files.Count > 1)
        {
            throw new UsageException($"These are {search.Files.Count} plantings; name a folder with --output, and each is drawn into a file of its own there.");
        }

        if (path is null && form != PictureFormat.Svg && terminal.IsOutputWatched)
        {
            throw new UsageException($"A {PictureFile.Word(form)} file is nothing to look at on a terminal; name a file for it: --output plan.{PictureFile.Word(form)}.");
        }

        var folder = path is not null && OutputFolder.IsMeant(path, terminal.Folder, search.Files.Count)
            ? new OutputFolder(path, search.Files, terminal)
            : null;
        var reading = new PlantingReading(terminal, SharedOptions.ReadDay(parsed.GetValue(on)), measures);
        var run = new FileRun(search, terminal);
        return run.Each("drawing", file =>
        {
            var assessment = reading.Read(file);
            if (!Checker.IsJudged(assessment.State))
            {
                return run.Judge(assessment.Findings, reading.Sources, parsed.GetValue(strict));
            }

            var picture = Guard.Run(file.Name, "drawing it", () => Picture(assessment, seen, options, form, page));
            if (folder is not null)
            {
                folder.Write(file, $"-{Word(seen)}.{PictureFile.Word(form)}", picture);
            }
            else
            {
                Delivery.Write(path, picture, search.Files, terminal);
            }

            return run.Judge(assessment.Findings, reading.Sources, parsed.GetValue(strict));
        });
    }

    private static byte[] Picture(Assessment assessment, PictureView seen, DrawingOptions options, PictureFormat form, PdfPage page)
    {
        var subject = new DrawingSubject(assessment.State, assessment.Findings);
        if (seen == PictureView.Plan && form == PictureFormat.Svg)
        {
            // The longest drawing there is, of a large wood, is made without a string in between.
            return PlanPlate.DrawBytes(subject, options);
        }

        var svg = seen switch
        {
            PictureView.Front => FrontPlate.Draw(subject, options),
            PictureView.Timeline => TimelinePlate.Draw(subject, options),
            PictureView.Wiring => WirePlate.Draw(subject, options),
            _ => PlanPlate.Draw(subject, options),
        };
        return PictureFile.Render(svg, form, page);
    }

    private static string Word(PictureView view) => view switch
    {
        PictureView.Front => "front",
        PictureView.Timeline => "timeline",
        PictureView.Wiring => "wiring",
        _ => "plan",
    };
}
