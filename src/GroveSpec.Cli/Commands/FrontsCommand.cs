using System.Collections.Immutable;
using System.CommandLine;
using GroveSpec.Binding;
using GroveSpec.Checks.Fronts;
using GroveSpec.Cli.Judging;
using GroveSpec.Cli.Reports;
using GroveSpec.Drawing;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Commands;

/// <summary>Finds the bearings from which plantings are best seen.</summary>
internal sealed class FrontsCommand : PlantingCommand<FrontsAnswer>
{
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
    protected override string WhatIsWritten => "fronts";

    /// <inheritdoc/>
    protected override string PictureWord => "fronts";

    /// <inheritdoc/>
    protected override string Doing => "turning";

    /// <inheritdoc/>
    protected override Func<Assessment, FrontsAnswer> ReadQuestion(ParseResult parsed, UnitSystem units) => planting => BestFronts.Find(planting.ToContext(), planting.Tree);

    /// <inheritdoc/>
    protected override string? ObstacleTo(FrontsAnswer answer) => answer.Obstacle;

    /// <inheritdoc/>
    protected override string Draw(Assessment planting, FrontsAnswer answer, DrawingOptions options) => FrontsPlate.Draw(planting.State, answer, options);

    /// <inheritdoc/>
    protected override (ImmutableArray<TextEdit> Edits, ImmutableArray<string> Told) Writing(Assessment planting, FrontsAnswer answer)
    {
        var best = answer.Suggestions.FirstOrDefault();
        return best is null ? ([], ["no front was written, since there is none to suggest"])
            : best.Edits.IsEmpty ? ([], ["no front was written, since the file's own \"viewed\" could not be read whole, so put that right first"])
            : best.Front.From == planting.Planting.Viewed?.From ? ([], ["no front was written, since the best front is the one it has"])
            : (best.Edits, [$"the best front was written, viewed from {FrontSentences.Say(best.Front.From)}"]);
    }

    /// <inheritdoc/>
    protected override void WriteJson(IEnumerable<(Assessment Planting, FrontsAnswer Answer)> answers, FileRun run, SourceLibrary sources, Stream page) => FrontsJson.Write(answers, sources, run.Troubles, page);

    /// <inheritdoc/>
    protected override void WriteText(Assessment planting, FrontsAnswer answer, UnitSystem units, TextWriter writer, int width, bool isColoured) => FrontsText.Write(planting, answer, writer, width, isColoured);
}
