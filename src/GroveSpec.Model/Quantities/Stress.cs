namespace GroveSpec.Model.Quantities;

/// <summary>A force on an area, such as a metal's yield stress or a wood's modulus of elasticity.</summary>
/// <param name="Megapascals">The stress in MPa, which is N/mm².</param>
public readonly record struct Stress(double Megapascals) : IComparable<Stress>
{
    /// <summary>Makes a stress from gigapascals.</summary>
    /// <param name="gigapascals">The stress in GPa, finite.</param>
    /// <returns>The stress.</returns>
    public static Stress FromGigapascals(double gigapascals) => new(gigapascals * 1000);

    /// <inheritdoc/>
    public int CompareTo(Stress other) => Megapascals.CompareTo(other.Megapascals);

    /// <summary>How many times one stress goes into another, a bare ratio.</summary>
    public static double operator /(Stress left, Stress right) => left.Megapascals / right.Megapascals;

    /// <summary>Whether the left stress is the smaller.</summary>
    public static bool operator <(Stress left, Stress right) => left.Megapascals < right.Megapascals;

    /// <summary>Whether the left stress is the larger.</summary>
    public static bool operator >(Stress left, Stress right) => left.Megapascals > right.Megapascals;

    /// <summary>Whether the left stress is at most the right.</summary>
    public static bool operator <=(Stress left, Stress right) => left.Megapascals <= right.Megapascals;

    /// <summary>Whether the left stress is at least the right.</summary>
    public static bool operator >=(Stress left, Stress right) => left.Megapascals >= right.Megapascals;

    /// <inheritdoc/>
    public override string ToString() => $"{Megapascals:0.######} MPa";
}
