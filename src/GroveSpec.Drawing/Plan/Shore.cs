using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Plan;

/// <summary>Draws the container: its rim as a double line and a stippled shore within; or, without a container, the ground's broken edge.</summary>
internal static class Shore
{
    /// <summary>Writes the bed of soil, which lies below all else.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="layout">The plan.</param>
    public static void WriteBed(SvgWriter svg, PlanLayout layout)
    {
        var rim = layout.RimOnPage;
        if (rim.Length >= 3)
        {
            WriteOutline(svg, layout.IsAsWritten ? "gs-rim-inner" : "gs-ground", layout.IsAsWritten ? Inset(rim, Inward(rim)) : rim);
        }
    }

    /// <summary>Writes the rim and the stipple, whose ink stays dark over the wash of the crowns.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="layout">The plan.</param>
    /// <param name="origin">The id of the container's origin; null where there is no container.</param>
    /// <param name="name">The planting's name, which seeds the stipple.</param>
    public static void Write(SvgWriter svg, PlanLayout layout, string? origin, string name)
    {
        var rim = layout.RimOnPage;
        if (rim.Length < 3)
        {
            return;
        }

        svg.OpenGroup("gs-container", origin);
        if (layout.IsAsWritten)
        {
            WriteOutline(svg, "gs-rim", rim);
        }

        WriteStipple(svg, layout, name);
        svg.CloseGroup();
    }

    private static void WriteOutline(SvgWriter svg, string cls, (double X, double Y)[] points)
    {
        svg.BeginPath(cls);
        svg.MoveTo(points[0].X, points[0].Y);
        for (var i = 1; i < points.Length; i++)
        {
            svg.LineTo(points[i].X, points[i].Y);
        }

        svg.ClosePath();
        svg.EndPath();
    }

    private static double Inward((double X, double Y)[] rim)
    {
        var width = rim.Max(p => p.X) - rim.Min(p => p.X);
        var height = rim.Max(p => p.Y) - rim.Min(p => p.Y);
        return Math.Min(9, 0.04 * Math.Min(width, height));
    }

    private static (double X, double Y)[] Inset((double X, double Y)[] rim, double by)
    {
        var sign = Area(rim) > 0 ? 1 : -1;
        var inset = new (double X, double Y)[rim.Length];
        for (var i = 0; i < rim.Length; i++)
        {
            var (beforeX, beforeY) = Normal(rim[(i + rim.Length - 1) % rim.Length], rim[i], sign);
            var (afterX, afterY) = Normal(rim[i], rim[(i + 1) % rim.Length], sign);
            var (x, y) = (beforeX + afterX, beforeY + afterY);

            // Mitred, but a sharp corner is cut off at twice the distance.
            var stretch = 2 / Math.Max(1, (x * x) + (y * y));
            inset[i] = (rim[i].X + (x * stretch * by), rim[i].Y + (y * stretch * by));
        }

        return inset;
    }

    private static (double X, double Y) Normal((double X, double Y) from, (double X, double Y) to, int sign)
    {
        var (x, y) = (to.X - from.X, to.Y - from.Y);
        var length = Math.Max(1e-9, Math.Sqrt((x * x) + (y * y)));
        return (-y / length * sign, x / length * sign);
    }

    private static double Area((double X, double Y)[] points)
    {
        double twice = 0;
        for (var i = 0; i < points.Length; i++)
        {
            var next = points[(i + 1) % points.Length];
            twice += (points[i].X * next.Y) - (next.X * points[i].Y);
        }

        return twice / 2;
    }

    // Dots crowd at the rim and thin out inward; each small gathering of them is its own little drift of grit.
    private static void WriteStipple(SvgWriter svg, PlanLayout layout, string name)
    {
        var rim = layout.RimOnPage;
        var sign = Area(rim) > 0 ? 1 : -1;
        var lengths = new double[rim.Length];
        double around = 0;
        for (var i = 0; i < rim.Length; i++)
        {
            var next = rim[(i + 1) % rim.Length];
            around += Math.Sqrt(Math.Pow(next.X - rim[i].X, 2) + Math.Pow(next.Y - rim[i].Y, 2));
            lengths[i] = around;
        }

        var start = layout.IsAsWritten ? Inward(rim) + 3 : 4;
        var deep = Math.Min(60, Math.Min(layout.Extents.Width, layout.Extents.Height) * 0.16);
        var drifts = (int)Math.Clamp(around / 42, 12, 64);
        for (var size = 0; size < 2; size++)
        {
            var hand = Wobble.Of(name, size == 0 ? "grit" : "coarse grit");
            svg.BeginPath(size == 0 ? "gs-grit" : "gs-grit-coarse");
            for (var drift = 0; drift < drifts; drift++)
            {
                // A drift to each stretch of the rim, so that no stretch is left bare by chance.
                var middle = (drift + hand.Next()) * around / drifts;
                var dots = size == 0 ? 2 + (int)(hand.Next() * 6) : 1 + (int)(hand.Next() * 2);
                for (var dot = 0; dot < dots; dot++)
                {
                    var along = middle + hand.Between(-22, 22);
                    var depth = hand.Next() * hand.Next();
                    var (x, y, side) = Within(rim, lengths, around, along, start + (depth * deep), sign);
                    if (!IsOnATrunk(layout, x, y) && IsInside(rim, side - 1, x, y, start, sign) && IsInside(rim, side + 1, x, y, start, sign))
                    {
                        svg.MoveTo(x, y);
                        svg.LineTo(x + 0.1, y);
                    }
                }
            }

            svg.EndPath();
        }
    }

    private static bool IsOnATrunk(PlanLayout layout, double x, double y)
    {
        if (layout.Detail == PlanDetail.Least)
        {
            return false;
        }

        foreach (var trunk in layout.Trunks)
        {
            var (acrossX, acrossY, reach) = (trunk.X - x, trunk.Y - y, trunk.FlareRadius + 2);
            if ((acrossX * acrossX) + (acrossY * acrossY) < reach * reach)
            {
                return true;
            }
        }

        return false;
    }

    // Near a corner a dot that is inside one side may be beyond the next.
    private static bool IsInside((double X, double Y)[] rim, int side, double x, double y, double least, int sign)
    {
        var from = rim[(side + rim.Length) % rim.Length];
        var (inwardX, inwardY) = Normal(from, rim[(side + rim.Length + 1) % rim.Length], sign);
        return ((x - from.X) * inwardX) + ((y - from.Y) * inwardY) >= least - 0.01;
    }

    private static (double X, double Y, int Side) Within((double X, double Y)[] rim, double[] lengths, double around, double along, double inward, int sign)
    {
        along = ((along % around) + around) % around;
        var side = Array.BinarySearch(lengths, along);
        side = Math.Min(side < 0 ? ~side : side, rim.Length - 1);
        var from = rim[side];
        var to = rim[(side + 1) % rim.Length];
        var before = side == 0 ? 0 : lengths[side - 1];
        var share = (along - before) / Math.Max(1e-9, lengths[side] - before);
        var (x, y) = Normal(from, to, sign);
        return (from.X + ((to.X - from.X) * share) + (x * inward), from.Y + ((to.Y - from.Y) * share) + (y * inward), side);
    }
}
