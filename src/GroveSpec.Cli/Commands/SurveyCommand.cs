using System.Collections.Immutable;
using System.CommandLine;
using GroveSpec.Binding;
using GroveSpec.Checks.Moving;
using GroveSpec.Cli.Judging;
using GroveSpec.Cli.Reports;
using GroveSpec.Craft.Survey;
using GroveSpec.Drawing;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Commands;

/// <summary>Finds where trunks stand from tape readings.</summary>
internal sealed class SurveyCommand : PlantingCommand<TapeSurvey>
{
    private readonly Option<bool> mirrored = new("--mirrored");

    /// <inheritdoc/>
    public override string Name => "survey";

    /// <inheritdoc/>
    public override string Purpose => "finds where trunks stand from tape readings";

    /// <inheritdoc/>
    public override string Help => """
        grovespec survey FILE|FOLDER|- ...

        Finds where trunks stand from tape readings, centre to centre or between bark,
        all of them together; trunks with an "at" stay where they are. Tells how sure
        each place is, which reading does not fit, what is still free, and which reading
        to take next.

          grovespec survey salt-bank.grove
          grovespec survey salt-bank.grove --write      writes the places into the file
          grovespec survey salt-bank.grove --picture survey.svg
          grovespec survey . --json --output places.json

        --write          writes an "at" for each trunk whose place is found, and touches
                         nothing else; what may be its mirror image, or hangs on a
                         reading that may be off, is left alone
        --mirrored       where the file gives no trunk a place: the other way round
        --picture PATH   draws the places, how sure they are, and the readings on the plan:
                         a file that ends in .svg, .png or .pdf, or a folder for several
        --json           writes for programs
        --output PATH    writes to a file instead of standard output
        --on DATE        the day whose thicknesses count, for readings between bark
        --units WHICH    metric or inch
        --strict         warnings of the file fail the run as errors do
        --help           this page

        """;

    /// <inheritdoc/>
    protected override IReadOnlyList<Option> OwnOptions => [mirrored];

    /// <inheritdoc/>
    protected override string WhatIsWritten => "places";

    /// <inheritdoc/>
    protected override string PictureWord => "survey";

    /// <inheritdoc/>
    protected override string Doing => "surveying";

    /// <inheritdoc/>
    protected override Func<Assessment, TapeSurvey> ReadQuestion(ParseResult parsed, UnitSystem units)
    {
        var isTurnedOver = parsed.GetValue(mirrored);
        return planting => TapeSurvey.Of(planting.State, isTurnedOver);
    }

    /// <inheritdoc/>
    protected override string Draw(Assessment planting, TapeSurvey answer, DrawingOptions options) => SurveyPlate.Draw(planting.State, answer, options);

    /// <inheritdoc/>
    protected override (ImmutableArray<TextEdit> Edits, ImmutableArray<string> Told) Writing(Assessment planting, TapeSurvey answer)
    {
        var edits = SurveyedPlaces.Edits(answer, planting.Tree, planting.Origins, planting.Units);
        return (edits, [edits.Length == 0 ? "no place was written" : edits.Length == 1 ? "the place of 1 trunk was written" : $"the places of {edits.Length} trunks were written"]);
    }

    /// <inheritdoc/>
    protected override bool IsAnswered(Assessment planting) => !planting.Planting.Trunks.IsEmpty;

    /// <inheritdoc/>
    protected override void WriteJson(IEnumerable<(Assessment Planting, TapeSurvey Answer)> answers, FileRun run, SourceLibrary sources, Stream page) => SurveyJson.Write(answers, run.Troubles, page);

    /// <inheritdoc/>
    protected override void WriteText(Assessment planting, TapeSurvey answer, UnitSystem units, TextWriter writer, int width, bool isColoured) => SurveyText.Write(planting, answer, units, writer, width, isColoured);
}
