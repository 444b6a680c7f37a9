using System.Collections.Immutable;
using GroveSpec.Checks.Fronts;
using GroveSpec.Craft.Views;
using GroveSpec.Drawing.Front;
using GroveSpec.Drawing.Fronts;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing;

/// <summary>The best fronts of a planting side by side, the one it has now, and a dial of the score all round: an ink plate of 1,000 px width.</summary>
public static class FrontsPlate
{
    private const double PageWidth = 1000;
    private const double PanelTop = 102;
    private const double PictureHeight = 276;
    private const double PanelGap = 26;
    private const double PanelWidth = (PageWidth - (2 * Plate.Margin) - ((BestFronts.MostSuggestions - 1) * PanelGap)) / BestFronts.MostSuggestions;
    private const double RemarkSize = 13;
    private const double RemarkLine = 18;
    private const string Meaning = "The thicker the ring, the more is lost from there; heavy where a front holds; the eye is the front it has now.";
    private const string SomeNamed = "Where there is no room for all names, only trunks that the text tells of are named.";
    private const double DialX = 300;
    private const double NowLeft = 580;

    /// <summary>Draws the plate.</summary>
    /// <param name="state">The planting on its day.</param>
    /// <param name="answer">What was found for it, with no obstacle.</param>
    /// <param name="options">How it is drawn.</param>
    /// <returns>A whole SVG document, the same bytes for the same planting, answer and options. All fronts are drawn at one scale.</returns>
    public static string Draw(PlantingState state, FrontsAnswer answer, DrawingOptions options)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(options);
        var caption = answer.Suggestions.Select(suggestion => suggestion.Front).Concat(answer.Now is { } now ? [now] : []).Select(front => FrontPanel.CaptionHeightOf(Loses(front), PanelWidth)).DefaultIfEmpty(0).Max();
        var panelHeight = caption + PictureHeight;
        var dialY = PanelTop + panelHeight + 24 + ScoreDial.Reach;
        var panels = Panels(state, answer, dialY, caption);
        var notes = DrawnText.Wrapped(panels.TrueForAll(panel => panel.NamesAll) ? Meaning : $"{Meaning} {SomeNamed}", PageWidth - (2 * Plate.Margin), RemarkSize, Face.Italic);
        var noteTop = dialY + ScoreDial.Reach + 6;
        var keyTop = noteTop + 12 + (notes.Count * RemarkLine);
        var key = Plate.LayOutKey(PageWidth, options.TellsFindings ? answer.Suggestions.Select(suggestion => $"{suggestion.Why} {suggestion.Holds}") : []);
        var svg = new SvgWriter(1 << 17);
        var name = FrontWords.NameOf(state);
        var clean = DrawnText.Isolated(name);
        Plate.Open(svg, "fronts", PageWidth, keyTop + Plate.HeightOfKey(key) + 26, $"{clean}, its best fronts", Describe(answer, clean), FrontsStyle.Sheet(), options);
        Plate.WriteHeading(svg, PageWidth, name, state.Planting.Name?.Origin.Id, "The best fronts, and the score all round", options);
        foreach (var panel in panels)
        {
            panel.Write(svg, FrontScene.FullnessFor(state.Standing.Count()) * 0.5);
        }

        new ScoreDial(DialX, dialY, state, answer).Write(svg);
        for (var line = 0; line < notes.Count; line++)
        {
            svg.Text("gs-remark", Plate.Margin, noteTop + 12 + (line * RemarkLine), RemarkSize, notes[line]);
        }

        Plate.WriteKey(svg, keyTop, [.. Enumerable.Range(1, key.Count)], key, FrontsStyle.Mark);
        Plate.Close(svg);
        return svg.Finish();
    }

    /// <summary>Draws one front as large as the planting's own, with what it loses.</summary>
    /// <param name="state">The planting on its day.</param>
    /// <param name="front">The front.</param>
    /// <param name="options">How it is drawn.</param>
    /// <returns>A whole SVG document, as <see cref="FrontPlate.Draw"/> would draw it if the planting were viewed from there.</returns>
    public static string DrawOne(PlantingState state, Checks.Fronts.Front front, DrawingOptions options)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(front);
        return FrontPlate.Draw(new DrawingSubject(Turned(state, front), front.Findings), options);
    }

    private static List<FrontPanel> Panels(PlantingState state, FrontsAnswer answer, double dialY, double captionHeight)
    {
        var panelHeight = captionHeight + PictureHeight;
        var parts = new List<(Checks.Fronts.Front Front, Box Box, int? Number, ImmutableArray<string> Named)>();
        for (var place = 0; place < answer.Suggestions.Length; place++)
        {
            var left = Plate.Margin + (place * (PanelWidth + PanelGap));
            parts.Add((answer.Suggestions[place].Front, new Box(left, PanelTop, left + PanelWidth, PanelTop + panelHeight), place + 1, answer.Suggestions[place].Named));
        }

        if (answer.Now is { } now)
        {
            parts.Add((now, new Box(NowLeft, dialY - (panelHeight / 2), NowLeft + PanelWidth, dialY + (panelHeight / 2)), null, [.. now.Findings.SelectMany(finding => finding.Trunks).Distinct(StringComparer.Ordinal)]));
        }

        // One scale for all, so that a wider front is drawn wider.
        var states = parts.Select(part => Turned(state, part.Front)).ToList();
        var scale = parts.Zip(states, (part, turned) => FrontScene.Of(turned, FrontView.Of(turned), FrontPanel.RoomIn(part.Box, captionHeight)).Stage.Scale).Min();
        return [.. parts.Zip(states, (part, turned) => new FrontPanel(
            FrontScene.Of(turned, FrontView.Of(turned), FrontPanel.RoomIn(part.Box, captionHeight), scale),
            part.Box,
            part.Number,
            part.Number is null ? $"Now, from {Degrees(part.Front)}" : $"From {Degrees(part.Front)}",
            Loses(part.Front),
            part.Number is null ? state.Planting.Viewed?.Origin.Id : null,
            part.Named))];
    }

    private static PlantingState Turned(PlantingState state, Checks.Fronts.Front front) => state with
    {
        Planting = state.Planting with { Viewed = (state.Planting.Viewed ?? new Model.Views.Viewpoint { Origin = Model.Origin.Default }) with { From = front.From } },
    };

    private static string Degrees(Checks.Fronts.Front front) => DrawnLength.Plain(Math.Round(front.From.Degrees, 2) % 360, 2) + "°";

    private static string Loses(Checks.Fronts.Front front) => front.Found == 0
        ? "loses nothing"
        : "loses " + front.Kinds;

    private static string Describe(FrontsAnswer answer, string name) =>
        $"{name} seen from {string.Join(", ", answer.Suggestions.Select(suggestion => Degrees(suggestion.Front)))}"
        + (answer.Now is { } now ? $", and now from {Degrees(now)}." : ".");
}
