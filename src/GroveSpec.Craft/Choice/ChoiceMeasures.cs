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
    private readonly double?[] diameters;
    private readonly double?[] heights;
    private readonly double[] least;
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
        diameters = [.. trunks.Trunks.Select(trunk => trunk.Diameter?.Value.Millimetres)];
        heights = [.. trunks.Trunks.Select(trunk => trunk.Height?.Value.Millimetres)];
        least = [.. Enumerable.Range(0, trunks.Count + 1).Select(size => (Least(diameters, size) + Least(heights, size)) / 2)];
        double[] known = [.. diameters.OfType<double>().Order()];
        var usual = known.Length == 0 ? 1 : known[known.Length / 2];
        wood = [.. trunks.Sections.Select((section, index) => (section.Centre.X.Millimetres, section.Centre.Y.Millimetres, Math.Pow(diameters[index] ?? usual, 2)))];
        if (outline is { AreaInSquareMillimetres: > 0 })
        {
            var centre = Centroid(outline);
            (middle, reach) = ((centre.X.Millimetres, centre.Y.Millimetres), Math.Sqrt(outline.AreaInSquareMillimetres / Math.PI));
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
    public double SizeEvenness(uint kept) => (Evenness(diameters, kept) + Evenness(heights, kept)) / 2;

    /// <summary>What the evenness of sizes of no choice falls below.</summary>
    /// <param name="size">How many stand.</param>
    /// <returns>The least that <see cref="SizeEvenness"/> can be.</returns>
    public double LeastSizeEvenness(int size) => least[Math.Clamp(size, 0, least.Length - 1)];

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

    private static double Evenness(double?[] sizes, uint kept)
    {
        double sum = 0, squares = 0;
        var number = 0;
        for (var rest = kept; rest != 0; rest &= rest - 1)
        {
            if (sizes[BitOperations.TrailingZeroCount(rest)] is { } size)
            {
                sum += size;
                squares += size * size;
                number++;
            }
        }

        return squares > 0 ? sum * sum / (number * squares) : 1;
    }

    /// <summary>
    /// As a function of any one of the values evenness first rises and then falls, so it is least where each is as small or as
    /// large as can be: some of the smallest with some of the largest. Those of which it is not known count for nothing, so any
    /// number may be known that there can be.
    /// </summary>
    private static double Least(double?[] sizes, int size)
    {
        double[] sorted = [.. sizes.OfType<double>().Order()];
        var found = 1.0;
        for (var known = Math.Max(0, size - (sizes.Length - sorted.Length)); known <= Math.Min(size, sorted.Length); known++)
        {
            for (var small = 0; small <= known; small++)
            {
                double[] picked = [.. sorted.Take(small), .. sorted.TakeLast(known - small)];
                var squares = picked.Sum(value => value * value);
                found = squares > 0 ? Math.Min(found, picked.Sum() * picked.Sum() / (known * squares)) : found;
            }
        }

        // A hair less, since another order of the same sum may round another way.
        return found * (1 - 1e-12);
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
