using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Views;

/// <summary>
/// How a trunk thins from the soil to its tip. A trunk's diameter is measured above the root flare, so the share
/// of it at a height is a thinning factor, and below about one and a half diameters the flare is added.
/// </summary>
public static class Taper
{
    private const double TipShare = 0.07;
    private const double ThinningPower = 0.9;
    private const double FlareAtSoil = 0.42;
    private const double FlareFall = 2.6;

    /// <summary>
    /// The radius at a part of the trunk against the radius above the flare, without the flare: 1 at the soil,
    /// falling to a blunt tip by (1 − share)^0.9, between a cone (power 1) and a paraboloid (power ½), the usual
    /// forms of a stem in forest mensuration (from memory). The tip keeps 7 %.
    /// </summary>
    /// <param name="share">How far along the trunk, 0 at the soil and 1 at the tip; held between these.</param>
    /// <returns>A bare ratio from 1 down to the tip's.</returns>
    public static double Thinning(double share) =>
        TipShare + ((1 - TipShare) * Math.Pow(1 - Math.Clamp(share, 0, 1), ThinningPower));

    /// <summary>
    /// What the root flare adds to the radius, against the radius above the flare: 42 % at the soil, falling as
    /// exp(−2.6 × diameters above the soil), so that nothing of it is seen from two diameters on (our own choice, drawn from life).
    /// </summary>
    /// <param name="diametersAbove">How far above the soil, in diameters of the trunk; not negative.</param>
    /// <returns>A bare ratio.</returns>
    public static double Flare(double diametersAbove) => FlareAtSoil * Math.Exp(-FlareFall * diametersAbove);

    /// <summary>How thick a trunk is at a place along it, without the flare, which a wire does not lie on.</summary>
    /// <param name="diameter">Its diameter above the flare.</param>
    /// <param name="run">From the soil to the tip along the trunk.</param>
    /// <param name="along">The place, from the soil along the trunk; held between the soil and the tip.</param>
    /// <returns>The thickness; the diameter itself for a trunk without a run.</returns>
    public static Length ThicknessAt(Length diameter, Length run, Length along) => diameter * Thinning(run > Length.Zero ? along / run : 0);

    /// <summary>The radius of a trunk at a place along it, with its flare.</summary>
    /// <param name="diameter">Its diameter above the flare.</param>
    /// <param name="run">From the soil to the tip along the trunk.</param>
    /// <param name="share">How far along the trunk, 0 at the soil and 1 at the tip; held between these.</param>
    /// <returns>The radius; at most half as much again as half the diameter.</returns>
    public static Length RadiusAt(Length diameter, Length run, double share)
    {
        var above = diameter > Length.Zero ? Math.Clamp(share, 0, 1) * (run / diameter) : 0;
        return diameter * (0.5 * (Thinning(share) + Flare(above)));
    }
}
