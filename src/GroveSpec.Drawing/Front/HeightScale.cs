using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Drawing.Front;

/// <summary>The scale of heights at the left, true at the plan's origin, and its faint levels across the picture.</summary>
internal static class HeightScale
{
    private const double NumberSize = 13;

    /// <summary>Draws the levels, which lie behind everything.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="stage">Where the picture lies.</param>
    /// <param name="tallestMillimetres">The highest thing in the picture.</param>
    /// <param name="right">How far the levels run.</param>
    /// <param name="units">The units that are read.</param>
    public static void DrawLevels(SvgWriter svg, Stage stage, double tallestMillimetres, double right, UnitSystem units)
    {
        var (step, _, _) = Step(tallestMillimetres, stage.Scale, units);
        svg.BeginPath("gs-level");
        for (var level = 1; level * step <= tallestMillimetres * 1.001; level++)
        {
            var y = stage.Ground - (level * step * stage.Scale);
            svg.MoveTo(Plate.Margin + 8, y);
            svg.LineTo(right, y);
        }

        svg.EndPath();
    }

    /// <summary>Draws the scale with its numbers.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="stage">Where the picture lies.</param>
    /// <param name="tallestMillimetres">The highest thing in the picture.</param>
    /// <param name="units">The units that are read.</param>
    public static void Draw(SvgWriter svg, Stage stage, double tallestMillimetres, UnitSystem units)
    {
        var (step, small, unit) = Step(tallestMillimetres, stage.Scale, units);
        svg.BeginPath("gs-scale");
        svg.MoveTo(Plate.Margin, stage.Ground);
        svg.LineTo(Plate.Margin, stage.Ground - (tallestMillimetres * stage.Scale));
        for (var tick = 0; tick * step / small <= tallestMillimetres * 1.001; tick++)
        {
            var y = stage.Ground - (tick * step / small * stage.Scale);
            svg.MoveTo(Plate.Margin, y);
            svg.LineTo(Plate.Margin - (tick % small == 0 ? 6 : 3), y);
        }

        svg.EndPath();
        for (var level = 0; level * step <= tallestMillimetres * 1.001; level++)
        {
            svg.Text(
                "gs-number",
                Plate.Margin - 10,
                stage.Ground - (level * step * stage.Scale) + (NumberSize * 0.33),
                NumberSize,
                Bare(level * step, unit),
                TextAnchor.End);
        }
    }

    /// <summary>The unit of the scale's numbers.</summary>
    /// <param name="tallestMillimetres">The highest thing in the picture.</param>
    /// <param name="units">The units that are read.</param>
    /// <returns>Its short name.</returns>
    public static string UnitOf(double tallestMillimetres, UnitSystem units) => DrawnLength.UnitFor(Length.FromMillimetres(tallestMillimetres), units);

    private static string Bare(double millimetres, string unit) => DrawnLength.Plain(millimetres / Size(unit), 6);

    private static double Size(string unit) => unit switch { "m" => 1000, "in" => 25.4, "ft" => 304.8, _ => 1 };

    /// <summary>A round step, so that there are at most six levels and their numbers have room; how many small steps it holds; its unit.</summary>
    private static (double StepMillimetres, int Small, string Unit) Step(double tallestMillimetres, double pixelsPerMillimetre, UnitSystem units)
    {
        var unit = UnitOf(tallestMillimetres, units);
        var tallest = Math.Max(tallestMillimetres / Size(unit), 1e-6);
        var levels = Math.Clamp(tallestMillimetres * pixelsPerMillimetre / 24, 1, 6.5);
        for (var power = Math.Pow(10, Math.Floor(Math.Log10(tallest / 20))); ; power *= 10)
        {
            foreach (var (factor, small) in (ReadOnlySpan<(double, int)>)[(1, 5), (2, 4), (5, 5)])
            {
                if (tallest / (factor * power) <= levels)
                {
                    return (factor * power * Size(unit), small, unit);
                }
            }
        }
    }
}
