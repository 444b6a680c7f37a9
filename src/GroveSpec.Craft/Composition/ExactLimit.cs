using System.Numerics;

namespace GroveSpec.Craft.Composition;

/// <summary>A limit as the fraction of whole numbers that its decimal spelling names: 0.1 is one tenth, and no binary neighbour of it.</summary>
/// <param name="Numerator">Above the line.</param>
/// <param name="Denominator">Below the line, above zero.</param>
internal readonly record struct ExactLimit(BigInteger Numerator, BigInteger Denominator)
{
    /// <summary>The fraction of a limit.</summary>
    /// <param name="limit">The limit, within ±1e12, as read from a decimal of up to 15 digits.</param>
    /// <returns>The fraction, not in lowest terms.</returns>
    public static ExactLimit Of(double limit)
    {
        Span<int> bits = stackalloc int[4];
        decimal.GetBits((decimal)limit, bits);
        var digits = new BigInteger((uint)bits[2]);
        digits = (digits << 32) | (uint)bits[1];
        digits = (digits << 32) | (uint)bits[0];
        var scale = (bits[3] >> 16) & 0xff;
        return new(bits[3] < 0 ? -digits : digits, BigInteger.Pow(10, scale));
    }
}
