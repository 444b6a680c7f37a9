using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Ground;

/// <summary>Draws of a line what lies within the rim.</summary>
internal static class RimClip
{
    /// <summary>Writes the pieces within the rim; without any, nothing.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="cls">The class of the path.</param>
    /// <param name="rim">The rim on the page.</param>
    /// <param name="line">The line on the page.</param>
    public static void Write(SvgWriter svg, string cls, (double X, double Y)[] rim, (double X, double Y)[] line)
    {
        (double X, double Y)? last = null;
        foreach (var (start, end) in Pieces(rim, line))
        {
            if (last is null)
            {
                svg.BeginPath(cls);
            }

            if (last != start)
            {
                svg.MoveTo(start.X, start.Y);
            }

            svg.LineTo(end.X, end.Y);
            last = end;
        }

        if (last is not null)
        {
            svg.EndPath();
        }
    }

    /// <summary>The straight pieces within the rim.</summary>
    /// <param name="rim">The rim on the page.</param>
    /// <param name="line">The line on the page.</param>
    /// <returns>The pieces in the line's own order; none without a rim.</returns>
    public static IEnumerable<((double X, double Y) From, (double X, double Y) To)> Pieces((double X, double Y)[] rim, (double X, double Y)[] line)
    {
        for (var index = 1; index < line.Length; index++)
        {
            var (from, to) = (line[index - 1], line[index]);
            var cuts = Cuts(rim, from, to);
            for (var cut = 1; cut < cuts.Count; cut++)
            {
                if (cuts[cut] - cuts[cut - 1] >= 1e-9 && Contains(rim, At(from, to, (cuts[cut] + cuts[cut - 1]) / 2)))
                {
                    yield return (At(from, to, cuts[cut - 1]), At(from, to, cuts[cut]));
                }
            }
        }
    }

    /// <summary>Whether a place lies within: an odd number of sides lies to its right.</summary>
    private static bool Contains((double X, double Y)[] rim, (double X, double Y) place)
    {
        var isInside = false;
        for (int index = 0, before = rim.Length - 1; index < rim.Length; before = index++)
        {
            var (a, b) = (rim[before], rim[index]);
            isInside ^= a.Y > place.Y != b.Y > place.Y && place.X < a.X + ((place.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X));
        }

        return isInside;
    }

    private static List<double> Cuts((double X, double Y)[] rim, (double X, double Y) from, (double X, double Y) to)
    {
        var cuts = new List<double> { 0, 1 };
        double ux = to.X - from.X, uy = to.Y - from.Y;
        for (int index = 0, before = rim.Length - 1; index < rim.Length; before = index++)
        {
            double vx = rim[index].X - rim[before].X, vy = rim[index].Y - rim[before].Y, wx = rim[before].X - from.X, wy = rim[before].Y - from.Y;
            var across = (ux * vy) - (uy * vx);
            var (along, side) = (((wx * vy) - (wy * vx)) / across, ((wx * uy) - (wy * ux)) / across);
            if (across != 0 && along is > 0 and < 1 && side is >= 0 and <= 1)
            {
                cuts.Add(along);
            }
        }

        cuts.Sort();
        return cuts;
    }

    private static (double X, double Y) At((double X, double Y) from, (double X, double Y) to, double share) => (from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share));
}
