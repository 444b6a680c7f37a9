using System.Globalization;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Surveying;

/// <summary>Knows a length that was written in another unit than it was measured in.</summary>
internal static class UnitSlip
{
    /// <summary>How far from a whole slip a length may be, as a share of it: a tape is not read to the last digit (our own choice).</summary>
    private const double Near = 0.02;

    /// <summary>What one unit is of another: of centimetres, millimetres, inches and metres.</summary>
    private static readonly double[] Ratios = [2.54, 10, 25.4, 39.37, 100, 1000];

    /// <summary>Says so where a length is what it should be, but in another unit.</summary>
    /// <param name="read">The length as it is written.</param>
    /// <param name="expected">What it may have been.</param>
    /// <returns>A sentence with a blank before it; an empty text where no unit explains it.</returns>
    public static string Hint(Length read, ReadOnlySpan<Length> expected)
    {
        foreach (var one in expected)
        {
            var (least, most) = read < one ? (read, one) : (one, read);
            if (least > Length.Zero && Array.Find(Ratios, ratio => Math.Abs((most / least) - ratio) <= Near * ratio) is > 0 and var times)
            {
                return string.Create(CultureInfo.InvariantCulture, $" {(read < one ? "It should be" : "It is")} {times} times as long{(read < one ? "" : " as it should be")}: see whether its unit is the one on the tape.");
            }
        }

        return "";
    }
}
