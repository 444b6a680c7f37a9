using System.Globalization;
using System.Numerics;

namespace GroveSpec.Binding.Quantities;

/// <summary>Reads plain decimal numbers without losing a digit.</summary>
internal static class DecimalNumber
{
    /// <summary>More digits than this are no measurement.</summary>
    public const int MostDigits = 1000;

    /// <summary>Whether a text is a number as the language writes them: a minus sign or none, digits, and a point with digits or none.</summary>
    /// <param name="text">The text.</param>
    /// <returns>True when it is.</returns>
    public static bool IsPlain(ReadOnlySpan<char> text)
    {
        if (!text.IsEmpty && text[0] is '-' or '+')
        {
            text = text[1..];
        }

        var point = text.IndexOf('.');
        return point < 0
            ? AreDigits(text)
            : AreDigits(text[..point]) && AreDigits(text[(point + 1)..]);
    }

    /// <summary>A number times a whole factor, rounded once to the nearest whole number, halves away from zero.</summary>
    /// <param name="text">A plain number of at most <see cref="MostDigits"/> digits.</param>
    /// <param name="factor">The factor, above zero and at most 10^12.</param>
    /// <returns>The product; null where it does not fit into 62 bits.</returns>
    public static long? Scaled(ReadOnlySpan<char> text, long factor)
    {
        var isNegative = text[0] == '-';
        if (text[0] is '-' or '+')
        {
            text = text[1..];
        }

        var point = text.IndexOf('.');
        var decimals = point < 0 ? 0 : text.Length - point - 1;
        long? magnitude;
        if (text.Length <= 17)
        {
            long digits = 0;
            foreach (var unit in text)
            {
                if (unit != '.')
                {
                    digits = (digits * 10) + (unit - '0');
                }
            }

            long divisor = 1;
            for (var index = 0; index < decimals; index++)
            {
                divisor *= 10;
            }

            magnitude = Rounded(digits, factor, divisor);
        }
        else
        {
            magnitude = ScaledAtLength(text, point, decimals, factor);
        }

        return isNegative ? -magnitude : magnitude;
    }

    /// <summary>The nearest double.</summary>
    /// <param name="text">A plain number.</param>
    /// <returns>The number, infinite where it is beyond a double.</returns>
    public static double AsDouble(ReadOnlySpan<char> text)
    {
        var value = double.Parse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        return value == 0 ? 0 : value;
    }

    /// <summary>Twice the product plus the divisor, over twice the divisor, is the quotient rounded half up. Few numbers need more than 64 bits, and those are slow.</summary>
    private static long? Rounded(long digits, long factor, long divisor)
    {
        if (digits <= long.MaxValue / 4 / factor && divisor <= long.MaxValue / 4)
        {
            return ((digits * factor * 2) + divisor) / (divisor * 2);
        }

        var rounded = (((Int128)digits * factor * 2) + divisor) / ((Int128)divisor * 2);
        return rounded > long.MaxValue / 2 ? null : (long)rounded;
    }

    private static long? ScaledAtLength(ReadOnlySpan<char> text, int point, int decimals, long factor)
    {
        var digits = point < 0 ? text.ToString() : string.Concat(text[..point], text[(point + 1)..]);
        var divisor = BigInteger.Pow(10, decimals);
        var rounded = ((BigInteger.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture) * factor * 2) + divisor) / (divisor * 2);
        return rounded > long.MaxValue / 2 ? null : (long)rounded;
    }

    private static bool AreDigits(ReadOnlySpan<char> text)
    {
        foreach (var unit in text)
        {
            if (unit is < '0' or > '9')
            {
                return false;
            }
        }

        return !text.IsEmpty;
    }
}
