using System.Numerics;
using GroveSpec.Craft.Composition;
using GroveSpec.Craft.Containers;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Choice;

/// <summary>How various gaps and sizes would be, and how balanced the wood, if only some of a stool stood.</summary>
/// <remarks>
/// Evenness is (Σx)² / (m·Σx²) of m values, which is 1 / (1 + v²) with v their coefficient of variation: 1 when all are
/// alike, 1/m when one has all.
/// </remarks>
public sealed class ChoiceMeasures
{
    private readonly NeighbourTable neighbours;
    private readonly SizeVariety diameters;
    private readonly SizeVariety heights;
    private readonly double[] leastSizeEvenness;
    private readonly (double X, double Y, double Area)[] wood;
    private readonly (double X, double Y) middle;
    private readonly double reach;

    /// <summary>Measures a stool.</summary>
    /// <param name="trunks">The trunks, at most <see cref="NeighbourTable.MostTrunks"/>.</param>
    /// <param name="neighbours">Their neighbours.</param>
    /// <param name="outline">The container's rim; null without one.</param>
    public ChoiceMeasures(StandingTrunks trunks, NeighbourTable neighbours, ContainerOutline? outline)
    {
        ArgumentNullException.ThrowIfNull(trunks);
        this.neighbours = neighbours;
        double?[] thickness = [.. trunks.Trunks.Select(trunk => trunk.Diameter?.Value.Millimetres)];
        (diameters, heights) = (new(thickness), new([.. trunks.Trunks.Select(trunk => trunk.Height?.Value.Millimetres)]));
        var all = (uint)((1UL << trunks.Count) - 1);
        leastSizeEvenness = [.. Enumerable.Range(0, trunks.Count + 1).Select(size => LeastSizeEvenness(0, all, size))];
        double[] known = [.. thickness.OfType<double>().Order()];
        var usual = known.Length == 0 ? 1 : known[known.Length / 2];
        wood = [.. trunks.Sections.Select((section, index) => (section.Centre.X.Millimetres, section.Centre.Y.Millimetres, Math.Pow(thickness[index] ?? usual, 2)))];
        if (outline is { AreaInSquareMillimetres: > 0 })
        {
            var centre = Centroid(outline);
            (middle, reach) = ((centre.X.Millimetres, centre.Y.Millimetres), outline.RadiusOfEqualCircleInMillimetres);
        }
        else if (trunks.Count > 0)
        {
            middle = (wood.Average(trunk => trunk.X), wood.Average(trunk => trunk.Y));
            reach = Math.Sqrt(wood.Average(trunk => Square(trunk.X - middle.X, trunk.Y - middle.Y)));
        }
    }

    /// <summary>The middle that wood is balanced over: that of the container's area, or without one of the trunks' places.</summary>
    public PlanPoint Middle => PlanPoint.FromMillimetres(middle.X, middle.Y);

    /// <summary>The evenness of the gaps between neighbours, from centre to centre.</summary>
    /// <param name="kept">The trunks that stand.</param>
    /// <param name="neighboursOf">For each of them its neighbours.</param>
    /// <returns>From above 0 to 1; 1 without a gap.</returns>
    public double GapEvenness(uint kept, ReadOnlySpan<uint> neighboursOf)
    {
        double sum = 0, squares = 0;
        var number = 0;
        for (var rest = kept; rest != 0; rest &= rest - 1)
        {
            var first = BitOperations.TrailingZeroCount(rest);
            for (var others = neighboursOf[first] & (rest & (rest - 1)); others != 0; others &= others - 1)
            {
                var gap = neighbours.GapInMillimetres(first, BitOperations.TrailingZeroCount(others));
                sum += gap;
                squares += gap * gap;
                number++;
            }
        }

        return squares > 0 ? sum * sum / (number * squares) : 1;
    }

    /// <summary>The mean of the evenness of thickness and that of height, each of the trunks of which it is known.</summary>
    /// <param name="kept">The trunks that stand.</param>
    /// <returns>From above 0 to 1; 1 where nothing is known.</returns>
    public double SizeEvenness(uint kept) => (diameters.Evenness(kept) + heights.Evenness(kept)) / 2;

    /// <summary>What the evenness of sizes of no choice falls below.</summary>
    /// <param name="size">How many stand.</param>
    /// <returns>The least that <see cref="SizeEvenness"/> can be.</returns>
    public double LeastSizeEvenness(int size) => leastSizeEvenness[Math.Clamp(size, 0, leastSizeEvenness.Length - 1)];

    /// <summary>What the evenness of sizes does not fall below, whatever else comes to stand.</summary>
    /// <param name="kept">The trunks that stand in any case.</param>
    /// <param name="possible">Those and all that may stand besides.</param>
    /// <param name="size">How many stand in the end.</param>
    /// <returns>The bound for <see cref="SizeEvenness"/>.</returns>
    public double LeastSizeEvenness(uint kept, uint possible, int size) => (diameters.Least(kept, possible, size) + heights.Least(kept, possible, size)) / 2;

    /// <summary>Where the weight of the wood lies: the mean of the trunks' places, each as heavy as the square of its diameter, or of the middle diameter where its own is not known.</summary>
    /// <param name="kept">The trunks that stand, at least one.</param>
    /// <returns>The place.</returns>
    public PlanPoint CentreOfWood(uint kept)
    {
        var (x, y) = Centre(kept);
        return PlanPoint.FromMillimetres(x, y);
    }

    /// <summary>How far the wood is from its balance.</summary>
    /// <param name="kept">The trunks that stand, at least one.</param>
    /// <returns>The distance of <see cref="CentreOfWood"/> from <see cref="Middle"/> against the radius of a circle as large as the container, or without one against the root of the mean square of all trunks' distances; at most 1.</returns>
    public double Imbalance(uint kept)
    {
        var (x, y) = Centre(kept);
        var square = Square(x - middle.X, y - middle.Y);
        return reach > 0 ? Math.Min(1, Math.Sqrt(square) / reach) : 0;
    }

    /// <summary>What <see cref="Imbalance"/> does not fall below, whatever else comes to stand.</summary>
    /// <param name="kept">The trunks that stand in any case.</param>
    /// <param name="possible">Those and all that may stand besides.</param>
    /// <param name="size">How many stand in the end.</param>
    /// <returns>The bound: how far from the middle the wood stays in the direction in which that of those kept lies.</returns>
    public double LeastImbalance(uint kept, uint possible, int size)
    {
        double x = 0, y = 0, area = 0;
        for (var rest = kept; rest != 0; rest &= rest - 1)
        {
            var trunk = wood[BitOperations.TrailingZeroCount(rest)];
            (x, y, area) = (x + ((trunk.X - middle.X) * trunk.Area), y + ((trunk.Y - middle.Y) * trunk.Area), area + trunk.Area);
        }

        var moment = Math.Sqrt(Square(x, y));
        if (!(moment > 0 && reach > 0))
        {
            return 0;
        }

        var missing = size - BitOperations.PopCount(kept);
        var opposed = new LeastSum(missing, stackalloc double[NeighbourTable.MostTrunks]);
        var heaviest = 0.0;
        for (var rest = possible & ~kept; rest != 0 && missing > 0; rest &= rest - 1)
        {
            var trunk = wood[BitOperations.TrailingZeroCount(rest)];
            heaviest = Math.Max(heaviest, trunk.Area);
            opposed.Add((((trunk.X - middle.X) * x) + ((trunk.Y - middle.Y) * y)) / moment * trunk.Area);
        }

        // A hair less, since another order of the same sum may round another way; less by a number and not by a part of itself,
        // because where wood stands against as much wood, what is left of a sum is nothing but its rounding.
        return Math.Max(0, Math.Min(1, (moment + opposed.Sum) / ((area + (missing * heaviest)) * reach)) - 1e-9);
    }

    private (double X, double Y) Centre(uint kept)
    {
        double x = 0, y = 0, area = 0;
        for (var rest = kept; rest != 0; rest &= rest - 1)
        {
            var trunk = wood[BitOperations.TrailingZeroCount(rest)];
            x += trunk.X * trunk.Area;
            y += trunk.Y * trunk.Area;
            area += trunk.Area;
        }

        return area > 0 ? (x / area, y / area) : middle;
    }

    private static double Square(double x, double y) => (x * x) + (y * y);

    /// <summary>The middle of a container's area, which is above zero.</summary>
    internal static PlanPoint Centroid(ContainerOutline outline)
    {
        double[] x = [.. outline.Points.Select(point => point.X.Millimetres)], y = [.. outline.Points.Select(point => point.Y.Millimetres)];
        double twice = 0, sumX = 0, sumY = 0;
        for (int index = 0, before = x.Length - 1; index < x.Length; before = index++)
        {
            // From the first corner on, so that far from the origin nothing is lost.
            double ax = x[before] - x[0], ay = y[before] - y[0], bx = x[index] - x[0], by = y[index] - y[0];
            var cross = (ax * by) - (bx * ay);
            twice += cross;
            sumX += (ax + bx) * cross;
            sumY += (ay + by) * cross;
        }

        return PlanPoint.FromMillimetres(x[0] + (sumX / (3 * twice)), y[0] + (sumY / (3 * twice)));
    }
}
