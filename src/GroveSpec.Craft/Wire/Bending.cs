using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Wire;

/// <summary>
/// The mechanics of a trunk and a wire that are bent together. They compare; they promise nothing: living wood yields and creeps, by
/// amounts that have not been measured. Source: the bending of round bars, elastic and fully plastic.
/// </summary>
public static class Bending
{
    // Poisson's ratio of the metals, from memory.
    private const double PoissonRatio = 0.33;

    /// <summary>The radius into which a part of the trunk is bent: its length over the angle.</summary>
    /// <param name="over">The length along the trunk, above zero.</param>
    /// <param name="angle">The change of direction, above 0°.</param>
    /// <returns>The radius of the trunk's axis; at most the largest length the language takes.</returns>
    public static Length Radius(Length over, Angle angle) => AtMostLargest(over.Millimetres / angle.Radians);

    /// <summary>How far the outer fibres are stretched: D / 2R.</summary>
    /// <param name="thickness">The thickness D.</param>
    /// <param name="radius">The radius R of the axis, above zero.</param>
    /// <returns>The strain, a bare ratio.</returns>
    public static Proportion OuterFibreStrain(Length thickness, Length radius) => new(thickness / radius / 2);

    /// <summary>The length over which a bend has a given strain at most: D × angle / 2ε.</summary>
    /// <param name="thickness">The thickness D.</param>
    /// <param name="angle">The change of direction.</param>
    /// <param name="strain">The strain ε, above zero.</param>
    /// <returns>The length along the trunk; at most the largest length the language takes.</returns>
    public static Length LengthFor(Length thickness, Angle angle, Proportion strain) => AtMostLargest(thickness.Millimetres * angle.Radians / (2 * strain.Share));

    /// <summary>The moment that holds springy wood at a strain: Eε × πD³/32.</summary>
    /// <param name="stiffness">The wood's modulus of elasticity E.</param>
    /// <param name="strain">The strain ε of the outer fibres.</param>
    /// <param name="thickness">The thickness D.</param>
    /// <returns>The moment.</returns>
    public static BendingMoment OfWood(Stress stiffness, Proportion strain, Length thickness) =>
        new(stiffness.Megapascals * strain.Share * Math.PI * Cube(thickness) / 32);

    /// <summary>The most that wires bear once they have yielded: N × σd³/6.</summary>
    /// <param name="yield">The metal's yield stress σ.</param>
    /// <param name="diameter">The diameter d of one.</param>
    /// <param name="strands">How many, N.</param>
    /// <returns>The moment.</returns>
    public static BendingMoment OfWires(Stress yield, Length diameter, int strands) => new(strands * yield.Megapascals * Cube(diameter) / 6);

    /// <summary>The wire, as a share of the trunk's thickness, whose moment equals that of springy wood: (6πεE / 32Nσ)^⅓ (own derivation).</summary>
    /// <param name="strain">The strain ε of the outer fibres.</param>
    /// <param name="stiffness">The wood's modulus of elasticity E.</param>
    /// <param name="yield">The metal's yield stress σ.</param>
    /// <param name="strands">How many wires, N.</param>
    /// <returns>The share, a bare ratio.</returns>
    public static double BalancingShare(Proportion strain, Stress stiffness, Stress yield, int strands) =>
        Math.Cbrt(6 * Math.PI * strain.Share * (stiffness / yield) / (32 * strands));

    /// <summary>What a wire keeps of its bend when it is let go, alone: 1 − M / EIκ, with M = σd³/6, I = πd⁴/64 and κ = 1 / R.</summary>
    /// <param name="material">The metal.</param>
    /// <param name="diameter">The wire's diameter d.</param>
    /// <param name="radius">The radius R into which it is bent.</param>
    /// <returns>The share kept, from 0, for a wire that is not bent past its spring.</returns>
    public static Proportion KeptAlone(WireMaterial material, Length diameter, Length radius) =>
        new(Math.Max(0, 1 - (64 / (6 * Math.PI) * (material.Yield / material.Stiffness) * (radius / diameter))));

    /// <summary>How stiff a wound wire is against a straight one: 2cos ψ / (2 + ν sin² ψ). Source: Costello, Theory of Wire Rope (from memory).</summary>
    /// <param name="coil">The angle ψ from the trunk's axis.</param>
    /// <returns>The share, a bare ratio.</returns>
    public static double StiffnessOfCoil(Angle coil)
    {
        var sine = Math.Sin(coil.Radians);
        return 2 * Math.Cos(coil.Radians) / (2 + (PoissonRatio * sine * sine));
    }

    private static Length AtMostLargest(double millimetres) => Length.FromMillimetres(Math.Min(Length.Largest.Millimetres, millimetres));

    private static double Cube(Length length) => length.Millimetres * length.Millimetres * length.Millimetres;
}
