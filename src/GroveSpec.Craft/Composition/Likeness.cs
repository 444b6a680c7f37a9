using System.Numerics;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Composition;

/// <summary>How much two lengths are alike, decided exactly at a limit.</summary>
public static class Likeness
{
    /// <summary>By how much the shorter falls short of the longer.</summary>
    /// <param name="one">A length, not below zero.</param>
    /// <param name="other">Another.</param>
    /// <returns>Percent of the longer: 0 when they are the same, both zero included.</returns>
    public static double DifferenceInPercent(Length one, Length other)
    {
        var (shorter, longer) = Sort(one, other);
        return longer.Nanometres == 0 ? 0 : 100.0 * (longer.Nanometres - shorter.Nanometres) / longer.Nanometres;
    }

    /// <summary>Whether the shorter falls short of the longer by less than a limit.</summary>
    /// <param name="one">A length, from zero to the largest there is.</param>
    /// <param name="other">Another.</param>
    /// <param name="percent">The limit in percent of the longer, taken as the decimal that it prints as.</param>
    /// <returns>True when it does; false at the very limit.</returns>
    public static bool IsCloserThan(Length one, Length other, double percent)
    {
        var (shorter, longer) = Sort(one, other);
        double missing = 100.0 * (longer.Nanometres - shorter.Nanometres), allowed = percent * longer.Nanometres;
        if (IsDecided(missing, allowed))
        {
            return missing < allowed;
        }

        return 100m * (longer.Nanometres - shorter.Nanometres) < (decimal)percent * longer.Nanometres;
    }

    /// <summary>Whether a part is at most so many percent of a whole.</summary>
    /// <param name="part">The part, not below zero.</param>
    /// <param name="whole">The whole.</param>
    /// <param name="percent">The limit in percent, taken as the decimal that it prints as.</param>
    /// <returns>True when it is; true at the very limit.</returns>
    public static bool IsAtMostPart(Length part, Length whole, double percent)
    {
        double has = 100.0 * part.Nanometres, allowed = percent * whole.Nanometres;
        return IsDecided(has, allowed) ? has < allowed : 100m * part.Nanometres <= (decimal)percent * whole.Nanometres;
    }

    /// <summary>As <see cref="IsCloserThan"/>, for lengths of which only the squares are whole numbers.</summary>
    /// <param name="oneSquare">The square of one, in square nanometres.</param>
    /// <param name="otherSquare">The square of the other.</param>
    /// <param name="percent">The limit in percent of the longer, from 0 to 100.</param>
    /// <returns>True when they are closer; false at the very limit.</returns>
    internal static bool AreRootsCloserThan(Int128 oneSquare, Int128 otherSquare, double percent)
    {
        var (shorter, longer) = oneSquare <= otherSquare ? (oneSquare, otherSquare) : (otherSquare, oneSquare);
        var rest = 1 - (percent / 100);
        double left = (double)shorter, right = (double)longer * rest * rest;
        if (Math.Abs(left - right) > 1e-12 * (left + right))
        {
            return left > right;
        }

        // shorter / longer > 1 − p, so shorter² > (1 − p)² · longer², with p as a fraction of whole numbers.
        var limit = ExactLimit.Of(percent);
        var numerator = (100 * limit.Denominator) - limit.Numerator;
        var denominator = 100 * limit.Denominator;
        return (BigInteger)shorter * denominator * denominator > (BigInteger)longer * numerator * numerator;
    }

    /// <summary>Whether two amounts are so far apart that rounding cannot have decided; the decimals that decide exactly are slow.</summary>
    private static bool IsDecided(double one, double other) => Math.Abs(one - other) > 1e-12 * (Math.Abs(one) + Math.Abs(other));

    private static (Length Shorter, Length Longer) Sort(Length one, Length other) => one <= other ? (one, other) : (other, one);
}
