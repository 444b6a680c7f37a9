using System.Collections.Immutable;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Containers;

/// <summary>
/// A smooth closed curve through given corners: a centripetal Catmull–Rom spline (Yuksel, Schaefer and Keyser 2011,
/// "Parameterization and applications of Catmull–Rom curves": centripetal knots give no loop and no cusp within a piece).
/// </summary>
internal static class SmoothClosedCurve
{
    private const int PointsInAll = 384;
    private const int PointsOfAPiece = 24;

    /// <summary>The curve as a closed polyline that holds every corner.</summary>
    /// <param name="corners">The corners in order; a corner at the place of the one before it is left out.</param>
    /// <returns>The polyline; the corners themselves where fewer than three places are left.</returns>
    public static ImmutableArray<PlanPoint> Through(ImmutableArray<PlanPoint> corners)
    {
        var distinct = new List<PlanPoint>(corners.Length);
        foreach (var corner in corners)
        {
            if (distinct.Count == 0 || distinct[^1] != corner)
            {
                distinct.Add(corner);
            }
        }

        while (distinct.Count > 1 && distinct[^1] == distinct[0])
        {
            distinct.RemoveAt(distinct.Count - 1);
        }

        if (distinct.Count < 3)
        {
            return corners;
        }

        var steps = Math.Clamp(PointsInAll / distinct.Count, 1, PointsOfAPiece);
        var points = ImmutableArray.CreateBuilder<PlanPoint>(distinct.Count * steps);
        for (var index = 0; index < distinct.Count; index++)
        {
            AddPiece(points, At(distinct, index - 1), At(distinct, index), At(distinct, index + 1), At(distinct, index + 2), steps);
        }

        return points.MoveToImmutable();
    }

    private static PlanPoint At(List<PlanPoint> corners, int index) => corners[((index % corners.Count) + corners.Count) % corners.Count];

    private static void AddPiece(ImmutableArray<PlanPoint>.Builder points, PlanPoint before, PlanPoint from, PlanPoint to, PlanPoint after, int steps)
    {
        points.Add(from);
        var knot1 = Knot(before, from);
        var knot2 = knot1 + Knot(from, to);
        var knot3 = knot2 + Knot(to, after);
        for (var step = 1; step < steps; step++)
        {
            var knot = knot1 + ((knot2 - knot1) * step / steps);

            // From the corner it starts at, so that the mark that places are measured from changes nothing.
            points.Add(new PlanPoint(
                from.X + Length.FromMillimetres(Value((before.X - from.X).Millimetres, 0, (to.X - from.X).Millimetres, (after.X - from.X).Millimetres, knot1, knot2, knot3, knot)),
                from.Y + Length.FromMillimetres(Value((before.Y - from.Y).Millimetres, 0, (to.Y - from.Y).Millimetres, (after.Y - from.Y).Millimetres, knot1, knot2, knot3, knot))));
        }
    }

    private static double Knot(PlanPoint from, PlanPoint to)
    {
        var x = (to.X - from.X).Millimetres;
        var y = (to.Y - from.Y).Millimetres;
        return Math.Sqrt(Math.Sqrt((x * x) + (y * y)));
    }

    /// <summary>The pyramid of Barry and Goldman (1988) with knots 0, knot1, knot2, knot3.</summary>
    private static double Value(double p0, double p1, double p2, double p3, double knot1, double knot2, double knot3, double knot)
    {
        var a1 = Between(p0, p1, 0, knot1, knot);
        var a2 = Between(p1, p2, knot1, knot2, knot);
        var a3 = Between(p2, p3, knot2, knot3, knot);
        var b1 = Between(a1, a2, 0, knot2, knot);
        var b2 = Between(a2, a3, knot1, knot3, knot);
        return Between(b1, b2, knot1, knot2, knot);
    }

    private static double Between(double from, double to, double start, double end, double knot) =>
        (((end - knot) * from) + ((knot - start) * to)) / (end - start);
}
