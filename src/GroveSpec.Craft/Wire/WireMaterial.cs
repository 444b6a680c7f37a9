using GroveSpec.Model.Quantities;
using GroveSpec.Model.Tasks;

namespace GroveSpec.Craft.Wire;

/// <summary>What a metal's wire is like before it is wound. Winding hardens it, by an amount that is not known here.</summary>
/// <param name="Metal">The metal.</param>
/// <param name="Stiffness">Its modulus of elasticity.</param>
/// <param name="Yield">The stress from which it stays bent.</param>
/// <param name="GramsPerCubicCentimetre">Its density in g/cm³.</param>
public sealed record WireMaterial(WireMetal Metal, Stress Stiffness, Stress Yield, double GramsPerCubicCentimetre)
{
    /// <summary>Soft aluminium, 1100-O. Source: a supplier's datasheet of 1100-O (68.9 GPa, 34.0 MPa); density from memory. What is anodised could not be found.</summary>
    public static readonly WireMaterial Aluminium = new(WireMetal.Aluminium, Stress.FromGigapascals(68.9), new Stress(34), 2.70);

    /// <summary>Annealed tough-pitch copper. Source: Smithells Metals Reference Book, table 22.7 (117 GPa, 54 MPa at 0.2 %); density from memory.</summary>
    public static readonly WireMaterial Copper = new(WireMetal.Copper, Stress.FromGigapascals(117), new Stress(54), 8.94);

    /// <summary>The material of a metal.</summary>
    /// <param name="metal">The metal.</param>
    /// <returns>Its figures.</returns>
    public static WireMaterial Of(WireMetal metal) => metal == WireMetal.Copper ? Copper : Aluminium;

    /// <summary>What a length of wire weighs.</summary>
    /// <param name="diameter">The wire's diameter.</param>
    /// <param name="length">Its length.</param>
    /// <returns>Its mass.</returns>
    public Mass MassOf(Length diameter, Length length) =>
        new(GramsPerCubicCentimetre * Math.PI / 4 * diameter.Millimetres * diameter.Millimetres * length.Millimetres / 1000);
}
