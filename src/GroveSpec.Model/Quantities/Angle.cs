namespace GroveSpec.Model.Quantities;

/// <summary>An angle between two directions, such as a lean from the upright or a coil from the trunk's axis.</summary>
/// <param name="Degrees">The angle in degrees, as given: it is not folded into a full turn.</param>
public readonly record struct Angle(double Degrees) : IComparable<Angle>
{
    /// <summary>The angle in radians.</summary>
    public double Radians => Degrees * Math.PI / 180;

    /// <inheritdoc/>
    public int CompareTo(Angle other) => Degrees.CompareTo(other.Degrees);

    /// <summary>Whether the left angle is the smaller.</summary>
    public static bool operator <(Angle left, Angle right) => left.Degrees < right.Degrees;

    /// <summary>Whether the left angle is the larger.</summary>
    public static bool operator >(Angle left, Angle right) => left.Degrees > right.Degrees;

    /// <summary>Whether the left angle is at most the right.</summary>
    public static bool operator <=(Angle left, Angle right) => left.Degrees <= right.Degrees;

    /// <summary>Whether the left angle is at least the right.</summary>
    public static bool operator >=(Angle left, Angle right) => left.Degrees >= right.Degrees;

    /// <inheritdoc/>
    public override string ToString() => $"{Degrees:0.######} deg";
}
