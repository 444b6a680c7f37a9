using System.Collections.Immutable;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Ground;

/// <summary>How far places lie from the outline of free ground.</summary>
public static class OutlineReach
{
    /// <summary>The nearest place of an outline.</summary>
    /// <param name="outline">The closed lines.</param>
    /// <param name="place">A place.</param>
    /// <returns>The nearest place and its distance; null where there is no outline.</returns>
    public static (PlanPoint Edge, Length Distance)? Nearest(ImmutableArray<ImmutableArray<PlanPoint>> outline, PlanPoint place)
    {
        double px = place.X.Millimetres, py = place.Y.Millimetres, least = double.PositiveInfinity, edgeX = 0, edgeY = 0;
        foreach (var ring in outline)
        {
            double ax = ring[^1].X.Millimetres, ay = ring[^1].Y.Millimetres;
            foreach (var corner in ring)
            {
                double bx = corner.X.Millimetres, by = corner.Y.Millimetres, ux = bx - ax, uy = by - ay;
                var square = (ux * ux) + (uy * uy);
                var along = square > 0 ? Math.Clamp(((ux * (px - ax)) + (uy * (py - ay))) / square, 0, 1) : 0;
                double x = ax + (along * ux), y = ay + (along * uy), distance = ((px - x) * (px - x)) + ((py - y) * (py - y));
                if (distance < least)
                {
                    (least, edgeX, edgeY) = (distance, x, y);
                }

                (ax, ay) = (bx, by);
            }
        }

        return double.IsFinite(least) ? (PlanPoint.FromMillimetres(edgeX, edgeY), Length.FromMillimetres(Math.Sqrt(least))) : null;
    }

    /// <summary>Whether a place lies within an outline: an odd number of its lines lies to the right.</summary>
    /// <param name="outline">The closed lines.</param>
    /// <param name="place">A place.</param>
    /// <returns>True within; on the line itself either.</returns>
    public static bool Contains(ImmutableArray<ImmutableArray<PlanPoint>> outline, PlanPoint place)
    {
        double px = place.X.Millimetres, py = place.Y.Millimetres;
        var isInside = false;
        foreach (var ring in outline)
        {
            double ax = ring[^1].X.Millimetres, ay = ring[^1].Y.Millimetres;
            foreach (var corner in ring)
            {
                double bx = corner.X.Millimetres, by = corner.Y.Millimetres;
                isInside ^= ay > py != by > py && px < ax + ((py - ay) / (by - ay) * (bx - ax));
                (ax, ay) = (bx, by);
            }
        }

        return isInside;
    }
}
