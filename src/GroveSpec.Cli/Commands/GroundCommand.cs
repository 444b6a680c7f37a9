using System.Collections.Immutable;
using System.CommandLine;
using GroveSpec.Binding;
using GroveSpec.Checks.Ground;
using GroveSpec.Cli.Arguments;
using GroveSpec.Cli.Judging;
using GroveSpec.Cli.Reports;
using GroveSpec.Cli.Terminals;
using GroveSpec.Drawing;
using GroveSpec.LanguageServer;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Commands;

/// <summary>Finds free ground for one more trunk, or for one that stands.</summary>
internal sealed class GroundCommand : PlantingCommand<GroundAnswer>
{
    private readonly Option<string?> diameter = new("--diameter") { HelpName = "LENGTH" };
    private readonly Option<string?> height = new("--height") { HelpName = "LENGTH" };
    private readonly Option<string?> of = new("--of") { HelpName = "TRUNK" };

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
    protected override IReadOnlyList<Option> OwnOptions => [diameter, height, of];

    /// <inheritdoc/>
    protected override string WhatIsWritten => "spots";

    /// <inheritdoc/>
    protected override string PictureWord => "ground";

    /// <inheritdoc/>
    protected override string Doing => "looking for ground in";

    /// <inheritdoc/>
    protected override Func<Assessment, GroundAnswer> ReadQuestion(ParseResult parsed, UnitSystem units)
    {
        var wish = new GroundWish(SharedOptions.ReadLength("--diameter", parsed.GetValue(diameter), units), SharedOptions.ReadLength("--height", parsed.GetValue(height), units), parsed.GetValue(of) is { } name ? NameForm.Of(name.Trim()) : null);
        return wish is { Diameter: null, Of: null }
            ? throw new UsageException("ground needs the thickness of the trunk, --diameter 18mm, or the name of one of the planting, --of C.")
            : planting => GroundReview.Find(planting.ToContext(), planting.Tree, wish, AtOnce.Do);
    }

    /// <inheritdoc/>
    protected override string? ObstacleTo(GroundAnswer answer) => answer.Obstacle;

    /// <inheritdoc/>
    protected override bool IsMisasked(GroundAnswer answer) => answer.IsMisasked;

    /// <inheritdoc/>
    protected override string Draw(Assessment planting, GroundAnswer answer, DrawingOptions options) => GroundPlate.Draw(planting.State, answer, options);

    /// <inheritdoc/>
    protected override (ImmutableArray<TextEdit> Edits, ImmutableArray<string> Told) Writing(Assessment planting, GroundAnswer answer) =>
        answer.Obstacle is not null || answer.Spots.IsEmpty || !answer.Spots[0].Raises.IsEmpty || answer.Spots[0].Edits.IsEmpty
            ? ([], [$"nothing was written{(answer.Obstacle is null && answer.Outline.IsEmpty ? ", since no ground is free" : answer.IsTooNarrow ? ", since no free ground is wide enough to be set by hand" : "")}"])
            : (answer.Spots[0].Edits, [$"{HarmlessText.OneLine(answer.Trunk!.Name)} was written at the best spot"]);

    /// <inheritdoc/>
    protected override void WriteJson(IEnumerable<(Assessment Planting, GroundAnswer Answer)> answers, FileRun run, SourceLibrary sources, Stream page) => GroundJson.Write(answers, sources, run.Troubles, page);

    /// <inheritdoc/>
    protected override void WriteText(Assessment planting, GroundAnswer answer, UnitSystem units, TextWriter writer, int width, bool isColoured) => GroundText.Write(planting, answer, units, writer, width, isColoured);
}
