using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Wire;

/// <summary>American wire gauge: a size each a fixed part thinner than the one before. Source: ASTM B258, as d = 0.127 mm × 92^((36 − n) / 39).</summary>
public static class WireGauge
{
    /// <summary>The diameter of a gauge.</summary>
    /// <param name="number">Its number; the larger, the thinner.</param>
    /// <returns>The diameter.</returns>
    public static Length Diameter(int number) => Length.FromMillimetres(0.127 * Math.Pow(92, (36 - number) / 39.0));
}
