using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Checks.Fronts;
using GroveSpec.Cli.Arguments;
using GroveSpec.Cli.Files;
using GroveSpec.Cli.Judging;
using GroveSpec.Cli.Reports;
using GroveSpec.Cli.Terminals;
using GroveSpec.Drawing;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Commands;

/// <summary>Finds the bearings from which plantings are best seen.</summary>
internal sealed class FrontsCommand : GroveCommand
{
    private readonly Option<bool> write = new("--write");
    private readonly Option<string?> picture = new("--picture") { HelpName = "PATH" };
    private readonly Option<bool> json = new("--json");
    private readonly Option<string?> output = SharedOptions.Output();
    private readonly Option<string?> on = SharedOptions.On();
    private readonly Option<string?> units = SharedOptions.Units();
    private readonly Option<bool> strict = SharedOptions.Strict();

    /// <inheritdoc/>
    public override string Name => "fronts";

    /// <inheritdoc/>
    public override string Purpose => "finds the sides from which plantings are best seen";

    /// <inheritdoc/>
    public override string Help => """
        grovespec fronts FILE|FOLDER|- ...

        Finds the best front: every bearing that can matter is looked at, where two
        trunks come to stand in line, gaps tie, tops line up. The best few are told, why
        each is good, what it loses, and how far the pot may be turned before it is lost;
        beside them the front the file has now.

          grovespec fronts salt-bank.grove
          grovespec fronts salt-bank.grove --write      makes the best one its front
          grovespec fronts salt-bank.grove --picture fronts.svg
          grovespec fronts . --json --output fronts.json

        --write          writes the bearing of the best front into the file, and touches
                         nothing else
        --picture PATH   draws the fronts side by side and a dial of the score all round:
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
    public override IReadOnlyList<Option> Options => [write, picture, json, output, on, units, strict];

    /// <inheritdoc/>
    public override ExitStatus Run(ParseResult parsed, IReadOnlyList<string> names, Terminal terminal)
    {
        var path = parsed.GetValue(output) is InputFile.StandardInput ? null : parsed.GetValue(output);
        var measures = SharedOptions.ReadUnits(parsed.GetValue(units));
        var search = InputSearch.Find(names, terminal.Folder);
        var isWriting = parsed.GetValue(write);
        if (isWriting && search.Files.Any(file => file.IsStandardInput))
        {
            throw new UsageException("Standard input cannot be written back; leave --write out, and the fronts are told.");
        }

        var beside = PictureBeside.Of(parsed.GetValue(picture), "fronts", path, parsed.GetValue(json), search, terminal);
        var reading = new PlantingReading(terminal, SharedOptions.ReadDay(parsed.GetValue(on)), measures);
        var run = new FileRun(search, terminal);
        var answers = ImmutableArray.CreateBuilder<(Assessment Planting, FrontsAnswer Answer)>();
        var status = run.Each("turning", file =>
        {
            var assessment = reading.Read(file);
            if (Checker.IsJudged(assessment.State) && (PlantingReading.IsPlanting(assessment) || search.Files.Count == 1))
            {
                var answer = Guard.Run(file.Name, "looking for its front", () => BestFronts.Find(assessment.ToContext(), assessment.Tree));
                answers.Add((assessment, answer));
                beside.Write(file, run, answer.Obstacle, () => FrontsPlate.Draw(assessment.State, answer, new DrawingOptions { Units = measures }));

                if (isWriting)
                {
                    Write(file, assessment, answer, run, terminal);
                }
            }

            return run.Judge(assessment.Findings.RemoveAll(finding => finding.Check.IsComposition), reading.Sources, parsed.GetValue(strict));
        });

        if (!beside.IsAlone)
        {
            WriteReport(answers, run, reading.Sources, path, parsed.GetValue(json), search, terminal);
        }

        return status;
    }

    private static void Write(InputFile file, Assessment assessment, FrontsAnswer answer, FileRun run, Terminal terminal)
    {
        var best = answer.Suggestions.FirstOrDefault();
        if (best is null || best.Edits.IsEmpty || best.Front.From == assessment.Planting.Viewed?.From)
        {
            var reason = best is null ? "there is none to suggest"
                : best.Edits.IsEmpty ? "the file's own \"viewed\" could not be read whole, so put that right first"
                : "the best front is the one it has";
            run.Tell($"{file.Name}: no front was written, since {reason}.");
            return;
        }

        OutputFile.Write(file.Name, terminal.Folder, SourceText.ToBytes(TextEdits.Apply(assessment.Tree.Text.Content, best.Edits)));
        run.Tell($"{file.Name}: the best front was written, viewed from {FrontSentences.Say(best.Front.From)}.");
    }

    private static void WriteReport(IEnumerable<(Assessment Planting, FrontsAnswer Answer)> answers, FileRun run, SourceLibrary sources, string? path, bool isJson, InputSearch search, Terminal terminal)
    {
        using var page = new MemoryStream();
        if (isJson)
        {
            FrontsJson.Write(answers, sources, run.Troubles, page);
        }
        else
        {
            using var writer = new StreamWriter(page, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
            foreach (var (planting, answer) in answers)
            {
                FrontsText.Write(planting, answer, writer, Math.Min(terminal.Width, Terminal.UsualWidth), terminal.IsColourWelcome && path is null);
            }
        }

        Delivery.Write(path, page.GetBuffer().AsSpan(0, (int)page.Length), search.Files, terminal);
    }
}
