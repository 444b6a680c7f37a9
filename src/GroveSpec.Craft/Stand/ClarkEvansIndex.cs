using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Stand;

/// <summary>
/// How far apart stems stand: the mean distance from each to the nearest, over what chance would give (Clark and Evans 1954,
/// Ecology 35:445–453; the formulas as in the R package spatstat). Under 1 stems crowd together, over 1 they keep apart; a
/// square lattice has 2, a hexagonal one 2.1491.
/// </summary>
public static class ClarkEvansIndex
{
    /// <summary>The index as it was first defined: against ½√(A/n), as if the ground went on for ever. With few stems it is too high, by a quarter at five.</summary>
    /// <param name="meanNearest">The mean distance to the nearest stem.</param>
    /// <param name="stems">How many stems, from 2.</param>
    /// <param name="areaInSquareMillimetres">The ground, above zero.</param>
    /// <returns>A bare number from 0.</returns>
    public static double Naive(Length meanNearest, int stems, double areaInSquareMillimetres) => meanNearest.Millimetres / Expected(stems, areaInSquareMillimetres);

    /// <summary>
    /// The index with the correction for the ground's edge: against ½√(A/n) + (0.0514 + 0.0412/√n)·P/n (Donnelly 1978, read in
    /// spatstat's source). It was made for rectangles; there chance gives 1 from three stems on.
    /// </summary>
    /// <param name="meanNearest">The mean distance to the nearest stem.</param>
    /// <param name="stems">How many stems, from 2.</param>
    /// <param name="areaInSquareMillimetres">The ground, above zero.</param>
    /// <param name="perimeter">The length of its edge.</param>
    /// <returns>A bare number from 0.</returns>
    public static double Donnelly(Length meanNearest, int stems, double areaInSquareMillimetres, Length perimeter) =>
        Donnelly(meanNearest.Millimetres, stems, areaInSquareMillimetres, perimeter.Millimetres);

    /// <summary>By how many standard errors √((4−π)A/4π)/n the mean distance is off ½√(A/n). With few stems it makes too much of little: up to seven the true spread is larger by a third.</summary>
    /// <param name="meanNearest">The mean distance to the nearest stem.</param>
    /// <param name="stems">How many stems, from 2.</param>
    /// <param name="areaInSquareMillimetres">The ground, above zero.</param>
    /// <returns>A bare number, negative where stems crowd together.</returns>
    public static double StandardScore(Length meanNearest, int stems, double areaInSquareMillimetres) =>
        (meanNearest.Millimetres - Expected(stems, areaInSquareMillimetres)) * stems / Math.Sqrt((4 - Math.PI) * areaInSquareMillimetres / (4 * Math.PI));

    /// <summary>As the public one, for inner loops.</summary>
    internal static double Donnelly(double meanNearestMm, int stems, double areaInSquareMillimetres, double perimeterMm) =>
        meanNearestMm / (Expected(stems, areaInSquareMillimetres) + ((0.0514 + (0.0412 / Math.Sqrt(stems))) * perimeterMm / stems));

    private static double Expected(int stems, double areaInSquareMillimetres) => Math.Sqrt(areaInSquareMillimetres / stems) / 2;
}
