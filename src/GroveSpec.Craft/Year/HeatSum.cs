namespace GroveSpec.Craft.Year;

/// <summary>Warmth gathered above a base temperature.</summary>
/// <param name="DegreeDays">Degrees Celsius above the base, summed over days; never negative.</param>
public readonly record struct HeatSum(double DegreeDays) : IComparable<HeatSum>
{
    /// <summary>Two sums together.</summary>
    public static HeatSum operator +(HeatSum left, HeatSum right) => new(left.DegreeDays + right.DegreeDays);

    /// <summary>Whether the left sum is the smaller.</summary>
    public static bool operator <(HeatSum left, HeatSum right) => left.DegreeDays < right.DegreeDays;

    /// <summary>Whether the left sum is the larger.</summary>
    public static bool operator >(HeatSum left, HeatSum right) => left.DegreeDays > right.DegreeDays;

    /// <summary>Whether the left sum is at most the right.</summary>
    public static bool operator <=(HeatSum left, HeatSum right) => left.DegreeDays <= right.DegreeDays;

    /// <summary>Whether the left sum is at least the right.</summary>
    public static bool operator >=(HeatSum left, HeatSum right) => left.DegreeDays >= right.DegreeDays;

    /// <summary>Two sums together.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">The other.</param>
    /// <returns>Their sum.</returns>
    public static HeatSum Add(HeatSum left, HeatSum right) => left + right;

    /// <inheritdoc/>
    public int CompareTo(HeatSum other) => DegreeDays.CompareTo(other.DegreeDays);
}
