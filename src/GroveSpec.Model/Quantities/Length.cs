namespace GroveSpec.Model.Quantities;

/// <summary>
/// A distance, kept as a whole number of nanometres, so that sums, comparisons and printing are exact
/// and an inch (25.4 mm by definition, ISO 80000-3) loses nothing.
/// </summary>
/// <param name="Nanometres">The distance in nanometres; negative along a negative axis.</param>
public readonly record struct Length(long Nanometres) : IComparable<Length>
{
    /// <summary>Nanometres in a millimetre.</summary>
    public const long NanometresPerMillimetre = 1_000_000;

    /// <summary>The largest distance, either way, that the language takes: one kilometre.</summary>
    public static readonly Length Largest = new(1_000_000L * NanometresPerMillimetre);

    /// <summary>No distance.</summary>
    public static readonly Length Zero;

    /// <summary>The distance in millimetres. Every <see cref="Length"/> up to 9 km is given without rounding.</summary>
    public double Millimetres => Nanometres / (double)NanometresPerMillimetre;

    /// <summary>The distance in inches of 25.4 mm.</summary>
    public double Inches => Nanometres / (25.4 * NanometresPerMillimetre);

    /// <summary>Makes a distance from millimetres, rounded to the nearest nanometre, halves away from zero.</summary>
    /// <param name="millimetres">Millimetres, finite and within ±9e12.</param>
    /// <returns>The distance.</returns>
    /// <exception cref="OverflowException">The value is not a number or does not fit.</exception>
    public static Length FromMillimetres(double millimetres) =>
        new(checked((long)Math.Round(millimetres * NanometresPerMillimetre, MidpointRounding.AwayFromZero)));

    /// <summary>How long it is, whichever way it goes.</summary>
    public Length Magnitude => Nanometres < 0 ? -this : this;

    /// <inheritdoc/>
    public int CompareTo(Length other) => Nanometres.CompareTo(other.Nanometres);

    /// <summary>The sum of two distances.</summary>
    public static Length operator +(Length left, Length right) => new(left.Nanometres + right.Nanometres);

    /// <summary>The difference of two distances.</summary>
    public static Length operator -(Length left, Length right) => new(left.Nanometres - right.Nanometres);

    /// <summary>The same distance the other way.</summary>
    public static Length operator -(Length value) => new(-value.Nanometres);

    /// <summary>A distance scaled by a bare factor, rounded to the nearest nanometre.</summary>
    public static Length operator *(Length value, double factor) => FromMillimetres(value.Millimetres * factor);

    /// <summary>How many times one distance goes into another, a bare ratio.</summary>
    public static double operator /(Length left, Length right) => (double)left.Nanometres / right.Nanometres;

    /// <summary>Whether the left distance is the shorter.</summary>
    public static bool operator <(Length left, Length right) => left.Nanometres < right.Nanometres;

    /// <summary>Whether the left distance is the longer.</summary>
    public static bool operator >(Length left, Length right) => left.Nanometres > right.Nanometres;

    /// <summary>Whether the left distance is at most the right.</summary>
    public static bool operator <=(Length left, Length right) => left.Nanometres <= right.Nanometres;

    /// <summary>Whether the left distance is at least the right.</summary>
    public static bool operator >=(Length left, Length right) => left.Nanometres >= right.Nanometres;

    /// <inheritdoc/>
    public override string ToString() => $"{Millimetres:0.######} mm";
}
