using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Checks.Nudging;
using GroveSpec.Cli.Arguments;
using GroveSpec.Cli.Files;
using GroveSpec.Cli.Judging;
using GroveSpec.Cli.Reports;
using GroveSpec.Cli.Terminals;
using GroveSpec.Drawing;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Commands;

/// <summary>Finds the smallest moves that clear the findings.</summary>
internal sealed class NudgeCommand : GroveCommand
{
    private readonly Option<string?> reach = new("--reach") { HelpName = "LENGTH" };
    private readonly Option<string?> bend = new("--bend") { HelpName = "DEGREES" };
    private readonly Option<string?> step = new("--step") { HelpName = "LENGTH" };
    private readonly Option<bool> write = new("--write");
    private readonly Option<string?> picture = new("--picture") { HelpName = "PATH" };
    private readonly Option<bool> json = new("--json");
    private readonly Option<string?> output = SharedOptions.Output();
    private readonly Option<string?> on = SharedOptions.On();
    private readonly Option<string?> units = SharedOptions.Units();
    private readonly Option<bool> strict = SharedOptions.Strict();

    /// <inheritdoc/>
    public override string Name => "nudge";

    /// <inheritdoc/>
    public override string Purpose => "finds the smallest moves that clear the findings";

    /// <inheritdoc/>
    public override string Help => """
        grovespec nudge FILE|FOLDER|- ...

        Finds the smallest moves after which the checks of composition find nothing, or
        where that cannot be had, as little as was found, and tells what is left. Trunks
        of a group are moved, those of a clump or raft are bent, since their feet are
        grown together. What is fixed stays. The checks are run on what is suggested.

          grovespec nudge salt-bank.grove
          grovespec nudge salt-bank.grove --reach 15mm    no trunk goes further
          grovespec nudge salt-bank.grove --picture moves.svg
          grovespec nudge salt-bank.grove --write         writes the moves into the file

        --reach LENGTH   how far a trunk may be moved, as its roots allow; 60 mm where
                         nothing is said
        --bend DEGREES   how far a trunk may be bent, as its tip is seen from its foot;
                         15 where nothing is said
        --step LENGTH    the step in which places are told: 0.1 mm, or 0.005 in, where
                         nothing is said
        --write          writes the first suggestion into the file and touches nothing
                         else
        --picture PATH   draws the first suggestion on the plan: a file that ends in
                         .svg, .png or .pdf, or a folder for several
        --json           writes for programs
        --output PATH    writes to a file instead of standard output
        --on DATE        the day to see it on; without it, the day of the newest
                         reading or of the newest work done
        --units WHICH    metric or inch
        --strict         warnings of the file fail the run as errors do
        --help           this page

        """;

    /// <inheritdoc/>
    public override IReadOnlyList<Option> Options => [reach, bend, step, write, picture, json, output, on, units, strict];

    /// <inheritdoc/>
    public override ExitStatus Run(ParseResult parsed, IReadOnlyList<string> names, Terminal terminal)
    {
        var path = parsed.GetValue(output) is InputFile.StandardInput ? null : parsed.GetValue(output);
        var measures = SharedOptions.ReadUnits(parsed.GetValue(units));
        var wish = ReadWish(parsed, measures);
        var search = InputSearch.Find(names, terminal.Folder);
        var isWriting = parsed.GetValue(write);
        if (isWriting && search.Files.Any(file => file.IsStandardInput))
        {
            throw new UsageException("Standard input cannot be written back; leave --write out, and the moves are told.");
        }

        var beside = PictureBeside.Of(parsed.GetValue(picture), "moves", path, parsed.GetValue(json), search, terminal);
        var reading = new PlantingReading(terminal, SharedOptions.ReadDay(parsed.GetValue(on)), measures);
        var run = new FileRun(search, terminal);
        var answers = ImmutableArray.CreateBuilder<(Assessment Planting, NudgeAnswer Answer)>();
        var status = run.Each("looking for moves in", file =>
        {
            var assessment = reading.Read(file);
            if (Checker.IsJudged(assessment.State) && (PlantingReading.IsPlanting(assessment) || search.Files.Count == 1))
            {
                var answer = Guard.Run(file.Name, "looking for moves", () => Nudging.Find(assessment.ToContext(), wish, sideBySide: (count, work) => Parallel.For(0, count, work)));
                answers.Add((assessment, answer));
                beside.Write(file, run, answer.Obstacle, () => NudgePlate.Draw(assessment.State, answer.Suggestions[0], new DrawingOptions { Units = measures }));

                if (isWriting)
                {
                    Write(file, assessment, answer, run, terminal);
                }
            }

            return run.Judge(assessment.Findings.RemoveAll(finding => finding.Check.IsComposition), reading.Sources, parsed.GetValue(strict));
        });

        if (!beside.IsAlone)
        {
            Tell(answers, run, reading.Sources, path, parsed.GetValue(json), measures, search, terminal);
        }

        return status;
    }

    private static void Tell(ImmutableArray<(Assessment Planting, NudgeAnswer Answer)>.Builder answers, FileRun run, SourceLibrary sources, string? path, bool isJson, UnitSystem measures, InputSearch search, Terminal terminal)
    {
        using var page = new MemoryStream();
        if (isJson)
        {
            NudgeJson.Write(answers, sources, run.Troubles, page);
        }
        else
        {
            using var writer = new StreamWriter(page, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
            foreach (var (planting, answer) in answers)
            {
                NudgeText.Write(planting, answer, measures, writer, Math.Min(terminal.Width, Terminal.UsualWidth), terminal.IsColourWelcome && path is null);
            }
        }

        Delivery.Write(path, page.GetBuffer().AsSpan(0, (int)page.Length), search.Files, terminal);
    }

    private NudgeWish ReadWish(ParseResult parsed, UnitSystem measures)
    {
        var usual = NudgeWish.Usual(measures);
        return new(
            SharedOptions.ReadLength("--reach", parsed.GetValue(reach), measures) ?? usual.Reach,
            ReadDegrees(parsed.GetValue(bend)) ?? usual.Bend,
            SharedOptions.ReadLength("--step", parsed.GetValue(step), measures) ?? usual.Step);
    }

    private static Angle? ReadDegrees(string? written)
    {
        if (written is null)
        {
            return null;
        }

        var text = written.Trim();
        text = text.EndsWith("deg", StringComparison.Ordinal) ? text[..^3].TrimEnd() : text;
        return text.Length is > 0 and <= 10 && text.All(letter => char.IsAsciiDigit(letter) || letter == '.')
            && double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var degrees) && degrees is > 0 and <= NudgeWish.SteepestBend
            ? new Angle(degrees)
            : throw new UsageException($"--bend needs an angle above zero and up to {NudgeWish.SteepestBend:0} such as 10 or 10deg; “{HarmlessText.Shorten(HarmlessText.OneLine(written), 60)}” is none.");
    }

    private static void Write(InputFile file, Assessment assessment, NudgeAnswer answer, FileRun run, Terminal terminal)
    {
        if (answer.Suggestions.IsEmpty)
        {
            run.Tell($"{file.Name}: nothing was written.");
            return;
        }

        var best = answer.Suggestions[0];
        OutputFile.Write(file.Name, terminal.Folder, SourceText.ToBytes(TextEdits.Apply(assessment.Tree.Text.Content, best.Edits)));
        run.Tell($"{file.Name}: {(best.Moves.Length == 1 ? $"the move of {HarmlessText.OneLine(best.Moves[0].Name)} was written" : $"the moves of {best.Moves.Length} trunks were written")}.");
    }
}
