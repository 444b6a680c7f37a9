using GroveSpec.Checks.Choosing;
using GroveSpec.Drawing.Plan;
using GroveSpec.Drawing.Scene;
using GroveSpec.Drawing.Thin;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing;

/// <summary>Which trunks to keep: the plan of one choice, or small plans of the best few side by side, as an ink plate of 1,000 px width.</summary>
public static class ThinPlate
{
    private const double PanelTop = 102;
    private const double PanelGap = 26;
    private const double LowestPanel = 120;
    private const double TallestPanel = 460;
    private const double WidestPanel = 560;
    private const double RemarkSize = 13.5;
    private const double RemarkLine = 18;
    private const int LongestSentence = 520;

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

    /// <summary>Draws the best choices side by side, at one scale, with a sentence for each.</summary>
    /// <param name="state">The planting on its day, which was chosen in.</param>
    /// <param name="answer">What was found for it, with no obstacle.</param>
    /// <param name="options">How it is drawn.</param>
    /// <returns>A whole SVG document, the same bytes for the same planting, answer and options. Names are written where there is room for them.</returns>
    public static string DrawAll(PlantingState state, ThinningAnswer answer, DrawingOptions options)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(options);
        var count = Math.Max(1, answer.Suggestions.Length);
        var whole = PlanLayout.Of(state, options with { ShowBearings = false });
        var width = Math.Min(WidestPanel, (PlanLayout.PageWidth - (2 * Plate.Margin) - ((count - 1) * PanelGap)) / count);
        var shape = whole.Extents.Height / whole.Extents.Width;
        var height = ThinPanel.CaptionHeight + Math.Clamp((width - (2 * ThinPanel.Edge)) * shape, LowestPanel, TallestPanel) + (2 * ThinPanel.Edge);
        var footTop = PanelTop + height;
        var viewer = string.Join(" ", ViewerEye.Of(whole, state.Planting, options.Units).Caption);
        var note = DrawnText.Clean(string.Join(" ", new[] { ThinLayer.Meaning, ThinningWords.NotWeighed(answer) }.Where(said => said.Length > 0)));
        var notes = DrawnText.Wrapped(note, PlanLayout.PageWidth - (2 * Plate.Margin), RemarkSize, Face.Italic, 4);
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
            var left = Plate.Margin + (place * (width + PanelGap));
            new ThinPanel(new Box(left, PanelTop, left + width, footTop), state, answer.Suggestions[place].Stand, place + 1).Write(svg, name);
        }

        var scale = PlanLayout.Within(state, new Box(0, 0, width, height - ThinPanel.CaptionHeight).Grown(-ThinPanel.Edge), state).Scale;
        Plate.WriteScaleBar(svg, Plate.Margin, footTop + 12, Math.Min(260, width * 0.6), scale, options.Units);
        for (var line = 0; line < notes.Count; line++)
        {
            svg.Text("gs-remark", Plate.Margin, footTop + 46 + 13 + (line * RemarkLine), RemarkSize, notes[line]);
        }

        Plate.WriteKey(svg, keyTop, [.. Enumerable.Range(1, key.Count)], key, ThinStyle.Mark);
        Plate.Close(svg);
        return svg.Finish();
    }

    /// <summary>What comes to nearly the same is told where there is room for it; which trunks go has to be told whole.</summary>
    private static string Sentence(ThinningSuggestion suggestion)
    {
        var told = $"{ThinningWords.Order(suggestion.Stand)} {suggestion.Why}";
        var besides = ThinningWords.NearlyAsGood(suggestion);
        return told.Length + besides.Length > LongestSentence ? told : $"{told} {besides}".TrimEnd();
    }
}
