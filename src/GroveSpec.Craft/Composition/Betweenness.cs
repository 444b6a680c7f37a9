using System.Numerics;

namespace GroveSpec.Craft.Composition;

/// <summary>Whether a trunk stands between two others. Places are in nanometres from one mark, exact, so that every difference is.</summary>
internal static class Betweenness
{
    /// <summary>Whether the straight line between two trunks passes through a third, or touches it, on its way, and the third is nearer to both than they are to each other.</summary>
    /// <param name="x">The places to the right.</param>
    /// <param name="y">The places to the back.</param>
    /// <param name="sections">The cuts at the soil, at the same places.</param>
    /// <param name="trunk">The third.</param>
    /// <param name="from">The one to whom it is known to be nearer than the other is.</param>
    /// <param name="to">The other.</param>
    /// <param name="square">The square of the distance of the two, rounded to 53 bits.</param>
    /// <returns>True when it does.</returns>
    public static bool IsOnTheWay(ReadOnlySpan<double> x, ReadOnlySpan<double> y, ReadOnlySpan<TrunkSection> sections, int trunk, int from, int to, double square)
    {
        double wayX = x[to] - x[from], wayY = y[to] - y[from];
        double fromX = x[trunk] - x[from], fromY = y[trunk] - y[from];
        double toX = x[trunk] - x[to], toY = y[trunk] - y[to];
        if ((toX * toX) + (toY * toY) >= square || (fromX * wayX) + (fromY * wayY) <= 0 || (toX * wayX) + (toY * wayY) >= 0)
        {
            return false;
        }

        // Twice the distance from the line against the diameter, both times the length of the line.
        double across = wayX * fromY, along = wayY * fromX;
        double twice = 2 * Math.Abs(across - along), most = sections[trunk].Diameter.Nanometres * Math.Sqrt(square);
        return Math.Abs(twice - most) > 1e-14 * (Math.Abs(across) + Math.Abs(along) + most) ? twice < most : IsOnTheWayExactly(sections[trunk], sections[from], sections[to]);
    }

    /// <summary>Whether a third trunk stands within the circle whose diameter is the line between two.</summary>
    /// <param name="x">The places to the right.</param>
    /// <param name="y">The places to the back.</param>
    /// <param name="trunk">The third.</param>
    /// <param name="from">One of the two.</param>
    /// <param name="to">The other.</param>
    /// <returns>True inside the circle; false on it.</returns>
    public static bool IsWithinCircle(ReadOnlySpan<double> x, ReadOnlySpan<double> y, int trunk, int from, int to)
    {
        var across = (x[trunk] - x[from]) * (x[trunk] - x[to]);
        var along = (y[trunk] - y[from]) * (y[trunk] - y[to]);
        var sum = across + along;
        if (Math.Abs(sum) > 1e-14 * (Math.Abs(across) + Math.Abs(along)))
        {
            return sum < 0;
        }

        return ((Int128)(x[trunk] - x[from]) * (Int128)(x[trunk] - x[to])) + ((Int128)(y[trunk] - y[from]) * (Int128)(y[trunk] - y[to])) < 0;
    }

    private static bool IsOnTheWayExactly(in TrunkSection trunk, in TrunkSection from, in TrunkSection to)
    {
        var twice = 2 * (BigInteger)Rod.Cross(from.Centre, to.Centre, trunk.Centre);
        BigInteger diameter = trunk.Diameter.Nanometres;
        return twice * twice <= diameter * diameter * Rod.Square(from.Centre, to.Centre);
    }
}
