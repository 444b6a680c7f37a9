using System.Globalization;
using System.Text;
using GroveSpec.Checks;
using GroveSpec.Craft.Containers;
using GroveSpec.Craft.Views;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing;

/// <summary>
/// Draws in a few strokes what a finding is about, small enough to stand in a note: from above, or from the front where that is what
/// was found. It stands on any ground, light or dark, and so has no colour of its own behind it, and tells by stroke as well as by colour.
/// </summary>
public static class CheckSketch
{
    private const double Width = 240;
    private const double Height = 150;
    private const double Margin = 12;
    private const string Ink = "#76836a";
    private const string Marked = "#c4582f";

    /// <summary>Draws a finding.</summary>
    /// <param name="state">The planting on its day.</param>
    /// <param name="finding">The finding.</param>
    /// <returns>A whole SVG document of 240 by 150 px; the same bytes for the same planting. Null where no trunk stands.</returns>
    public static string? Draw(PlantingState state, Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        TrunkState[] standing = [.. state.Standing];
        if (standing.Length == 0)
        {
            return null;
        }

        var svg = new StringBuilder(string.Create(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{Width}\" height=\"{Height}\" viewBox=\"0 0 {Width} {Height}\" fill=\"none\" stroke-linecap=\"round\">"));
        if (IsSeenFromTheFront(finding))
        {
            DrawFront(svg, state, finding);
        }
        else
        {
            DrawPlan(svg, state, standing, finding);
        }

        return svg.Append("</svg>").ToString();
    }

    private static bool IsSeenFromTheFront(Finding finding) =>
        finding.Check.Name is "hidden-trunk" or "depth-reversed" or "twin-heights" or "wide-but-short" or "thin-but-tall" || finding.Figures.Any(figure => figure is Figure.GapInView or Figure.Tops);

    private static void DrawPlan(StringBuilder svg, PlantingState state, TrunkState[] standing, Finding finding)
    {
        (double X, double Y)[] rim = state.Planting.Container is { } container ? [.. ContainerOutline.Of(container).Points.Select(Millimetres)] : [];
        var all = standing.Select(trunk => Millimetres(trunk.Place!.Value)).Concat(rim).ToArray();
        var fit = Fit.Of(all.Min(point => point.X) - 10, all.Max(point => point.X) + 10, all.Min(point => point.Y) - 10, all.Max(point => point.Y) + 10);
        if (rim.Length > 0)
        {
            svg.Append($"<path stroke=\"{Ink}\" stroke-width=\"1\" d=\"M").AppendJoin(" L", rim.Select(point => $"{Number(fit.X(point.X))} {Number(fit.Y(point.Y))}")).Append(" Z\"/>");
        }

        foreach (var trunk in standing)
        {
            var (x, y) = Millimetres(trunk.Place!.Value);
            var radius = Math.Max(2.5, (trunk.Diameter?.Value.Millimetres ?? 0) / 2 * fit.Scale);
            svg.Append($"<circle cx=\"{Number(fit.X(x))}\" cy=\"{Number(fit.Y(y))}\" r=\"{Number(radius)}\" ");
            svg.Append(IsMarked(finding, trunk.Name) ? $"fill=\"{Marked}\" fill-opacity=\"0.35\" stroke=\"{Marked}\" stroke-width=\"1.8\"/>" : $"fill=\"{Ink}\"/>");
        }

        foreach (var figure in finding.Figures)
        {
            switch (figure)
            {
                case Figure.Rod rod:
                    Between(Millimetres(rod.From), Millimetres(rod.To), 0.12);
                    break;
                case Figure.Gap gap:
                    Between(Foot(standing, gap.From), Foot(standing, gap.To), 0);
                    break;
                default:
                    break;
            }
        }

        void Between((double X, double Y) from, (double X, double Y) to, double beyond)
        {
            double alongX = (to.X - from.X) * beyond, alongY = (to.Y - from.Y) * beyond;
            Line(svg, fit.X(from.X - alongX), fit.Y(from.Y - alongY), fit.X(to.X + alongX), fit.Y(to.Y + alongY));
        }
    }

    private static void DrawFront(StringBuilder svg, PlantingState state, Finding finding)
    {
        var view = FrontView.Of(state);
        if (view.Trunks.IsEmpty)
        {
            return;
        }

        var tallest = view.Trunks.Max(trunk => trunk.Top?.Up.Millimetres ?? 0);
        var fit = Fit.Of(view.Trunks.Min(trunk => trunk.Cover.Left.Millimetres) - 15, view.Trunks.Max(trunk => trunk.Cover.Right.Millimetres) + 15, -10, Math.Max(tallest, 40) * 1.06);
        Stroke(svg, Ink, 1, $"M{Number(Margin)} {Number(fit.Y(0))} H{Number(Width - Margin)}");
        foreach (var trunk in view.Trunks.OrderByDescending(trunk => trunk.Nearness))
        {
            var isMarked = IsMarked(finding, trunk.Name);
            var (left, right, foot) = (fit.X(trunk.Cover.Left.Millimetres), fit.X(trunk.Cover.Right.Millimetres), fit.Y(trunk.Foot.Up.Millimetres));
            var (topX, topY) = trunk.Top is { } top ? (fit.X(top.Across.Millimetres), fit.Y(top.Up.Millimetres)) : ((left + right) / 2, foot - 20);
            svg.Append($"<path d=\"M{Number(left)} {Number(foot)} L{Number(topX)} {Number(topY)} L{Number(right)} {Number(foot)} Z\" stroke-width=\"{(isMarked ? "1.8" : "0.8")}\" ");
            svg.Append(isMarked ? $"fill=\"{Marked}\" fill-opacity=\"0.35\" stroke=\"{Marked}\"/>" : $"fill=\"{Ink}\" fill-opacity=\"0.7\" stroke=\"{Ink}\"/>");
        }

        foreach (var figure in finding.Figures)
        {
            if (figure is Figure.Tops tops && Top(view, tops.From) is { } one && Top(view, tops.To) is { } other)
            {
                Line(svg, fit.X(one.Across), fit.Y(one.Up), fit.X(other.Across), fit.Y(other.Up));
            }
            else if (figure is Figure.GapInView gap && view.Trunks.FirstOrDefault(trunk => trunk.Name == gap.From) is { } from && view.Trunks.FirstOrDefault(trunk => trunk.Name == gap.To) is { } to)
            {
                var y = Height - 6;
                var (start, end) = (fit.X(from.Foot.Across.Millimetres), fit.X(to.Foot.Across.Millimetres));
                Stroke(svg, Marked, 1.6, $"M{Number(start)} {Number(y - 4)} V{Number(y)} H{Number(end)} V{Number(y - 4)}");
            }
        }
    }

    /// <summary>What is about no trunk is about all.</summary>
    private static bool IsMarked(Finding finding, string trunk) => finding.Trunks.IsEmpty || finding.Trunks.Contains(trunk);

    private static (double Across, double Up)? Top(FrontView view, string name) =>
        view.Trunks.FirstOrDefault(trunk => trunk.Name == name)?.Top is { } top ? (top.Across.Millimetres, top.Up.Millimetres) : null;

    private static (double X, double Y) Foot(TrunkState[] standing, string name) =>
        standing.FirstOrDefault(trunk => trunk.Name == name)?.Place is { } place ? Millimetres(place) : default;

    private static (double X, double Y) Millimetres(PlanPoint point) => (point.X.Millimetres, point.Y.Millimetres);

    private static void Line(StringBuilder svg, double fromX, double fromY, double toX, double toY) =>
        svg.Append($"<path stroke=\"{Marked}\" stroke-width=\"1.6\" stroke-dasharray=\"6 4\" d=\"M{Number(fromX)} {Number(fromY)} L{Number(toX)} {Number(toY)}\"/>");

    private static void Stroke(StringBuilder svg, string colour, double width, string path) => svg.Append($"<path stroke=\"{colour}\" stroke-width=\"{Number(width)}\" d=\"{path}\"/>");

    private static string Number(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>A picture of millimetres set into the sketch.</summary>
    private readonly record struct Fit(double Scale, double Left, double Bottom)
    {
        public static Fit Of(double left, double right, double bottom, double top)
        {
            var scale = Math.Min((Width - (2 * Margin)) / Math.Max(1, right - left), (Height - (2 * Margin)) / Math.Max(1, top - bottom));
            return new(scale, (Width / 2) - ((left + right) / 2 * scale), (Height / 2) + ((bottom + top) / 2 * scale));
        }

        public double X(double millimetres) => Left + (millimetres * Scale);

        public double Y(double millimetres) => Bottom - (millimetres * Scale);
    }
}
