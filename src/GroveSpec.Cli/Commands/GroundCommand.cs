using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Checks.Ground;
using GroveSpec.Cli.Arguments;
using GroveSpec.Cli.Files;
using GroveSpec.Cli.Judging;
using GroveSpec.Cli.Reports;
using GroveSpec.Cli.Terminals;
using GroveSpec.Drawing;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Commands;

/// <summary>Finds free ground for one more trunk, or for one that stands.</summary>
internal sealed class GroundCommand : GroveCommand
{
    private readonly Option<string?> diameter = new("--diameter") { HelpName = "LENGTH" };
    private readonly Option<string?> height = new("--height") { HelpName = "LENGTH" };
    private readonly Option<string?> of = new("--of") { HelpName = "TRUNK" };
    private readonly Option<bool> write = new("--write");
    private readonly Option<string?> picture = new("--picture") { HelpName = "PATH" };
    private readonly Option<bool> json = new("--json");
    private readonly Option<string?> output = SharedOptions.Output();
    private readonly Option<string?> on = SharedOptions.On();
    private readonly Option<string?> units = SharedOptions.Units();
    private readonly Option<bool> strict = SharedOptions.Strict();

    /// <inheritdoc/>
    public override string Name => "ground";

    /// <inheritdoc/>
    public override string Purpose => "finds free ground for one more trunk";

    /// <inheritdoc/>
    public override string Help => """
        grovespec ground FILE|FOLDER|- ... --diameter LENGTH

        Finds where one more trunk could stand without a finding that is not there
        already: how much ground is free, the best few spots in it, why, and what
        limits each. Where none is free, the least bad spots and what they would leave.

          grovespec ground salt-bank.grove --diameter 18mm --height 300mm
          grovespec ground salt-bank.grove --diameter 18mm --picture ground.svg
          grovespec ground salt-bank.grove --of C            where C could go instead

        --diameter LENGTH  its thickness above the flare, such as 18mm or 0.7in
        --height LENGTH    its height; without it, nothing that asks for a height
                           is looked at
        --of TRUNK         for a trunk of the planting, with its own sizes, as if it
                           did not stand yet
        --write            writes the best spot into the file and touches nothing else
        --picture PATH     draws the plan with the free ground, as .svg, .png or .pdf
        --json             writes for programs, with the outline of the ground
        --output PATH      writes to a file instead of standard output
        --on DATE          the day to see it on; without it, the day of the newest
                           reading or of the newest work done
        --units WHICH      metric or inch
        --strict           warnings of the file fail the run as errors do
        --help             this page

        """;

    /// <inheritdoc/>
    public override IReadOnlyList<Option> Options => [diameter, height, of, write, picture, json, output, on, units, strict];

    /// <inheritdoc/>
    public override ExitStatus Run(ParseResult parsed, IReadOnlyList<string> names, Terminal terminal)
    {
        var path = parsed.GetValue(output) is InputFile.StandardInput ? null : parsed.GetValue(output);
        var measures = SharedOptions.ReadUnits(parsed.GetValue(units));
        var wish = new GroundWish(SharedOptions.ReadLength("--diameter", parsed.GetValue(diameter), measures), SharedOptions.ReadLength("--height", parsed.GetValue(height), measures), parsed.GetValue(of));
        if (wish is { Diameter: null, Of: null })
        {
            throw new UsageException("ground needs the thickness of the trunk, --diameter 18mm, or the name of one of the planting, --of C.");
        }

        var search = InputSearch.Find(names, terminal.Folder);
        var isWriting = parsed.GetValue(write);
        if (isWriting && search.Files.Any(file => file.IsStandardInput))
        {
            throw new UsageException("Standard input cannot be written back; leave --write out, and the spots are told.");
        }

        var beside = PictureBeside.Of(parsed.GetValue(picture), "ground", path, parsed.GetValue(json), search, terminal);
        var reading = new PlantingReading(terminal, SharedOptions.ReadDay(parsed.GetValue(on)), measures);
        var run = new FileRun(search, terminal);
        var answers = ImmutableArray.CreateBuilder<(Assessment Planting, GroundAnswer Answer)>();
        var status = run.Each("looking for ground in", file =>
        {
            var assessment = reading.Read(file);
            if (Checker.IsJudged(assessment.State) && (PlantingReading.IsPlanting(assessment) || search.Files.Count == 1))
            {
                var answer = Guard.Run(file.Name, "looking for ground", () => FreeGround.Find(assessment.ToContext(), wish));
                answers.Add((assessment, answer));
                beside.Write(file, run, answer.Obstacle, () => GroundPlate.Draw(assessment.State, answer, new DrawingOptions { Units = measures }));

                if (isWriting)
                {
                    Write(file, assessment, answer, run, terminal);
                }
            }

            return run.Judge(assessment.Findings.RemoveAll(finding => finding.Check.IsComposition), reading.Sources, parsed.GetValue(strict));
        });

        if (!beside.IsAlone)
        {
            Tell(answers.ToImmutable(), run, reading.Sources, parsed.GetValue(json), path, search, measures, terminal);
        }

        return status;
    }

    private static void Tell(ImmutableArray<(Assessment Planting, GroundAnswer Answer)> answers, FileRun run, SourceLibrary sources, bool isJson, string? path, InputSearch search, UnitSystem measures, Terminal terminal)
    {
        using var page = new MemoryStream();
        if (isJson)
        {
            GroundJson.Write(answers, sources, run.Troubles, page);
        }
        else
        {
            using var writer = new StreamWriter(page, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
            foreach (var (planting, answer) in answers)
            {
                GroundText.Write(planting, answer, measures, writer, Math.Min(terminal.Width, Terminal.UsualWidth), terminal.IsColourWelcome && path is null);
            }
        }

        Delivery.Write(path, page.GetBuffer().AsSpan(0, (int)page.Length), search.Files, terminal);
    }

    private static void Write(InputFile file, Assessment assessment, GroundAnswer answer, FileRun run, Terminal terminal)
    {
        if (answer.Obstacle is not null || answer.Spots.IsEmpty || !answer.Spots[0].Raises.IsEmpty || answer.Spots[0].Edits.IsEmpty)
        {
            run.Tell($"{file.Name}: nothing was written{(answer.Obstacle is null && answer.Outline.IsEmpty ? ", since no ground is free" : "")}.");
            return;
        }

        OutputFile.Write(file.Name, terminal.Folder, SourceText.ToBytes(TextEdits.Apply(assessment.Tree.Text.Content, answer.Spots[0].Edits)));
        run.Tell($"{file.Name}: {HarmlessText.OneLine(answer.Trunk!.Name)} was written at the best spot.");
    }
}
