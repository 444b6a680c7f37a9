using System.Collections.Immutable;
using GroveSpec.Checks;
using GroveSpec.Craft.Calendar;
using GroveSpec.Craft.Care;
using GroveSpec.Craft.Wire;
using GroveSpec.Drawing.Scene;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Wire;

/// <summary>Draws the sheet for the bench: each wired trunk with its turns, what to cut and when to look, what to buy, and the usual cautions.</summary>
public static class WirePlate
{
    private const double Width = 1000;
    private const double FigureWidth = 300;
    private const double LeastFigure = 280;
    private const double MostFigure = 420;
    private const double LabelWidth = 62;
    private const double TextSize = 13.5;
    private const double LineStep = 17.5;
    private const double TextLeft = Plate.Margin + FigureWidth + 24 + LabelWidth;

    /// <summary>Draws the sheet.</summary>
    /// <param name="subject">The planting on a day, and its findings; those that show the work of a wire are numbered beside it and told below.</param>
    /// <param name="options">How.</param>
    /// <returns>The SVG, the same for the same planting; a planting without wire gives a plate that says so.</returns>
    public static string Draw(DrawingSubject subject, DrawingOptions options)
    {
        var planting = subject.State.Planting;
        var plans = PlansOf(subject.State);
        ImmutableArray<Card> cards = [.. plans.Select(plan => Card.Of(plan, subject, options.Units))];
        var foot = Foot(plans, subject, options);
        var (numbers, key) = KeyOf(subject, plans, options);
        var top = Plate.HeadingFoot + 16;
        var cardsBottom = top + cards.Sum(card => card.Height);
        var footHeight = foot.Sum(line => line.Step);
        var height = Math.Ceiling(cardsBottom + footHeight + 14 + Plate.HeightOfKey(key) + 26);
        var name = planting.Name?.Value ?? "A planting without a name";
        var svg = new SvgWriter(8192 + (cards.Length * 16384));
        var remark = subject.State.Date is { } day ? $"its wire, for the bench, seen from {DayWords.Day(day)}" : "its wire, for the bench";
        Plate.Open(svg, "wiring", Width, height, $"{name}: its wire", Description(plans), WireStyle.Sheet(), options);
        Plate.WriteHeading(svg, Width, name, planting.Name?.Origin.Id, remark, options);
        for (var index = 0; index < cards.Length; index++)
        {
            if (index > 0)
            {
                svg.Line("gs-wr-parting", Plate.Margin, top - 4, Width - Plate.Margin, top - 4);
            }

            DrawCard(svg, cards[index], top, options.Units);
            top += cards[index].Height;
        }

        foreach (var line in foot)
        {
            top += line.Step;
            svg.Text(line.Class, Plate.Margin + line.Indent, top - 5, line.Size, line.Text);
        }

        Plate.WriteKey(svg, top + 14, numbers, key);
        Plate.Close(svg);
        return svg.Finish();
    }

    /// <summary>The trunks that the sheet shows.</summary>
    /// <param name="state">The planting on a day.</param>
    /// <returns>Their names.</returns>
    public static IReadOnlySet<string> TrunksOf(PlantingState state) => PlansOf(state).Select(plan => plan.Trunk.Name).ToHashSet(StringComparer.Ordinal);

    private static ImmutableArray<WirePlan> PlansOf(PlantingState state) => WirePlans.Of(state, WorkList.Of(state.Planting, TaskDates.Of(state.Planting)));

    private static string Description(ImmutableArray<WirePlan> plans)
    {
        const int MostNamed = 20;
        return plans.IsEmpty
            ? "No wire is planned."
            : string.Join(" ", plans.Take(MostNamed).Select(plan => $"{DrawnText.Isolated(plan.Trunk.Name)} by {DrawnText.Isolated(plan.Term.Wire.Dated.Task.Name)}{(plan.Winding is { } winding ? $": {LengthWording.Say(winding.Turns, 1)} turns" : "")}."))
                + (plans.Length > MostNamed ? $" And {plans.Length - MostNamed} more." : "");
    }

    private static void DrawCard(SvgWriter svg, Card card, double top, UnitSystem units)
    {
        var plan = card.Plan;
        svg.OpenGroup("gs-wr-card", plan.Term.Wire.Dated.Task.Origin.Id, $"{DrawnText.Isolated(plan.Trunk.Name)}, wired by {DrawnText.Isolated(plan.Term.Wire.Dated.Task.Name)}");
        var y = top + 20;
        var trunk = DrawnText.Shortened(DrawnText.Clean(plan.Trunk.Name), 200, 20, Face.Italic);
        svg.Text("gs-name", TextLeft, y, 20, trunk, origin: plan.Trunk.Trunk.Origin.Id);
        var x = TextLeft + TextMetrics.ReservedWidth(trunk, 20, Face.Italic) + 10;
        var task = DrawnText.Shortened(DrawnText.Clean(plan.Term.Wire.Dated.Task.Name), 200, TextSize);
        svg.Text("gs-number", x, y, TextSize, task);
        x += TextMetrics.ReservedWidth(task, TextSize) + 20;
        foreach (var number in card.Numbers)
        {
            Plate.WriteMark(svg, x, y - 5, number, null);
            x += (2 * Plate.RadiusOfMark(number)) + 6;
        }

        foreach (var (label, lines) in card.Lines)
        {
            y += 6;
            svg.Text("gs-wr-label", TextLeft - 12, y + LineStep, TextSize, label, TextAnchor.End);
            foreach (var line in lines)
            {
                y += LineStep;
                svg.Text("gs-wr-text", TextLeft, y, TextSize, line);
            }
        }

        if (plan.Winding is not null)
        {
            new WireFigure(plan, new Box(Plate.Margin, top + 4, Plate.Margin + FigureWidth, top + card.FigureHeight)).Draw(svg, units);
            var caption = plan.Bend is { } bend ? $"turned so that it bends to the right, toward {LengthWording.Say(bend.Stated.Toward.Degrees, 1)} deg" : "seen from the front";
            svg.Text("gs-remark", Plate.Margin + (FigureWidth / 2), top + card.FigureHeight + 2, Plate.SmallText, caption, TextAnchor.Middle);
        }

        svg.CloseGroup();
    }

    private static List<FootLine> Foot(ImmutableArray<WirePlan> plans, DrawingSubject subject, DrawingOptions options)
    {
        var lines = new List<FootLine>();
        if (plans.IsEmpty)
        {
            lines.Add(new("gs-key", "No wire is planned. A wire task says which trunk, when, and with what: task W1 wire on B in early autumn 2027 with aluminium 3 mm", 15, 30, 0));
            return lines;
        }

        var purchases = WirePurchase.Of(plans);
        Section("To buy", purchases.Select(purchase => WireWords.Buy(purchase, options.Units)), "nothing: all of it is on, or its length is not known");
        if (options.Heading is not null)
        {
            // The page that the sheet stands in has the cautions of all work.
            return lines;
        }

        Section("Before you start", WireWords.Cautions(subject.State.Planting, plans), "");
        return lines;

        void Section(string heading, IEnumerable<string> sentences, string otherwise)
        {
            lines.Add(new("gs-title", heading, 17, 34, 0));
            foreach (var sentence in sentences.DefaultIfEmpty(otherwise))
            {
                lines.AddRange(DrawnText.Wrapped(DrawnText.Clean(sentence), Width - (2 * Plate.Margin), TextSize).Select((line, index) => new FootLine("gs-key", line, TextSize, index == 0 ? LineStep + 4 : LineStep, 0)));
            }
        }
    }

    private static (List<int> Numbers, List<List<string>> Key) KeyOf(DrawingSubject subject, ImmutableArray<WirePlan> plans, DrawingOptions options)
    {
        var wires = plans.Select(plan => plan.Term.Wire.Dated.Task.Name).ToHashSet(StringComparer.Ordinal);
        var numbers = Enumerable.Range(0, subject.Findings.Length).Where(index => subject.Findings[index].Figures.OfType<Figure.Work>().Any(work => wires.Contains(work.Task))).ToList();
        return ([.. numbers.Select(index => index + 1)], options.TellsFindings ? Plate.LayOutKey(Width, numbers.Select(index => subject.Findings[index].Message)) : []);
    }

    private readonly record struct FootLine(string Class, string Text, double Size, double Step, double Indent);

    /// <summary>One trunk's part of the sheet.</summary>
    private sealed record Card(WirePlan Plan, ImmutableArray<(string Label, List<string> Lines)> Lines, ImmutableArray<int> Numbers, double FigureHeight, double Height)
    {
        public static Card Of(WirePlan plan, DrawingSubject subject, UnitSystem units)
        {
            var task = plan.Term.Wire.Dated.Task.Name;
            ImmutableArray<(string Label, List<string> Lines)> lines = [.. WireWords.Of(plan, units).Select(line => (line.Label, DrawnText.Wrapped(DrawnText.Clean(line.Text), Width - Plate.Margin - TextLeft, TextSize)))];
            var text = 30 + lines.Sum(line => (line.Lines.Count * LineStep) + 6);
            var numbers = Enumerable.Range(0, subject.Findings.Length)
                .Where(index => subject.Findings[index].Figures.OfType<Figure.Work>().Any(work => work.Task == task) && (subject.Findings[index].Trunks.IsEmpty || subject.Findings[index].Trunks.Contains(plan.Trunk.Name)))
                .Select(index => index + 1);
            var figure = Math.Clamp(text - 24, LeastFigure, MostFigure);
            return new Card(plan, lines, [.. numbers], figure, Math.Max(text, plan.Winding is null ? 0 : figure + 10) + 18);
        }
    }
}
