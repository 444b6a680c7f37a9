using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Tasks;

namespace GroveSpec.Craft.Wire;

/// <summary>The sizes of wire that are sold, and how they stand to one another.</summary>
public static class WireSizes
{
    /// <summary>Aluminium from 1 to 6 mm in steps of half a millimetre. Source: common in the trade, from memory.</summary>
    private static readonly ImmutableArray<WireSize> Aluminium =
        [.. Enumerable.Range(2, 11).Select(half => new WireSize(WireMetal.Aluminium, Length.FromMillimetres(half / 2.0), null, 1))];

    /// <summary>Copper in the even gauges from 18 to 6. Source: common in the trade, from memory.</summary>
    private static readonly ImmutableArray<WireSize> Copper =
        [.. Enumerable.Range(0, 7).Select(step => 18 - (2 * step)).Select(gauge => new WireSize(WireMetal.Copper, Hundredths(WireGauge.Diameter(gauge)), gauge, 1))];

    /// <summary>The sizes of a metal, the thinnest first.</summary>
    /// <param name="metal">The metal.</param>
    /// <returns>Single wires.</returns>
    public static ImmutableArray<WireSize> Sold(WireMetal metal) => metal == WireMetal.Copper ? Copper : Aluminium;

    /// <summary>
    /// The single aluminium wire that bends as hard as some wires side by side. A wire that has yielded bends with σd³/6, so that
    /// N wires of diameter d and yield stress σ are as one of d × (Nσ / σ of aluminium)^⅓. Source: plastic bending of a round bar.
    /// </summary>
    /// <param name="metal">The metal.</param>
    /// <param name="diameter">The diameter of one.</param>
    /// <param name="strands">How many, at least one.</param>
    /// <returns>The diameter.</returns>
    public static Length AluminiumEqual(WireMetal metal, Length diameter, int strands) =>
        diameter * Math.Cbrt(strands * (WireMaterial.Of(metal).Yield / WireMaterial.Aluminium.Yield));

    /// <summary>The size that comes nearest.</summary>
    /// <param name="metal">The metal it is to be of.</param>
    /// <param name="wanted">The diameter of one aluminium wire.</param>
    /// <param name="strands">How many lie side by side, at least one.</param>
    /// <returns>The size; of two as near the thinner. The thickest sold where that is still too thin.</returns>
    public static WireSize Nearest(WireMetal metal, Length wanted, int strands) =>
        Sold(metal).Select(size => size with { Strands = strands }).MinBy(size => Math.Abs((size.AluminiumEqual - wanted).Nanometres));

    // What a caliper reads, and what a file says.
    private static Length Hundredths(Length diameter) => Length.FromMillimetres(Math.Round(diameter.Millimetres, 2, MidpointRounding.AwayFromZero));
}
