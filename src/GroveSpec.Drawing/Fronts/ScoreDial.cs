using GroveSpec.Checks.Fronts;
using GroveSpec.Craft.Containers;
using GroveSpec.Craft.Views;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Fronts;

/// <summary>A dial of the score all round: the planting from above in the middle, and about it a ring that is the thicker the more is lost from there.</summary>
internal sealed class ScoreDial
{
    /// <summary>How far it reaches from its middle, its words included.</summary>
    public const double Reach = 226;

    private const double PlanRadius = 74;
    private const double EyeRadius = 92;
    private const double MarkRadius = 116;
    private const double InnerRadius = 132;
    private const double OuterRadius = 190;
    private static readonly string[] Sides = ["0° back", "90° right", "180° front", "270° left"];

    private readonly double x;
    private readonly double y;
    private readonly PlantingState state;
    private readonly FrontsAnswer answer;
    private readonly double most;

    /// <summary>Lays the dial out.</summary>
    /// <param name="x">Its middle.</param>
    /// <param name="y">Its middle, downward.</param>
    /// <param name="state">The planting.</param>
    /// <param name="answer">What was found for it.</param>
    public ScoreDial(double x, double y, PlantingState state, FrontsAnswer answer)
    {
        (this.x, this.y, this.state, this.answer) = (x, y, state, answer);
        most = Math.Max(1, answer.Round.Max());
    }

    /// <summary>Writes it.</summary>
    /// <param name="svg">Where to.</param>
    public void Write(SvgWriter svg)
    {
        svg.OpenGroup("gs-score-dial");
        WritePlan(svg);
        WriteRing(svg);
        WriteBearings(svg);
        if (answer.Now is { } now)
        {
            Ray(svg, "gs-ray-now", now.From, EyeRadius + 8);
            WriteEye(svg, now.From);
        }

        svg.BeginPath("gs-hold");
        foreach (var suggestion in answer.Suggestions)
        {
            Arc(svg, suggestion.Front.Span);
        }

        svg.EndPath();
        for (var place = 0; place < answer.Suggestions.Length; place++)
        {
            var from = answer.Suggestions[place].Front.From;
            Ray(svg, "gs-ray", from, MarkRadius + 9);
            var (markX, markY) = At(from.Degrees, MarkRadius);
            Plate.WriteMark(svg, markX, markY, place + 1, null, FrontsStyle.Mark);
        }

        svg.CloseGroup();
    }

    private (double X, double Y) At(double degrees, double radius)
    {
        var (sine, cosine) = Math.SinCos(degrees * Math.PI / 180);
        return (x + (radius * sine), y - (radius * cosine));
    }

    /// <summary>The rim and the trunks where they stand, as large as there is room.</summary>
    private void WritePlan(SvgWriter svg)
    {
        var rim = state.Planting.Container is { } container ? ContainerOutline.Of(container).Points.Select(point => (X: point.X.Millimetres, Y: point.Y.Millimetres)).ToList() : [];
        var sizes = ShownSizes.For(state);
        var trunks = state.Standing.Select(trunk => (X: trunk.Place!.Value.X.Millimetres, Y: trunk.Place.Value.Y.Millimetres, Radius: sizes.Of(trunk).Diameter.Millimetres / 2, trunk.Trunk.Origin.Id)).ToList();
        var reach = rim.Select(point => Math.Sqrt((point.X * point.X) + (point.Y * point.Y)))
            .Concat(trunks.Select(trunk => Math.Sqrt((trunk.X * trunk.X) + (trunk.Y * trunk.Y)) + trunk.Radius))
            .Max();
        var scale = PlanRadius / Math.Max(reach, 1e-6);
        if (rim.Count > 0)
        {
            svg.BeginPath("gs-dial-rim", state.Planting.Container!.Origin.Id);
            svg.MoveTo(x + (rim[0].X * scale), y - (rim[0].Y * scale));
            foreach (var point in rim.Skip(1))
            {
                svg.LineTo(x + (point.X * scale), y - (point.Y * scale));
            }

            svg.ClosePath();
            svg.EndPath();
        }

        foreach (var trunk in trunks)
        {
            svg.Circle("gs-foot-dot", x + (trunk.X * scale), y - (trunk.Y * scale), Math.Max(trunk.Radius * scale, 1.4), trunk.Id);
        }
    }

    private void WriteRing(SvgWriter svg)
    {
        svg.Circle("gs-score-ring", x, y, OuterRadius);
        svg.BeginPath("gs-score");
        for (var place = 0; place < answer.Round.Length; place++)
        {
            var (toX, toY) = At((double)place / BestFronts.ToldInADegree, RadiusOf(answer.Round[place]));
            if (place == 0)
            {
                svg.MoveTo(toX, toY);
            }
            else
            {
                svg.LineTo(toX, toY);
            }
        }

        svg.ClosePath();
        svg.MoveTo(x, y - InnerRadius);
        svg.ArcTo(InnerRadius, false, false, x, y + InnerRadius);
        svg.ArcTo(InnerRadius, false, false, x, y - InnerRadius);
        svg.ClosePath();
        svg.EndPath();
    }

    private double RadiusOf(double score) => InnerRadius + ((OuterRadius - 4 - InnerRadius) * Math.Min(1, score / most));

    private void WriteBearings(SvgWriter svg)
    {
        svg.BeginPath("gs-score-ring");
        for (var bearing = 0; bearing < 360; bearing += 10)
        {
            var tick = bearing % 90 == 0 ? 9 : bearing % 30 == 0 ? 6 : 3;
            var (fromX, fromY) = At(bearing, OuterRadius);
            var (toX, toY) = At(bearing, OuterRadius + tick);
            svg.MoveTo(fromX, fromY);
            svg.LineTo(toX, toY);
        }

        svg.EndPath();
        for (var bearing = 0; bearing < 360; bearing += 30)
        {
            var text = bearing % 90 == 0 ? Sides[bearing / 90] : $"{bearing}°";
            var width = TextMetrics.ReservedWidth(text, Plate.SmallText);
            var place = LabelRequest.Beside(x, y, OuterRadius + 11, (bearing - 90) * Math.PI / 180, width, 15, 0);
            svg.Text("gs-number", place.CentreX, place.CentreY + 4, Plate.SmallText, text, TextAnchor.Middle);
        }
    }

    private void Ray(SvgWriter svg, string cls, Bearing from, double begin)
    {
        var (fromX, fromY) = At(from.Degrees, begin);
        var (toX, toY) = At(from.Degrees, OuterRadius);
        svg.Line(cls, fromX, fromY, toX, toY);
    }

    private void Arc(SvgWriter svg, FrontSpan span)
    {
        const double Step = 60;
        var degrees = span.From.Degrees;
        var rest = Math.Max(span.Width.Degrees, 0.4);
        var (fromX, fromY) = At(degrees, InnerRadius);
        svg.MoveTo(fromX, fromY);
        while (rest > 0)
        {
            degrees += Math.Min(Step, rest);
            rest -= Step;
            var (toX, toY) = At(degrees, InnerRadius);
            svg.ArcTo(InnerRadius, false, true, toX, toY);
        }
    }

    private void WriteEye(SvgWriter svg, Bearing from)
    {
        const double HalfWidth = 12, HalfHeight = 4.6;
        var (eyeX, eyeY) = At(from.Degrees, EyeRadius);
        svg.BeginPath("gs-eye");
        svg.MoveTo(eyeX - HalfWidth, eyeY);
        svg.CurveTo(eyeX - (HalfWidth * 0.45), eyeY - (HalfHeight * 1.5), eyeX + (HalfWidth * 0.45), eyeY - (HalfHeight * 1.5), eyeX + HalfWidth, eyeY);
        svg.CurveTo(eyeX + (HalfWidth * 0.5), eyeY + HalfHeight, eyeX - (HalfWidth * 0.5), eyeY + HalfHeight, eyeX - HalfWidth, eyeY);
        svg.ClosePath();
        svg.EndPath();
        svg.Circle("gs-pupil", eyeX, eyeY - 0.6, 2.6);
    }
}
