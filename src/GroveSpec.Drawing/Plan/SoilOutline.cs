using GroveSpec.Craft.Views;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Plan;

/// <summary>The ground round trunks that stand in no container: their convex hull, let out.</summary>
internal static class SoilOutline
{
    private const int Directions = 72;

    /// <summary>The outline of the ground.</summary>
    /// <param name="trunks">The trunks, each with a place.</param>
    /// <param name="sizes">Their sizes.</param>
    /// <returns>Points in millimetres, going round; none where there are no trunks. Outlines of discs about the hull's corners make it round.</returns>
    public static (double X, double Y)[] About(TrunkState[] trunks, ShownSize[] sizes)
    {
        if (trunks.Length == 0)
        {
            return [];
        }

        var corners = Hull([.. trunks.Select(trunk => (trunk.Place!.Value.X.Millimetres, trunk.Place!.Value.Y.Millimetres))]);
        var across = Math.Max(corners.Max(p => p.X) - corners.Min(p => p.X), corners.Max(p => p.Y) - corners.Min(p => p.Y));
        var margin = Math.Max(across * 0.07, sizes.Max(size => size.Diameter.Millimetres) * 1.5);

        // The farthest point in each direction, moved outward: the hull let out, as a polygon of its supporting points.
        var points = new (double X, double Y)[Directions];
        for (var i = 0; i < Directions; i++)
        {
            var (sin, cos) = Math.SinCos(i * Math.Tau / Directions);
            var farthest = corners[0];
            foreach (var corner in corners)
            {
                if ((corner.X * cos) + (corner.Y * sin) > (farthest.X * cos) + (farthest.Y * sin))
                {
                    farthest = corner;
                }
            }

            points[i] = (farthest.X + (margin * cos), farthest.Y + (margin * sin));
        }

        return points;
    }

    // Andrew's monotone chain (1979).
    private static List<(double X, double Y)> Hull((double X, double Y)[] points)
    {
        Array.Sort(points);
        var hull = new List<(double X, double Y)>();
        for (var half = 0; half < 2; half++)
        {
            var start = hull.Count;
            foreach (var point in points)
            {
                while (hull.Count >= start + 2 && Turn(hull[^2], hull[^1], point) <= 0)
                {
                    hull.RemoveAt(hull.Count - 1);
                }

                hull.Add(point);
            }

            hull.RemoveAt(hull.Count - 1);
            Array.Reverse(points);
        }

        return hull.Count > 0 ? hull : [points[0]];
    }

    private static double Turn((double X, double Y) a, (double X, double Y) b, (double X, double Y) c) =>
        ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));
}
