using System.Collections.Immutable;
using System.CommandLine;
using GroveSpec.Binding;
using GroveSpec.Binding.Quantities;
using GroveSpec.Checks.Choosing;
using GroveSpec.Cli.Judging;
using GroveSpec.Cli.Reports;
using GroveSpec.Cli.Terminals;
using GroveSpec.Drawing;
using GroveSpec.LanguageServer;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;
using NodaTime;

namespace GroveSpec.Cli.Commands;

/// <summary>Tells which trunks to keep.</summary>
internal sealed class ThinCommand : PlantingCommand<ThinningAnswer>
{
    private readonly Option<string?> keep = new("--keep") { HelpName = "NUMBER|FROM-TO" };
    private readonly Option<string?> with = new("--with") { HelpName = "TRUNKS" };
    private readonly Option<string?> without = new("--without") { HelpName = "TRUNKS" };

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
        --with TRUNKS    trunks that stay in any case: their names as the file writes
                         them, parted by commas, such as A,B
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
    protected override IReadOnlyList<Option> OwnOptions => [keep, with, without];

    /// <inheritdoc/>
    protected override string WhatIsWritten => "choices";

    /// <inheritdoc/>
    protected override string PictureWord => "keep";

    /// <inheritdoc/>
    protected override string Doing => "choosing in";

    /// <inheritdoc/>
    protected override Func<Assessment, ThinningAnswer> ReadQuestion(ParseResult parsed, UnitSystem units)
    {
        var (least, most) = ReadNumber(parsed.GetValue(keep));
        var wish = new ThinningWish(least, most, NameList.Read(parsed.GetValue(with) ?? ""), NameList.Read(parsed.GetValue(without) ?? ""));
        return planting => Thinning.Choose(planting.ToContext(), wish, AtOnce.Do);
    }

    /// <inheritdoc/>
    protected override string? ObstacleTo(ThinningAnswer answer) => answer.Obstacle;

    /// <inheritdoc/>
    protected override bool IsMisasked(ThinningAnswer answer) => answer.IsMisasked;

    /// <inheritdoc/>
    protected override string Draw(Assessment planting, ThinningAnswer answer, DrawingOptions options) => ThinPlate.DrawAll(planting.State, answer, options);

    /// <inheritdoc/>
    protected override void RefuseToWrite(LocalDate? day)
    {
        if (day is null)
        {
            throw new UsageException("--write needs the day on which the trunks are taken out: --on 2027-03-14.");
        }
    }

    /// <inheritdoc/>
    protected override (ImmutableArray<TextEdit> Edits, ImmutableArray<string> Told) Writing(Assessment planting, ThinningAnswer answer)
    {
        var best = answer.Suggestions.FirstOrDefault();
        ImmutableArray<TextEdit> edits = best is not null && planting.Date is { } day ? ThinningEdits.Of(planting.ToContext(), planting.Tree, best.Stand, day) : [];
        var left = best is null ? 0 : best.Stand.TakenOut.Length - edits.Length;
        var written = edits.IsEmpty ? "nothing was written" : edits.Length == 1 ? "1 trunk was written as taken out" : $"{edits.Length} trunks were written as taken out";

        // Each line ends with a full stop of its own.
        string[] unneeded = edits.IsEmpty ? [] : [.. ThinningWords.Unneeded(planting.Planting, best!.Stand).Select(said => said.TrimEnd('.'))];
        return (edits, left == 0 ? [.. unneeded, written] : [.. unneeded, $"{(left == 1 ? "1 trunk that goes was left alone, because its line" : $"{left} trunks that go were left alone, because their lines")} could not be read whole: put that right first", written]);
    }

    /// <inheritdoc/>
    protected override void WriteJson(IEnumerable<(Assessment Planting, ThinningAnswer Answer)> answers, FileRun run, SourceLibrary sources, Stream page) => ThinJson.Write(answers, sources, run.Troubles, page);

    /// <inheritdoc/>
    protected override void WriteText(Assessment planting, ThinningAnswer answer, UnitSystem units, TextWriter writer, int width, bool isColoured) => ThinText.Write(planting, answer, writer, width, isColoured);

    private static (int Least, int Most) ReadNumber(string? written) =>
        written is not null && WrittenRange.Read(written, ThinningWish.MostKept) is { } range ? range
            : throw new UsageException($"thin needs the number of trunks to keep, from 1 on: --keep 5, or a range such as --keep 5-7{(written is null ? "" : $"; “{HarmlessText.Shorten(HarmlessText.OneLine(written), 60)}” is neither")}.");
}
