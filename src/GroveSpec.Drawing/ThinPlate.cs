using GroveSpec.Checks.Choosing;
using GroveSpec.Drawing.Plan;
using GroveSpec.Drawing.Scene;
using GroveSpec.Drawing.Thin;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing;

/// <summary>Which trunks to keep: the plan of one choice, or small plans of the best few, as an ink plate of 1,000 px width.</summary>
public static class ThinPlate
{
    private const double PanelTop = 102;
    private const double PanelGap = 26;
    private const double LowestPanel = 120;
    private const double TallestPanel = 460;
    private const double WidestPanel = 560;
    private const double TallestPanelOfMany = 420;
    private const double NameSize = 12;
    private const double NameSizeOfMany = 14;
    private const int MostSideBySide = 12;
    private const double RemarkSize = 13.5;
    private const double RemarkLine = 18;

    /// <summary>Draws the plan of one choice: those that stay as the plan draws them, with what the checks then find; those that go as broken rings with a cross.</summary>
    /// <param name="state">The planting on its day, which the choice was made in.</param>
    /// <param name="suggestion">The choice.</param>
    /// <param name="options">How it is drawn.</param>
    /// <returns>A whole SVG document, the same bytes for the same planting, choice and options.</returns>
    public static string Draw(PlantingState state, ThinningSuggestion suggestion, DrawingOptions options)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(suggestion);
        ArgumentNullException.ThrowIfNull(options);
        return PlanPlate.Write(new DrawingSubject(suggestion.Stand.State, suggestion.Stand.Findings), options, new ThinLayer(state, suggestion)).Finish();
    }

    /// <summary>Draws the best choices side by side, those of more than twelve trunks one below the other, at one scale, with what is to be said of each.</summary>
    /// <param name="state">The planting on its day, which was chosen in.</param>
    /// <param name="answer">What was found for it, with no obstacle.</param>
    /// <param name="options">How it is drawn.</param>
    /// <returns>A whole SVG document, the same bytes for the same planting, answer and options. Every name is written, of more than sixty those for which there is room.</returns>
    public static string DrawAll(PlantingState state, ThinningAnswer answer, DrawingOptions options)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(options);
        var boxes = Panels(state, answer, options, out var captionHeight, out var nameSize);
        var footTop = boxes.Count > 0 ? boxes[^1].Bottom : PanelTop;
        var whole = PlanLayout.Of(state, options);
        var viewer = string.Join(" ", ViewerEye.Of(whole, state.Planting, options.Units).Caption);
        var note = DrawnText.Clean(string.Join(" ", new[] { ThinLayer.Meaning, PlanNotes.OfLeans(whole) ?? "", ThinningWords.NotWeighed(answer) }.Where(said => said.Length > 0)));
        var notes = DrawnText.Wrapped(note, PlanLayout.PageWidth - (2 * Plate.Margin), RemarkSize, Face.Italic);
        var keyTop = footTop + 46 + (notes.Count * RemarkLine) + 10;
        var key = Plate.LayOutKey(PlanLayout.PageWidth, options.TellsFindings ? answer.Suggestions.Select(Sentence) : []);
        var svg = new SvgWriter(1 << 17);
        var name = PlanWords.Name(state.Planting);
        var clean = DrawnText.Isolated(name);
        var described = string.Join(" ", answer.Suggestions.Select((suggestion, place) => $"{place + 1}: {DrawnText.Clean(ThinningWords.Order(suggestion.Stand))}"));
        Plate.Open(svg, "thin", PlanLayout.PageWidth, keyTop + Plate.HeightOfKey(key) + 26, $"{clean}, which trunks to keep", $"{clean}, the best choices from above. {described}".TrimEnd(), ThinStyle.Sheet(), options);
        Plate.WriteHeading(svg, PlanLayout.PageWidth, name, state.Planting.Name?.Origin.Id, $"Which trunks to keep · from above, {viewer}", options);
        for (var place = 0; place < answer.Suggestions.Length; place++)
        {
            new ThinPanel(boxes[place], state, answer.Suggestions[place].Stand, place + 1, captionHeight, nameSize).Write(svg, name);
        }

        var scale = boxes.Count > 0 ? PlanLayout.Within(state, PlanRoom(boxes[0], captionHeight), state).Scale : 1;
        Plate.WriteScaleBar(svg, Plate.Margin, footTop + 12, Math.Min(260, boxes.Count > 0 ? boxes[0].Width * 0.6 : 260), scale, options.Units);
        for (var line = 0; line < notes.Count; line++)
        {
            svg.Text("gs-remark", Plate.Margin, footTop + 46 + 13 + (line * RemarkLine), RemarkSize, notes[line]);
        }

        Plate.WriteKey(svg, keyTop, [.. Enumerable.Range(1, key.Count)], key, ThinStyle.Mark);
        Plate.Close(svg);
        return svg.Finish();
    }

    /// <summary>Side by side; of many trunks one below the other, so that every name has its room.</summary>
    private static List<Box> Panels(PlantingState state, ThinningAnswer answer, DrawingOptions options, out double captionHeight, out double nameSize)
    {
        const double PageRoom = PlanLayout.PageWidth - (2 * Plate.Margin);
        var isOfMany = state.Trunks.Count(trunk => trunk.Presence == Presence.Standing) > MostSideBySide;
        var across = isOfMany ? 1 : Math.Max(1, answer.Suggestions.Length);
        var width = isOfMany ? PageRoom : Math.Min(WidestPanel, (PageRoom - ((across - 1) * PanelGap)) / across);
        var extents = PlanLayout.Of(state, options with { ShowBearings = false }).Extents;
        var caption = answer.Suggestions.Select(suggestion => ThinPanel.CaptionHeightOf(suggestion.Stand, width)).DefaultIfEmpty(0).Max();
        var height = caption + Math.Clamp((width - (2 * ThinPanel.Edge)) * extents.Height / extents.Width, LowestPanel, isOfMany ? TallestPanelOfMany : TallestPanel) + (2 * ThinPanel.Edge);
        (captionHeight, nameSize) = (caption, isOfMany ? NameSizeOfMany : NameSize);
        return [.. Enumerable.Range(0, answer.Suggestions.Length).Select(place =>
        {
            var (left, top) = (Plate.Margin + (place % across * (width + PanelGap)), PanelTop + (place / across * (height + PanelGap)));
            return new Box(left, top, left + width, top + height);
        })];
    }

    private static Box PlanRoom(Box panel, double captionHeight) => (panel with { Top = panel.Top + captionHeight }).Grown(-ThinPanel.Edge);

    private static string Sentence(ThinningSuggestion suggestion) => $"{ThinningWords.Order(suggestion.Stand)} {suggestion.Why} {ThinningWords.NearlyAsGood(suggestion)}".TrimEnd();
}
