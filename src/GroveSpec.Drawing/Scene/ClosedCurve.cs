namespace GroveSpec.Drawing.Scene;

/// <summary>Smooth closed curves, by Catmull and Rom's rule: each point's tangent is parallel to the line between its neighbours.</summary>
internal static class ClosedCurve
{
    /// <summary>Writes one closed run of a path that has been begun.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="points">Its points in order, at least three; the last joins the first.</param>
    public static void Write(SvgWriter svg, ReadOnlySpan<(double X, double Y)> points)
    {
        svg.MoveTo(points[0].X, points[0].Y);
        for (var i = 0; i < points.Length; i++)
        {
            var before = points[(i + points.Length - 1) % points.Length];
            var from = points[i];
            var to = points[(i + 1) % points.Length];
            var after = points[(i + 2) % points.Length];
            svg.CurveTo(
                from.X + ((to.X - before.X) / 6),
                from.Y + ((to.Y - before.Y) / 6),
                to.X - ((after.X - from.X) / 6),
                to.Y - ((after.Y - from.Y) / 6),
                to.X,
                to.Y);
        }

        svg.ClosePath();
    }

    /// <summary>Writes an uneven ring.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="x">Its middle.</param>
    /// <param name="y">Its middle, downward.</param>
    /// <param name="radius">Its radius.</param>
    /// <param name="unevenness">How it swells and shrinks.</param>
    /// <param name="swell">How much, as a share of the radius.</param>
    /// <param name="points">How many points it runs through, from 3 to 64.</param>
    public static void WriteRing(SvgWriter svg, double x, double y, double radius, Undulation unevenness, double swell, int points)
    {
        Span<(double X, double Y)> ring = stackalloc (double, double)[64];
        for (var i = 0; i < points; i++)
        {
            var angle = i * Math.Tau / points;
            var (sin, cos) = Math.SinCos(angle);
            var reach = radius * (1 + (swell * unevenness.At(angle)));
            ring[i] = (x + (reach * cos), y + (reach * sin));
        }

        Write(svg, ring[..points]);
    }
}
