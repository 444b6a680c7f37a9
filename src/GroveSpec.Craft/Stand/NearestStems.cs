using GroveSpec.Craft.Composition;

namespace GroveSpec.Craft.Stand;

/// <summary>The nearest stems of each stem, and what follows from the places alone.</summary>
internal sealed class NearestStems
{
    /// <summary>How many neighbours the angle and the dominance index ask.</summary>
    public const int Four = 4;

    // So many more are looked at, so that of several as near as the fourth the same ones are taken whichever way they are found.
    private const int Looked = 8;

    // Squares of one distance differ by rounding only.
    private const double Rounding = 1e-12;

    // Gadow and Hui's standard angle, a turn over five, as in the R package forestSAS.
    private const double StandardAngleInRadians = 72 * Math.PI / 180;

    private readonly double[] x;
    private readonly double[] y;
    private readonly int[] neighbours;
    private readonly int width;

    /// <summary>
    /// Looks for the four nearest of each. Those as near as each other are taken clockwise from the back left, so that neither
    /// the file's order nor rounding chooses. In stands read to a rough grid there are such ties, and the choice moves the
    /// uniform angle index by up to 0.01; this one gives what R gave for each of the four stands that it is tested against.
    /// </summary>
    /// <param name="xs">Their places to the right, in any unit.</param>
    /// <param name="ys">Their places to the back, in the same unit.</param>
    public NearestStems(double[] xs, double[] ys)
    {
        (x, y) = (xs, ys);
        width = Math.Min(Four, Math.Max(0, xs.Length - 1));
        neighbours = new int[width * xs.Length];
        var tree = new PointTree(xs, ys);
        Span<int> found = stackalloc int[Math.Min(Looked, Math.Max(0, xs.Length - 1))];
        Span<double> squares = stackalloc double[found.Length];
        for (var stem = 0; stem < xs.Length; stem++)
        {
            tree.Nearest(stem, double.PositiveInfinity, found, squares);
            SortTies(stem, found, squares);
            found[..width].CopyTo(neighbours.AsSpan(stem * width, width));
        }
    }

    /// <summary>How many stems there are.</summary>
    public int Count => x.Length;

    /// <summary>The nearest stems of one, nearest first: four, or all others where they are fewer.</summary>
    /// <param name="stem">Which.</param>
    /// <returns>Their numbers.</returns>
    public ReadOnlySpan<int> Of(int stem) => neighbours.AsSpan(stem * width, width);

    /// <summary>The distance from a stem to its nearest, in the unit of the places.</summary>
    /// <param name="stem">Which.</param>
    /// <returns>The distance.</returns>
    public double NearestDistance(int stem)
    {
        var other = Of(stem)[0];
        double dx = x[other] - x[stem], dy = y[other] - y[stem];
        return Math.Sqrt((dx * dx) + (dy * dy));
    }

    /// <summary>The mean of the distances to the nearest; at least two stems.</summary>
    /// <returns>The mean, in the unit of the places.</returns>
    public double MeanNearestDistance()
    {
        var sum = 0.0;
        for (var stem = 0; stem < Count; stem++)
        {
            sum += NearestDistance(stem);
        }

        return sum / Count;
    }

    /// <summary>
    /// The mean uniform angle index: of the four angles between one neighbour and the next round a stem, the share under 72
    /// degrees (Gadow and Hui; the definition from the reference values). An angle past the half turn is taken the other way.
    /// </summary>
    /// <returns>From 0, in a lattice, to 1, all to one side; null with fewer than five stems, and where one has a neighbour at its very place, whose direction nobody can say.</returns>
    public double? UniformAngle()
    {
        if (Count <= Four)
        {
            return null;
        }

        var under = 0;
        Span<double> bearings = stackalloc double[Four];
        for (var stem = 0; stem < Count; stem++)
        {
            var own = Of(stem);
            for (var index = 0; index < Four; index++)
            {
                double dx = x[own[index]] - x[stem], dy = y[own[index]] - y[stem];
                if (dx == 0 && dy == 0)
                {
                    return null;
                }

                bearings[index] = Math.Atan2(dy, dx);
            }

            bearings.Sort();
            for (var index = 0; index < Four; index++)
            {
                var angle = index < Four - 1 ? bearings[index + 1] - bearings[index] : bearings[0] + (2 * Math.PI) - bearings[index];
                under += Math.Min(angle, (2 * Math.PI) - angle) < StandardAngleInRadians ? 1 : 0;
            }
        }

        return (double)under / (Four * Count);
    }

    private void SortTies(int stem, Span<int> found, ReadOnlySpan<double> squares)
    {
        for (var start = 0; start < found.Length;)
        {
            var end = start + 1;
            while (end < found.Length && squares[end] - squares[start] <= Rounding * squares[end])
            {
                end++;
            }

            for (var index = start + 1; index < end; index++)
            {
                for (var slot = index; slot > start && IsBefore(stem, found[slot], found[slot - 1]); slot--)
                {
                    (found[slot], found[slot - 1]) = (found[slot - 1], found[slot]);
                }
            }

            start = end;
        }
    }

    private bool IsBefore(int stem, int one, int other) => ClockwiseFromBackLeft(stem, one) < ClockwiseFromBackLeft(stem, other) - Rounding;

    private double ClockwiseFromBackLeft(int stem, int other)
    {
        var turn = (0.75 * Math.PI) - Math.Atan2(y[other] - y[stem], x[other] - x[stem]);
        return turn < -Rounding ? turn + (2 * Math.PI) : turn;
    }
}
