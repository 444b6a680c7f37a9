using System.Numerics;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Composition;

/// <summary>
/// A straight rod through three trunks: how near one line can pass to all three centres at once, each measured
/// against the trunk's own radius.
/// </summary>
/// <remarks>
/// The closeness is the smallest t for which one line passes within t × radius of all three centres. With a line's
/// normal n, three intervals n·p ± t·r have a point in common when every two have, so that t is the least over all n
/// of the largest |n·(p−q)| / (r+s). At the least, two of the three pairs are as large as each other; they share a
/// trunk m, and the one way to hold both that is within reach of the third pair is n·(a−m) = t(ra+rm) and
/// n·(b−m) = t(rb+rm). Eliminating n, |n| = 1, gives for each choice of m
/// t = |S| / |(ra−rb)(a−m) − (ra+rm)(a−b)| with S = (a−m) × (a−b), and the least of the three is the closeness
/// (own derivation). All of it is worked in whole nanometres, so that place, order and a turn of the plan by a
/// quarter change nothing, not even in the last digit of a limit.
/// </remarks>
public static class Rod
{
    /// <summary>The closeness of the best line through three trunks.</summary>
    /// <param name="first">One trunk.</param>
    /// <param name="second">Another.</param>
    /// <param name="third">The third.</param>
    /// <returns>The smallest t, a bare ratio: 0 when the centres lie on one line, infinite when all diameters are zero and they do not.</returns>
    public static double Closeness(in TrunkSection first, in TrunkSection second, in TrunkSection third)
    {
        var cross = Int128.Abs(Cross(first.Centre, second.Centre, third.Centre));
        if (cross == 0)
        {
            return 0;
        }

        var largest = Math.Max(Weight(first, second, third), Math.Max(Weight(second, third, first), Weight(third, first, second)));
        return largest == 0 ? double.PositiveInfinity : 2 * (double)cross / largest;
    }

    /// <summary>Whether one line passes within a limit, decided exactly.</summary>
    /// <param name="first">One trunk.</param>
    /// <param name="second">Another.</param>
    /// <param name="third">The third.</param>
    /// <param name="limit">The largest closeness that counts, a bare ratio from 0 to 1e6.</param>
    /// <returns>True when the closeness is at most the limit, taken as the decimal that it prints as.</returns>
    public static bool Passes(in TrunkSection first, in TrunkSection second, in TrunkSection third, double limit)
    {
        var closeness = Closeness(first, second, third);
        return Math.Abs(closeness - limit) > 1e-12 * (closeness + limit) ? closeness < limit : PassesExactly(first, second, third, limit);
    }

    /// <summary>Twice the area that three places span, exact, in square nanometres; above zero when they run anticlockwise.</summary>
    internal static Int128 Cross(PlanPoint a, PlanPoint b, PlanPoint c)
    {
        Int128 bx = b.X.Nanometres - a.X.Nanometres, by = b.Y.Nanometres - a.Y.Nanometres;
        Int128 cx = c.X.Nanometres - a.X.Nanometres, cy = c.Y.Nanometres - a.Y.Nanometres;
        return (bx * cy) - (by * cx);
    }

    /// <summary>The square of a distance, exact, in square nanometres.</summary>
    internal static Int128 Square(PlanPoint from, PlanPoint to)
    {
        Int128 x = to.X.Nanometres - from.X.Nanometres, y = to.Y.Nanometres - from.Y.Nanometres;
        return (x * x) + (y * y);
    }

    /// <summary>The length of twice (ra−rb)(a−m) − (ra+rm)(a−b), in square nanometres.</summary>
    private static double Weight(in TrunkSection a, in TrunkSection m, in TrunkSection b)
    {
        var (x, y) = WeightVector(a, m, b);
        double wide = (double)x, high = (double)y;
        return Math.Sqrt((wide * wide) + (high * high));
    }

    private static (Int128 X, Int128 Y) WeightVector(in TrunkSection a, in TrunkSection m, in TrunkSection b)
    {
        Int128 difference = a.Diameter.Nanometres - b.Diameter.Nanometres, sum = a.Diameter.Nanometres + m.Diameter.Nanometres;
        return (
            (difference * (a.Centre.X.Nanometres - m.Centre.X.Nanometres)) - (sum * (a.Centre.X.Nanometres - b.Centre.X.Nanometres)),
            (difference * (a.Centre.Y.Nanometres - m.Centre.Y.Nanometres)) - (sum * (a.Centre.Y.Nanometres - b.Centre.Y.Nanometres)));
    }

    private static bool PassesExactly(in TrunkSection first, in TrunkSection second, in TrunkSection third, double limit)
    {
        var exact = ExactLimit.Of(limit);
        var left = 2 * exact.Denominator * (BigInteger)Cross(first.Centre, second.Centre, third.Centre);
        var most = BigInteger.Max(WeightSquare(first, second, third), BigInteger.Max(WeightSquare(second, third, first), WeightSquare(third, first, second)));
        return left * left <= exact.Numerator * exact.Numerator * most;
    }

    private static BigInteger WeightSquare(in TrunkSection a, in TrunkSection m, in TrunkSection b)
    {
        var (x, y) = WeightVector(a, m, b);
        return ((BigInteger)x * x) + ((BigInteger)y * y);
    }
}
