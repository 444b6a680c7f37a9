using System.Collections.Immutable;
using GroveSpec.Craft.Containers;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Stand;

/// <summary>
/// The ground over which chance could have scattered the stems. Separate trees may stand anywhere in their container. The
/// trunks of a clump or a raft rise from one base, and in a container they would always seem crowded: their ground is
/// what they themselves enclose, and so it is where no container is named.
/// </summary>
public sealed class StandGround
{
    private readonly ContainerOutline? outline;
    private readonly double halfLongMm;
    private readonly double halfShortMm;
    private readonly (double Least, double Greatest) acrossMm;
    private readonly (double Least, double Greatest) alongMm;

    private StandGround(ContainerOutline outline)
    {
        this.outline = outline;
        Origin = StandGroundOrigin.Container;
        Edge = outline.Points;
        (AreaInSquareMillimetres, PerimeterInMillimetres) = (outline.AreaInSquareMillimetres, PerimeterOf([.. outline.Points.Select(point => (point.X.Millimetres, point.Y.Millimetres))]));
        acrossMm = RangeOf(outline.XInMillimetres);
        alongMm = RangeOf(outline.YInMillimetres);
    }

    private StandGround(double[] x, double[] y, StandGroundOrigin origin)
    {
        Origin = origin;
        var hull = HullOf(x, y);
        Edge = [.. hull.Select(corner => PlanPoint.FromMillimetres(corner.X, corner.Y))];
        (AreaInSquareMillimetres, PerimeterInMillimetres) = (AreaOf(hull), PerimeterOf(hull));
        (halfLongMm, halfShortMm) = EllipseOf(x, y);
    }

    /// <summary>What it is, and why.</summary>
    public StandGroundOrigin Origin { get; }

    /// <summary>Whether it is the container; else it is what the stems enclose.</summary>
    public bool IsContainer => Origin == StandGroundOrigin.Container;

    /// <summary>Its edge as a closed polyline, the first point not repeated; fewer than three points where the stems stand on one line.</summary>
    public ImmutableArray<PlanPoint> Edge { get; }

    /// <summary>Its area in square millimetres; 0 where the stems stand on one line.</summary>
    public double AreaInSquareMillimetres { get; }

    /// <summary>The length of its edge.</summary>
    public Length Perimeter => Length.FromMillimetres(PerimeterInMillimetres);

    /// <summary>As <see cref="Perimeter"/>, for inner loops.</summary>
    internal double PerimeterInMillimetres { get; }

    /// <summary>The ground of a planting.</summary>
    /// <param name="state">The planting on a day; its stems are the trunks that stand and whose place is known.</param>
    /// <returns>The ground.</returns>
    public static StandGround Of(PlantingState state)
    {
        if (state.Planting is { EffectiveHabit: Habit.Group, Container: { } container } && ContainerOutline.Of(container) is { AreaInSquareMillimetres: > 0 } rim)
        {
            return new(rim);
        }

        PlanPoint[] places = [.. state.Standing.Select(trunk => trunk.Place!.Value).OrderBy(place => place.X).ThenBy(place => place.Y)];
        var origin = state.Planting.EffectiveHabit switch
        {
            Habit.Clump => StandGroundOrigin.Clump,
            Habit.Raft => StandGroundOrigin.Raft,
            _ => StandGroundOrigin.NoContainer,
        };
        return new([.. places.Select(place => place.X.Millimetres)], [.. places.Select(place => place.Y.Millimetres)], origin);
    }

    /// <summary>Whether chance can scatter stems over it.</summary>
    /// <param name="stems">How many stems.</param>
    /// <returns>True when it has an area; over ground that the stems enclose, from four stems on, since three enclose whatever they are.</returns>
    internal bool CanBeScattered(int stems) => AreaInSquareMillimetres > 0 && (IsContainer ? stems >= 2 : stems >= 4 && halfShortMm > 0);

    /// <summary>Whether a stem stands on it.</summary>
    /// <param name="place">Where its middle is.</param>
    /// <returns>False only for a place outside the container, whose rim is a part of it: what stems enclose, they stand on.</returns>
    internal bool Holds(PlanPoint place) => outline is null || outline.SignedDistance(place) >= Length.Zero;

    /// <summary>Scatters stems evenly over it.</summary>
    /// <param name="random">Where chance comes from.</param>
    /// <param name="x">Takes their places to the right, in millimetres.</param>
    /// <param name="y">Takes their places to the back.</param>
    internal void Scatter(SeededRandom random, double[] x, double[] y)
    {
        for (var stem = 0; stem < x.Length; stem++)
        {
            (x[stem], y[stem]) = outline is null ? InEllipse(random) : InOutline(random, outline);
        }
    }

    /// <summary>The corrected index of Clark and Evans over this ground, or over what other stems enclose where the ground is of that kind.</summary>
    /// <param name="nearest">The stems, from 2.</param>
    /// <param name="x">Their places to the right, in millimetres.</param>
    /// <param name="y">Their places to the back.</param>
    /// <returns>The index.</returns>
    internal double ClarkEvans(NearestStems nearest, double[] x, double[] y)
    {
        var (area, perimeter) = (AreaInSquareMillimetres, PerimeterInMillimetres);
        if (!IsContainer)
        {
            // What is enclosed is found anew for each scattering, because it is smaller than the ground that was scattered over.
            var hull = HullOf(x, y);
            (area, perimeter) = (AreaOf(hull), PerimeterOf(hull));
        }

        return ClarkEvansIndex.Donnelly(nearest.MeanNearestDistance(), nearest.Count, area, perimeter);
    }

    private (double X, double Y) InOutline(SeededRandom random, ContainerOutline rim)
    {
        // The share of the box that the rim takes is known; the bound only keeps a rim thinner than rounding from being asked for ever.
        for (var tries = 0; tries < 100_000; tries++)
        {
            var x = acrossMm.Least + (random.NextShare() * (acrossMm.Greatest - acrossMm.Least));
            var y = alongMm.Least + (random.NextShare() * (alongMm.Greatest - alongMm.Least));
            if (rim.Contains(x, y))
            {
                return (x, y);
            }
        }

        return (rim.XInMillimetres[0], rim.YInMillimetres[0]);
    }

    private (double X, double Y) InEllipse(SeededRandom random)
    {
        var reach = Math.Sqrt(random.NextShare());
        var (sine, cosine) = Math.SinCos(2 * Math.PI * random.NextShare());
        return (halfLongMm * reach * cosine, halfShortMm * reach * sine);
    }

    /// <summary>The half axes of the evenly filled ellipse with the stems' own second moments, which are a quarter of their squares.</summary>
    private static (double Long, double Short) EllipseOf(double[] x, double[] y)
    {
        if (x.Length == 0)
        {
            return (0, 0);
        }

        double meanX = x.Average(), meanY = y.Average(), xx = 0, xy = 0, yy = 0;
        for (var stem = 0; stem < x.Length; stem++)
        {
            double dx = x[stem] - meanX, dy = y[stem] - meanY;
            xx += dx * dx;
            xy += dx * dy;
            yy += dy * dy;
        }

        var middle = (xx + yy) / (2 * x.Length);
        var spread = Math.Sqrt(((xx - yy) * (xx - yy) / 4) + (xy * xy)) / x.Length;
        return (2 * Math.Sqrt(middle + spread), 2 * Math.Sqrt(Math.Max(0, middle - spread)));
    }

    /// <summary>The convex hull, anticlockwise, by Andrew's monotone chain (1979; from memory).</summary>
    private static List<(double X, double Y)> HullOf(double[] x, double[] y)
    {
        var order = Enumerable.Range(0, x.Length).OrderBy(stem => x[stem]).ThenBy(stem => y[stem]).ToArray();
        var hull = new List<(double X, double Y)>();
        foreach (var way in new[] { order, [.. order.Reverse()] })
        {
            var start = hull.Count;
            foreach (var stem in way)
            {
                while (hull.Count >= start + 2 && Cross(hull[^2], hull[^1], (x[stem], y[stem])) <= 0)
                {
                    hull.RemoveAt(hull.Count - 1);
                }

                hull.Add((x[stem], y[stem]));
            }

            if (hull.Count > 0)
            {
                // The last of each way is the first of the other.
                hull.RemoveAt(hull.Count - 1);
            }
        }

        return hull;
    }

    private static double Cross((double X, double Y) a, (double X, double Y) b, (double X, double Y) c) => ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));

    private static double AreaOf(List<(double X, double Y)> corners)
    {
        var twice = 0.0;
        for (var index = 1; index + 1 < corners.Count; index++)
        {
            twice += Cross(corners[0], corners[index], corners[index + 1]);
        }

        return Math.Abs(twice) / 2;
    }

    private static double PerimeterOf(List<(double X, double Y)> corners)
    {
        var sum = 0.0;
        for (int index = 0, before = corners.Count - 1; index < corners.Count; before = index++)
        {
            double dx = corners[index].X - corners[before].X, dy = corners[index].Y - corners[before].Y;
            sum += Math.Sqrt((dx * dx) + (dy * dy));
        }

        return sum;
    }

    private static (double Least, double Greatest) RangeOf(ReadOnlySpan<double> values)
    {
        double least = double.MaxValue, greatest = double.MinValue;
        foreach (var value in values)
        {
            least = Math.Min(least, value);
            greatest = Math.Max(greatest, value);
        }

        return (least, greatest);
    }
}
