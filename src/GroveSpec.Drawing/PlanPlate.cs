using GroveSpec.Drawing.Plan;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing;

/// <summary>The planting from above, to scale, as an ink plate of 1,000 px width whose height follows what it holds.</summary>
public static class PlanPlate
{
    private const int MostNames = 60;
    private const int MostNamesOfMany = 40;

    /// <summary>Draws the plate.</summary>
    /// <param name="subject">What is drawn.</param>
    /// <param name="options">How.</param>
    /// <returns>
    /// A whole SVG document, the same bytes for the same subject and options. Trunks without a place are named below the plan;
    /// sizes that are not known are assumed by <see cref="Craft.Views.ShownSizes"/>, and an assumed crown is a broken line. A dot marks a trunk that stands where tape readings put it.
    /// Up to 60 trunks every name is written; beyond, those of the thickest for which there is room.
    /// </returns>
    public static string Draw(DrawingSubject subject, DrawingOptions options) => Write(subject, options, null).Finish();

    /// <summary>Draws the plate as it is stored in a file.</summary>
    /// <param name="subject">What is drawn.</param>
    /// <param name="options">How.</param>
    /// <returns>What <see cref="Draw"/> gives, in UTF-8 without a byte order mark.</returns>
    public static byte[] DrawBytes(DrawingSubject subject, DrawingOptions options) => Write(subject, options, null).FinishBytes();

    /// <summary>Writes the plate, with what a layer adds where one is given.</summary>
    internal static SvgWriter Write(DrawingSubject subject, DrawingOptions options, PlanLayer? layer)
    {
        var state = subject.State;
        var layout = PlanLayout.Of(state, options, layer);
        var marks = FindingMarks.Of(layout, subject.Findings);
        var numbers = marks.Select(mark => mark.Number).Distinct().ToList();
        var lead = Plate.LayOutKey(PlanLayout.PageWidth, options.TellsFindings ? layer?.Sentences ?? [] : []);
        var key = Plate.LayOutKey(PlanLayout.PageWidth, options.TellsFindings ? numbers.Select(number => subject.Findings[number - 1].Message) : []);
        var gaps = layer?.ShowsGaps == false ? [] : GapLines.Of(layout.Trunks, subject.Findings);
        var taped = layer is null ? TapedPlaces.Of(layout) : null;
        var notes = PlanNotes.Of(state, layout, gaps.Count > 0, options.Units, layer, taped?.Meaning);
        var footTop = layout.PlotBottom;
        var notesTop = footTop + 46;
        var keyTop = notesTop + PlanNotes.Height(notes);
        var height = keyTop + Plate.HeightOfKey(lead) + Plate.HeightOfKey(key) + 26;

        var svg = new SvgWriter(32768 + (layout.Trunks.Length * (layout.Detail == PlanDetail.Least ? 128 : 320)));
        var name = PlanWords.Name(state.Planting);
        Plate.Open(
            svg, "plan", PlanLayout.PageWidth, height, $"{DrawnText.Clean(name)}, {layer?.Title ?? "from above"}", layer?.Description ?? PlanWords.Description(subject, numbers, options.Units), layer?.Sheet() ?? PlanStyle.Sheet(taped?.HasDots == true), options);
        Plate.WriteHeading(svg, PlanLayout.PageWidth, name, state.Planting.Name?.Origin.Id, layer?.Remark ?? PlanWords.Remark(state), options);
        var labels = new PlanLabels(layout, gaps, marks, options.Units, layer);
        svg.CoarsePaths = true;
        Shore.WriteBed(svg, layout);
        WriteCrowns(svg, layout);
        layer?.WriteBelow(svg, layout);
        Shore.Write(svg, layout, state.Planting.Container?.Origin.Id, name);
        if (options.ShowBearings)
        {
            BearingDial.Write(svg, layout, labels.Placer);
        }

        var eye = ViewerEye.Of(layout, state.Planting, options.Units);
        layer?.Ask(labels.Placer, layout);
        labels.Find(eye, NamesShown(layout));
        labels.WriteGapLines(svg);
        foreach (var trunk in layout.Trunks)
        {
            TrunkDrawing.Write(svg, trunk, layout.Detail, layout.Detail == PlanDetail.Full ? PlanWords.Trunk(trunk.State, options.Units) : null);
        }

        taped?.Write(svg);
        svg.CoarsePaths = false;
        layer?.WriteAbove(svg, layout, labels);
        labels.WriteFindings(svg);
        eye.Write(svg);
        labels.WriteNames(svg);
        Plate.WriteScaleBar(svg, Plate.Margin, footTop + 6, 260, layout.Scale, options.Units);
        PlanNotes.Write(svg, notes, notesTop);
        Plate.WriteKey(svg, keyTop, [.. Enumerable.Range(1, lead.Count)], lead, layer?.Mark);
        Plate.WriteKey(svg, keyTop + Plate.HeightOfKey(lead), numbers, key);
        Plate.Close(svg);
        return svg;
    }

    private static void WriteCrowns(SvgWriter svg, PlanLayout layout)
    {
        foreach (var trunk in layout.Trunks.Where(trunk => trunk.CrownRadius > 0).OrderByDescending(trunk => trunk.CrownRadius))
        {
            TrunkDrawing.WriteCrown(svg, trunk, layout.Detail);
        }
    }

    // Of a wood only the thickest are named; OrderBy keeps the order of the file among equals.
    private static DrawnTrunk[] NamesShown(PlanLayout layout)
    {
        var thickestFirst = layout.Trunks.OrderByDescending(trunk => trunk.TrueRadius);
        return layout.Trunks.Length <= 2 * MostNames ? [.. thickestFirst] : [.. thickestFirst.Where(trunk => trunk.State.Presence == Presence.Standing).Take(MostNamesOfMany)];
    }
}
