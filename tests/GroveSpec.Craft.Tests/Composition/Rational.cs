using System.Numerics;

namespace GroveSpec.Craft.Tests.Composition;

/// <summary>A fraction of whole numbers of any size.</summary>
/// <param name="Numerator">Above the line.</param>
/// <param name="Denominator">Below it, above zero.</param>
public readonly record struct Rational(BigInteger Numerator, BigInteger Denominator)
{
    public Rational Times(Rational other) => new(Numerator * other.Numerator, Denominator * other.Denominator);

    public int CompareTo(Rational other) => (Numerator * other.Denominator).CompareTo(other.Numerator * Denominator);

    public double ToDouble() => Numerator.IsZero ? 0 : Math.Exp(BigInteger.Log(Numerator) - BigInteger.Log(Denominator));
}
