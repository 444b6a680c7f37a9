using System.Collections.Immutable;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Stand;

/// <summary>How unequally a whole is shared: Σ(2i − n − 1)x₍ᵢ₎ / (n Σx), x sorted, i from 1 (Gini 1912; the form from the reference values).</summary>
public static class GiniCoefficient
{
    /// <summary>Of amounts.</summary>
    /// <param name="amounts">The amounts, none negative, in any order.</param>
    /// <returns>From 0, all alike, to (n−1)/n, one has all; null where there is nothing to share.</returns>
    public static double? Of(ImmutableArray<double> amounts)
    {
        double[] sorted = [.. amounts];
        return sorted.Length == 0 ? null : OfUnsorted(sorted);
    }

    /// <summary>Of the basal area, which goes with the square of the diameter.</summary>
    /// <param name="diameters">The diameters.</param>
    /// <returns>As <see cref="Of"/>.</returns>
    public static double? OfBasalArea(ImmutableArray<Length> diameters) => Of([.. diameters.Select(diameter => diameter.Millimetres * diameter.Millimetres)]);

    /// <summary>What the coefficient would be could all of it go to one: n/(n−1) times, so that few stems and many can be laid side by side.</summary>
    /// <param name="gini">The coefficient.</param>
    /// <param name="stems">How many stems, from 2.</param>
    /// <returns>From 0 to 1.</returns>
    public static double ForFew(double gini, int stems) => gini * stems / (stems - 1);

    /// <summary>As <see cref="Of"/>, for inner loops; sorts the amounts.</summary>
    internal static double? OfUnsorted(double[] amounts)
    {
        Array.Sort(amounts);
        double weighted = 0, sum = 0;
        for (var index = 0; index < amounts.Length; index++)
        {
            weighted += ((2 * index) + 1 - amounts.Length) * amounts[index];
            sum += amounts[index];
        }

        return sum > 0 ? weighted / (amounts.Length * sum) : null;
    }
}
