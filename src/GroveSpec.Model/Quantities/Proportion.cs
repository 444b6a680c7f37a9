namespace GroveSpec.Model.Quantities;

/// <summary>A part of a whole, written in percent.</summary>
/// <param name="Share">The part as a bare number: 0.08 for 8 %.</param>
public readonly record struct Proportion(double Share) : IComparable<Proportion>
{
    /// <summary>The part in percent.</summary>
    public double Percent => Share * 100;

    /// <summary>Makes a proportion from percent.</summary>
    /// <param name="percent">Percent, finite.</param>
    /// <returns>The proportion.</returns>
    public static Proportion FromPercent(double percent) => new(percent / 100);

    /// <inheritdoc/>
    public int CompareTo(Proportion other) => Share.CompareTo(other.Share);

    /// <summary>Whether the left part is the smaller.</summary>
    public static bool operator <(Proportion left, Proportion right) => left.Share < right.Share;

    /// <summary>Whether the left part is the larger.</summary>
    public static bool operator >(Proportion left, Proportion right) => left.Share > right.Share;

    /// <summary>Whether the left part is at most the right.</summary>
    public static bool operator <=(Proportion left, Proportion right) => left.Share <= right.Share;

    /// <summary>Whether the left part is at least the right.</summary>
    public static bool operator >=(Proportion left, Proportion right) => left.Share >= right.Share;

    /// <inheritdoc/>
    public override string ToString() => $"{Percent:0.######} %";
}
