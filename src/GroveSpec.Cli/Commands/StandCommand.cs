using System.CommandLine;
using GroveSpec.Binding;
using GroveSpec.Cli.Judging;
using GroveSpec.Cli.Reports;
using GroveSpec.Craft.Stand;
using GroveSpec.Drawing;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Commands;

/// <summary>Tells how natural spacing and sizes are.</summary>
internal sealed class StandCommand : PlantingCommand<StandDescription>
{
    /// <inheritdoc/>
    public override string Name => "stand";

    /// <inheritdoc/>
    public override string Purpose => "tells how natural spacing and sizes are, in forestry's numbers";

    /// <inheritdoc/>
    public override string Help => """
        grovespec stand FILE|FOLDER|- ...

        Tells how natural spacing and sizes are, in forestry's numbers: how far apart
        the trunks stand and how evenly all round, how neighbours differ, who stands
        over whom, and how the wood is shared. Each number stands beside what chance
        gives for as few trunks, and beside real stands. Where a number cannot be told
        from chance, that is said. Nothing here is a warning.

          grovespec stand salt-bank.grove
          grovespec stand salt-bank.grove --on 2030-05-01
          grovespec stand salt-bank.grove --picture stand.svg
          grovespec stand . --json --output stands.json

        --picture PATH   draws each number on its scale, beside chance and real stands:
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
    protected override string PictureWord => "stand";

    /// <inheritdoc/>
    protected override string Doing => "reading";

    /// <inheritdoc/>
    protected override Func<Assessment, StandDescription> ReadQuestion(ParseResult parsed, UnitSystem units) => planting => StandDescription.Of(planting.State);

    /// <inheritdoc/>
    protected override string Draw(Assessment planting, StandDescription answer, DrawingOptions options) => StandPlate.Draw(planting.State, answer, options);

    /// <inheritdoc/>
    protected override void WriteJson(IEnumerable<(Assessment Planting, StandDescription Answer)> answers, FileRun run, SourceLibrary sources, Stream page) => StandJson.Write(answers, run.Troubles, page);

    /// <inheritdoc/>
    protected override void WriteText(Assessment planting, StandDescription answer, UnitSystem units, TextWriter writer, int width, bool isColoured) => StandText.Write(planting, answer, units, writer, width, isColoured);
}
