using GroveSpec.Checks.Standing;
using GroveSpec.Craft.Stand;
using GroveSpec.Drawing.Plan;
using GroveSpec.Drawing.Scene;
using GroveSpec.Drawing.Standing;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing;

/// <summary>How a planting stands in forestry's numbers, a row an index, beside what chance gives and real stands: an ink plate of 1,000 px width.</summary>
public static class StandPlate
{
    private const double RemarkSize = 13.5;
    private const double RemarkLine = 18;
    private const string Meaning = "A blade of grass is a hundredth of what chance gave for as many trunks; the heavy line under it is where nineteen of twenty tries fell. The diamond is this planting: filled where it can be told from chance, open where it cannot. Rings on the ground are real stands.";

    /// <summary>Draws the plate.</summary>
    /// <param name="state">The planting on its day.</param>
    /// <param name="described">How it stands.</param>
    /// <param name="options">How it is drawn.</param>
    /// <returns>A whole SVG document, the same bytes for the same planting, description and options; of fewer than two trunks it only says that there is nothing to tell yet.</returns>
    public static string Draw(PlantingState state, StandDescription described, DrawingOptions options)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(described);
        ArgumentNullException.ThrowIfNull(options);
        var hasNumbers = described.Stems.Length >= 2;
        StandRow[] rows = hasNumbers ? [.. described.Indices.Select(index => new StandRow(described, index.Kind, options.TellsFindings))] : [];
        var lead = hasNumbers && !options.TellsFindings ? [] : Wrapped(hasNumbers ? $"{StandWords.Nearest(described, options.Units)} {StandWords.Sum(described)}" : StandWords.TooFew);
        string[] said = options.TellsFindings ? [string.Join(' ', StandWords.LeftOut(described)), StandWords.Chance(described)] : [];
        var notes = Wrapped(string.Join(' ', said.Prepend(hasNumbers ? Meaning : "").Where(sentence => sentence.Length > 0)));
        var top = Plate.HeadingFoot + 18 + (lead.Count * RemarkLine) + 6;
        var height = top + rows.Sum(row => row.Height) + 12 + (notes.Count * RemarkLine) + 26;
        var svg = new SvgWriter(1 << 15);
        var name = PlanWords.Name(state.Planting);
        var clean = DrawnText.Isolated(name);
        var heading = StandWords.Heading(described);
        var told = string.Join(' ', described.Indices.Select(index => $"{StandWords.Heading(index.Kind)}: {StandWords.Tell(described, index.Kind)}"));
        Plate.Open(svg, "stand", PlanLayout.PageWidth, height, $"{clean}, {heading}", DrawnText.Clean($"{clean}, {heading}. {(hasNumbers ? told : StandWords.TooFew)}"), StandStyle.Sheet(), options);
        var day = state.Date is { } date ? $" · as of {PlanWords.Day(date)}" : "";
        Plate.WriteHeading(svg, PlanLayout.PageWidth, name, state.Planting.Name?.Origin.Id, $"{char.ToUpperInvariant(heading[0])}{heading[1..]} · beside chance and real stands{day}", options);
        Write(svg, lead, Plate.HeadingFoot + 18);
        foreach (var row in rows)
        {
            row.Write(svg, top);
            top += row.Height;
        }

        Write(svg, notes, top + 12);
        Plate.Close(svg);
        return svg.Finish();
    }

    private static List<string> Wrapped(string text) => DrawnText.Wrapped(DrawnText.Clean(text), PlanLayout.PageWidth - (2 * Plate.Margin), RemarkSize, Face.Italic);

    private static void Write(SvgWriter svg, List<string> lines, double top)
    {
        foreach (var line in lines)
        {
            svg.Text("gs-remark", Plate.Margin, top + RemarkSize, RemarkSize, line);
            top += RemarkLine;
        }
    }
}
