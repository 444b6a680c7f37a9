using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Checks.Choosing;
using GroveSpec.Cli.Arguments;
using GroveSpec.Cli.Files;
using GroveSpec.Cli.Judging;
using GroveSpec.Cli.Reports;
using GroveSpec.Cli.Terminals;
using GroveSpec.Drawing;
using GroveSpec.Syntax.Text;
using NodaTime;

namespace GroveSpec.Cli.Commands;

/// <summary>Tells which trunks to keep.</summary>
internal sealed class ThinCommand : GroveCommand
{
    private const int MostKept = 1000;

    private readonly Option<string?> keep = new("--keep") { HelpName = "NUMBER|FROM-TO" };
    private readonly Option<string?> with = new("--with") { HelpName = "TRUNKS" };
    private readonly Option<string?> without = new("--without") { HelpName = "TRUNKS" };
    private readonly Option<bool> write = new("--write");
    private readonly Option<string?> picture = new("--picture") { HelpName = "PATH" };
    private readonly Option<bool> json = new("--json");
    private readonly Option<string?> output = SharedOptions.Output();
    private readonly Option<string?> on = SharedOptions.On();
    private readonly Option<string?> units = SharedOptions.Units();
    private readonly Option<bool> strict = SharedOptions.Strict();

    /// <inheritdoc/>
    public override string Name => "thin";

    /// <inheritdoc/>
    public override string Purpose => "tells which trunks of a stool to keep";

    /// <inheritdoc/>
    public override string Help => """
        grovespec thin FILE|FOLDER|- ... --keep NUMBER

        Of the trunks that stand, tells which to keep: every choice of up to 24 trunks
        is weighed by what the checks would still find, the aims of roles, the variety
        of gaps and sizes, and the balance of the wood. The best few are told, those
        that come to nearly the same beside them, and why.

          grovespec thin stool.grove --keep 5
          grovespec thin stool.grove --keep 5-7 --with A,B --without C
          grovespec thin stool.grove --keep 5 --picture keep.svg
          grovespec thin stool.grove --keep 5 --write --on 2027-03-14

        --keep NUMBER    how many stay: a number such as 5, or a range such as 5-7
        --with TRUNKS    trunks that stay in any case, parted by commas
        --without TRUNKS trunks that go in any case
        --write          writes "removed" with the day that --on then has to give for
                         each trunk that the first choice takes out, and touches
                         nothing else; plan the cut itself for a season it can bear
        --picture PATH   draws the choices side by side from above: a file that ends in
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
    public override IReadOnlyList<Option> Options => [keep, with, without, write, picture, json, output, on, units, strict];

    /// <inheritdoc/>
    public override ExitStatus Run(ParseResult parsed, IReadOnlyList<string> names, Terminal terminal)
    {
        var path = parsed.GetValue(output) is InputFile.StandardInput ? null : parsed.GetValue(output);
        var measures = SharedOptions.ReadUnits(parsed.GetValue(units));
        var (least, most) = ReadNumber(parsed.GetValue(keep));
        var wish = new ThinningWish(least, most, ReadNames(parsed.GetValue(with)), ReadNames(parsed.GetValue(without)));
        var search = InputSearch.Find(names, terminal.Folder);
        var day = SharedOptions.ReadDay(parsed.GetValue(on));
        var isWriting = parsed.GetValue(write);
        RefuseToWrite(isWriting, day, search);
        var beside = PictureBeside.Of(parsed.GetValue(picture), "keep", path, parsed.GetValue(json), search, terminal);
        var reading = new PlantingReading(terminal, day, measures);
        var run = new FileRun(search, terminal);
        var answers = ImmutableArray.CreateBuilder<(Assessment Planting, ThinningAnswer Answer)>();
        var status = run.Each("choosing in", file =>
        {
            var assessment = reading.Read(file);
            if (Checker.IsJudged(assessment.State) && (PlantingReading.IsPlanting(assessment) || search.Files.Count == 1))
            {
                var answer = Guard.Run(file.Name, "choosing trunks", () => Thinning.Choose(assessment.ToContext(), wish));
                answers.Add((assessment, answer));
                beside.Write(file, run, answer.Obstacle, () => ThinPlate.DrawAll(assessment.State, answer, new DrawingOptions { Units = measures }));

                if (isWriting)
                {
                    Write(file, assessment, answer, run, terminal);
                }
            }

            return run.Judge(assessment.Findings.RemoveAll(finding => finding.Check.IsComposition), reading.Sources, parsed.GetValue(strict));
        });

        if (!beside.IsAlone)
        {
            Tell(answers, run, reading.Sources, path, parsed.GetValue(json), search, terminal);
        }

        return status;
    }

    private static void RefuseToWrite(bool isWriting, LocalDate? day, InputSearch search)
    {
        if (isWriting && search.Files.Any(file => file.IsStandardInput))
        {
            throw new UsageException("Standard input cannot be written back; leave --write out, and the choices are told.");
        }

        if (isWriting && day is null)
        {
            throw new UsageException("--write needs the day on which the trunks are taken out: --on 2027-03-14.");
        }
    }

    private static void Write(InputFile file, Assessment assessment, ThinningAnswer answer, FileRun run, Terminal terminal)
    {
        var edits = answer.Suggestions.FirstOrDefault() is { } best && assessment.Date is { } day
            ? ThinningEdits.Of(assessment.ToContext(), assessment.Tree, best.Stand, day)
            : [];
        if (!edits.IsEmpty)
        {
            OutputFile.Write(file.Name, terminal.Folder, SourceText.ToBytes(TextEdits.Apply(assessment.Tree.Text.Content, edits)));
        }

        var left = answer.Suggestions.Length == 0 ? 0 : answer.Suggestions[0].Stand.TakenOut.Length - edits.Length;
        if (left > 0)
        {
            run.Tell($"{file.Name}: {(left == 1 ? "1 trunk that goes was left alone, because its line" : $"{left} trunks that go were left alone, because their lines")} could not be read whole: put that right first.");
        }

        run.Tell($"{file.Name}: {(edits.IsEmpty ? "nothing was written" : edits.Length == 1 ? "1 trunk was written as taken out" : $"{edits.Length} trunks were written as taken out")}.");
    }

    private static void Tell(ImmutableArray<(Assessment Planting, ThinningAnswer Answer)>.Builder answers, FileRun run, SourceLibrary sources, string? path, bool isJson, InputSearch search, Terminal terminal)
    {
        using var page = new MemoryStream();
        if (isJson)
        {
            ThinJson.Write(answers, sources, run.Troubles, page);
        }
        else
        {
            using var writer = new StreamWriter(page, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
            foreach (var (planting, answer) in answers)
            {
                ThinText.Write(planting, answer, writer, Math.Min(terminal.Width, Terminal.UsualWidth), terminal.IsColourWelcome && path is null);
            }
        }

        Delivery.Write(path, page.GetBuffer().AsSpan(0, (int)page.Length), search.Files, terminal);
    }

    private static (int Least, int Most) ReadNumber(string? written)
    {
        var ends = written?.Split('-') ?? [];
        if (ends.Length is 1 or 2 && Number(ends[0]) is { } least && Number(ends[^1]) is { } most && least <= most)
        {
            return (least, most);
        }

        throw new UsageException($"thin needs the number of trunks to keep, from 1 on: --keep 5, or a range such as --keep 5-7{(written is null ? "" : $"; “{HarmlessText.Shorten(HarmlessText.OneLine(written), 60)}” is neither")}.");
    }

    private static int? Number(string text)
    {
        var trimmed = text.Trim();
        return trimmed.Length is > 0 and <= 4 && trimmed.All(char.IsAsciiDigit) && int.Parse(trimmed, System.Globalization.CultureInfo.InvariantCulture) is >= 1 and <= MostKept and var number ? number : null;
    }

    private static ImmutableArray<string> ReadNames(string? written) =>
        [.. (written ?? "").Split([',', ' '], StringSplitOptions.RemoveEmptyEntries).Distinct(StringComparer.Ordinal)];
}
