using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Wire;

/// <summary>
/// A wire wound round a trunk at one angle to its axis. Its middle runs at the radius (D + d) / 2, with D the trunk's thickness and d
/// the wire's. Source: the helix on a cylinder and on a cone unrolled into the plane.
/// </summary>
public static class Helix
{
    /// <summary>How long the wire is that covers a part of the trunk: L / cos ψ, whatever the thickness.</summary>
    /// <param name="run">The part L of the trunk, along it.</param>
    /// <param name="coil">The angle ψ from the trunk's axis, from 0° to below 90°.</param>
    /// <returns>The wire's length.</returns>
    public static Length Length(Length run, Angle coil) => run * (1 / Math.Cos(coil.Radians));

    /// <summary>How far one turn climbs: π(D + d) / tan ψ.</summary>
    /// <param name="trunk">The trunk's thickness D.</param>
    /// <param name="wire">The wire's diameter d.</param>
    /// <param name="coil">The angle ψ from the trunk's axis, above 0° and below 90°.</param>
    /// <returns>The pitch.</returns>
    public static Length Pitch(Length trunk, Length wire, Angle coil) => (trunk + wire) * (Math.PI / Math.Tan(coil.Radians));

    /// <summary>
    /// How many turns there are on a part of the trunk that thins evenly: (tan ψ / π) × L / (D₀ − D₁) × ln((D₀ + d) / (D₁ + d)),
    /// and L over the pitch where it does not thin.
    /// </summary>
    /// <param name="run">The part L of the trunk, along it.</param>
    /// <param name="lower">Its thickness D₀ at the lower end.</param>
    /// <param name="upper">Its thickness D₁ at the upper end.</param>
    /// <param name="wire">The wire's diameter d.</param>
    /// <param name="coil">The angle ψ from the trunk's axis, from 0° to below 90°.</param>
    /// <returns>The turns, a bare number.</returns>
    public static double Turns(Length run, Length lower, Length upper, Length wire, Angle coil)
    {
        var (from, to) = ((lower + wire).Millimetres, (upper + wire).Millimetres);

        // As the two come together, ln(a / b) / (a − b) becomes 1 / a; below a millionth the quotient has lost its digits.
        var perMillimetre = Math.Abs(from - to) < 1e-6 * from ? 2 / (from + to) : Math.Log(from / to) / (from - to);
        return Math.Tan(coil.Radians) / Math.PI * run.Millimetres * perMillimetre;
    }
}
