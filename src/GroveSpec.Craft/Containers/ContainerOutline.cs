using System.Collections.Immutable;
using System.Numerics;
using GroveSpec.Model.Containers;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Containers;

/// <summary>
/// The rim of a container seen from above. Drawings draw its <see cref="Points"/> and checks measure against it,
/// so that what looks inside is inside. An oval or round rim is measured as the true ellipse; a slab's rim is the
/// smooth closed curve through its corners.
/// </summary>
public sealed class ContainerOutline
{
    private const int PointsOfAnEllipse = 180;

    private readonly double halfWidthMm;
    private readonly double halfBreadthMm;
    private readonly double[] x;
    private readonly double[] y;
    private readonly bool isEllipse;

    private ContainerOutline(ImmutableArray<PlanPoint> points, bool isEllipse, double halfWidthMm, double halfBreadthMm)
    {
        Points = points;
        this.isEllipse = isEllipse;
        this.halfWidthMm = halfWidthMm;
        this.halfBreadthMm = halfBreadthMm;
        x = [.. points.Select(point => point.X.Millimetres)];
        y = [.. points.Select(point => point.Y.Millimetres)];
        AreaInSquareMillimetres = isEllipse ? Math.PI * halfWidthMm * halfBreadthMm : Math.Abs(Shoelace());
    }

    /// <summary>The rim as a closed polyline, anticlockwise seen from above unless a slab was given clockwise; the last point joins the first, which is not repeated.</summary>
    public ImmutableArray<PlanPoint> Points { get; }

    /// <summary>The area within the rim in square millimetres; 0 for a slab whose corners lie on one line.</summary>
    public double AreaInSquareMillimetres { get; }

    /// <summary>The radius of a circle as large as the area within the rim, in millimetres.</summary>
    public double RadiusOfEqualCircleInMillimetres => Math.Sqrt(AreaInSquareMillimetres / Math.PI);

    /// <summary>The half width and half breadth of a round or oval rim, in millimetres; null for one with corners.</summary>
    internal (double Width, double Breadth)? HalfAxesInMillimetres => isEllipse ? (halfWidthMm, halfBreadthMm) : null;

    /// <summary>The points' places to the right, in millimetres, for inner loops.</summary>
    internal ReadOnlySpan<double> XInMillimetres => x;

    /// <summary>The points' places to the back, in millimetres, for inner loops.</summary>
    internal ReadOnlySpan<double> YInMillimetres => y;

    /// <summary>The rim of a container.</summary>
    /// <param name="container">The container.</param>
    /// <returns>Its rim about the plan's origin; a slab's where its corners are.</returns>
    public static ContainerOutline Of(Container container) => container switch
    {
        Container.Oval oval => Ellipse(oval.Width, oval.Breadth),
        Container.Round round => Ellipse(round.Across, round.Across),
        Container.Rectangle rectangle => new(Corners(rectangle), false, 0, 0),
        Container.Slab slab => new(SmoothClosedCurve.Through(slab.Outline), false, 0, 0),
        _ => throw new ArgumentException("A container of an unknown shape.", nameof(container)),
    };

    /// <summary>How far a place lies within the rim: the shortest distance to the rim, negative outside.</summary>
    /// <param name="place">Any place.</param>
    /// <returns>The distance, exact to a nanometre for straight rims and within a micrometre for an ellipse.</returns>
    public Length SignedDistance(PlanPoint place) => Length.FromMillimetres(SignedDistanceInMillimetres(place.X.Millimetres, place.Y.Millimetres));

    /// <summary>Whether a place lies within the rim, without asking how far.</summary>
    /// <param name="place">Any place.</param>
    /// <returns>True inside; on the rim itself either.</returns>
    public bool Covers(PlanPoint place) => Contains(place.X.Millimetres, place.Y.Millimetres);

    /// <summary>Whether a place lies within the rim, without asking how far.</summary>
    /// <param name="xMm">The place to the right, in millimetres.</param>
    /// <param name="yMm">The place to the back.</param>
    /// <returns>True inside; on the rim itself either.</returns>
    internal bool Contains(double xMm, double yMm)
    {
        if (isEllipse)
        {
            double across = xMm / halfWidthMm, along = yMm / halfBreadthMm;
            return (across * across) + (along * along) < 1;
        }

        var isInside = false;
        for (int index = 0, before = x.Length - 1; index < x.Length; before = index++)
        {
            isInside ^= IsCrossed(before, index, xMm, yMm);
        }

        return isInside;
    }

    /// <summary>How far the rim reaches in a direction and in the opposite one, from the plan's origin.</summary>
    /// <param name="toward">The direction.</param>
    /// <returns>The least and the greatest reach along the direction; a container's width as seen from the front is their difference at 90 degrees.</returns>
    public (Length Least, Length Greatest) Reach(Bearing toward)
    {
        double least = double.MaxValue, greatest = double.MinValue;
        var (rightward, backward) = (toward.Rightward, toward.Backward);
        if (isEllipse)
        {
            var across = halfWidthMm * rightward;
            var along = halfBreadthMm * backward;
            greatest = Math.Sqrt((across * across) + (along * along));
            least = -greatest;
        }
        else
        {
            // Many points are asked at once; the same products and sums, so the same reach to the last digit.
            var index = 0;
            var (leasts, greatests) = (new Vector<double>(double.MaxValue), new Vector<double>(double.MinValue));
            for (; index <= x.Length - Vector<double>.Count; index += Vector<double>.Count)
            {
                var reaches = (new Vector<double>(x, index) * rightward) + (new Vector<double>(y, index) * backward);
                (leasts, greatests) = (Vector.Min(leasts, reaches), Vector.Max(greatests, reaches));
            }

            for (var lane = 0; lane < Vector<double>.Count; lane++)
            {
                (least, greatest) = (Math.Min(least, leasts[lane]), Math.Max(greatest, greatests[lane]));
            }

            for (; index < x.Length; index++)
            {
                var reach = (x[index] * rightward) + (y[index] * backward);
                (least, greatest) = (Math.Min(least, reach), Math.Max(greatest, reach));
            }
        }

        return (Length.FromMillimetres(least), Length.FromMillimetres(greatest));
    }

    private static ContainerOutline Ellipse(Length width, Length breadth)
    {
        var (halfWidth, halfBreadth) = (width.Millimetres / 2, breadth.Millimetres / 2);
        var points = ImmutableArray.CreateBuilder<PlanPoint>(PointsOfAnEllipse);
        for (var index = 0; index < PointsOfAnEllipse; index++)
        {
            var (sine, cosine) = Math.SinCos(2 * Math.PI * index / PointsOfAnEllipse);
            points.Add(PlanPoint.FromMillimetres(halfWidth * cosine, halfBreadth * sine));
        }

        return new(points.MoveToImmutable(), true, halfWidth, halfBreadth);
    }

    private static ImmutableArray<PlanPoint> Corners(Container.Rectangle rectangle)
    {
        // The half of an odd number of nanometres goes to the right and the back, so that the sides are exact.
        var right = new Length(rectangle.Width.Nanometres - (rectangle.Width.Nanometres / 2));
        var back = new Length(rectangle.Breadth.Nanometres - (rectangle.Breadth.Nanometres / 2));
        var left = right - rectangle.Width;
        var front = back - rectangle.Breadth;
        return [new(right, front), new(right, back), new(left, back), new(left, front)];
    }

    /// <summary>As <see cref="SignedDistance"/>, in millimetres, for inner loops.</summary>
    internal double SignedDistanceInMillimetres(double px, double py) =>
        isEllipse ? EllipseDistance.Signed(halfWidthMm, halfBreadthMm, px, py) : SignedDistanceToPolygon(px, py);

    private double SignedDistanceToPolygon(double px, double py)
    {
        var nearest = double.MaxValue;
        var isInside = false;
        for (int index = 0, before = x.Length - 1; index < x.Length; before = index++)
        {
            double ax = x[before], ay = y[before], bx = x[index], by = y[index];
            double ux = bx - ax, uy = by - ay, vx = px - ax, vy = py - ay;
            var square = (ux * ux) + (uy * uy);
            var along = square > 0 ? Math.Clamp(((ux * vx) + (uy * vy)) / square, 0, 1) : 0;
            double dx = vx - (along * ux), dy = vy - (along * uy);
            nearest = Math.Min(nearest, (dx * dx) + (dy * dy));

            isInside ^= IsCrossed(before, index, px, py);
        }

        return isInside ? Math.Sqrt(nearest) : -Math.Sqrt(nearest);
    }

    /// <summary>Whether the ray to the right crosses a side: an odd number of crossings is inside.</summary>
    private bool IsCrossed(int from, int to, double px, double py) =>
        y[from] > py != y[to] > py && px < x[from] + ((py - y[from]) / (y[to] - y[from]) * (x[to] - x[from]));

    private double Shoelace()
    {
        var twice = 0.0;
        for (int index = 0, before = x.Length - 1; index < x.Length; before = index++)
        {
            twice += ((x[before] - x[0]) * (y[index] - y[0])) - ((x[index] - x[0]) * (y[before] - y[0]));
        }

        return twice / 2;
    }
}
