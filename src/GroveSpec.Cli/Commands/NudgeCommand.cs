using System.Collections.Immutable;
using System.CommandLine;
using GroveSpec.Binding;
using GroveSpec.Checks.Nudging;
using GroveSpec.Cli.Arguments;
using GroveSpec.Cli.Judging;
using GroveSpec.Cli.Reports;
using GroveSpec.Cli.Terminals;
using GroveSpec.Drawing;
using GroveSpec.LanguageServer;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Commands;

/// <summary>Finds the smallest moves that clear the findings.</summary>
internal sealed class NudgeCommand : PlantingCommand<NudgeAnswer>
{
    private readonly Option<string?> reach = new("--reach") { HelpName = "LENGTH" };
    private readonly Option<string?> bend = new("--bend") { HelpName = "DEGREES" };
    private readonly Option<string?> step = new("--step") { HelpName = "LENGTH" };

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
    protected override IReadOnlyList<Option> OwnOptions => [reach, bend, step];

    /// <inheritdoc/>
    protected override string WhatIsWritten => "moves";

    /// <inheritdoc/>
    protected override string PictureWord => "moves";

    /// <inheritdoc/>
    protected override string Doing => "looking for moves in";

    /// <inheritdoc/>
    protected override Func<Assessment, NudgeAnswer> ReadQuestion(ParseResult parsed, UnitSystem units)
    {
        var usual = NudgeWish.Usual(units);
        var wish = new NudgeWish(
            SharedOptions.ReadLength("--reach", parsed.GetValue(reach), units) ?? usual.Reach,
            SharedOptions.ReadAngle("--bend", parsed.GetValue(bend), NudgeWish.SteepestBend) ?? usual.Bend,
            SharedOptions.ReadLength("--step", parsed.GetValue(step), units) ?? usual.Step);
        return planting => Nudging.Find(planting.ToContext(), planting.Tree, wish, AtOnce.Do);
    }

    /// <inheritdoc/>
    protected override string? ObstacleTo(NudgeAnswer answer) => answer.Obstacle;

    /// <inheritdoc/>
    protected override string Draw(Assessment planting, NudgeAnswer answer, DrawingOptions options) => NudgePlate.Draw(planting.State, answer.Suggestions[0], options);

    /// <inheritdoc/>
    protected override (ImmutableArray<TextEdit> Edits, ImmutableArray<string> Told) Writing(Assessment planting, NudgeAnswer answer) =>
        answer.Suggestions.FirstOrDefault() is not { } best ? ([], ["nothing was written"])
            : (best.Edits, [best.Moves.Length == 1 ? $"the move of {HarmlessText.OneLine(best.Moves[0].Name)} was written" : $"the moves of {best.Moves.Length} trunks were written"]);

    /// <inheritdoc/>
    protected override void WriteJson(IEnumerable<(Assessment Planting, NudgeAnswer Answer)> answers, FileRun run, SourceLibrary sources, Stream page) => NudgeJson.Write(answers, sources, run.Troubles, page);

    /// <inheritdoc/>
    protected override void WriteText(Assessment planting, NudgeAnswer answer, UnitSystem units, TextWriter writer, int width, bool isColoured) => NudgeText.Write(planting, answer, units, writer, width, isColoured);
}
