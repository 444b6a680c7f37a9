namespace GroveSpec.Craft.Year;

/// <summary>
/// Where the sun stands. Source: J. Meeus, Astronomical Algorithms, chapter 25, low accuracy (from memory, and held against an
/// astronomical library by a test of day lengths); within about 0.01° for some centuries about 2000.
/// </summary>
/// <param name="DeclinationRadians">How far north of the equator it stands overhead, in radians; negative south of it.</param>
/// <param name="RadiusDegrees">Half its width as it is seen, in degrees.</param>
internal readonly record struct SunPlace(double DeclinationRadians, double RadiusDegrees)
{
    private const double DaysOfCentury = 36525;

    // Half the sun's width at its mean distance: 959.63 seconds of arc.
    private const double MeanRadiusDegrees = 959.63 / 3600;

    /// <summary>The sun at a moment.</summary>
    /// <param name="daysSince2000">Days since noon of 1 January 2000, universal time; the hour is part of it.</param>
    /// <returns>Its place.</returns>
    public static SunPlace At(double daysSince2000)
    {
        var centuries = daysSince2000 / DaysOfCentury;
        var anomaly = Radians(357.52911 + (centuries * (35999.05029 - (0.0001537 * centuries))));
        var equationDegrees = ((1.914602 - (centuries * (0.004817 + (0.000014 * centuries)))) * Math.Sin(anomaly))
            + ((0.019993 - (0.000101 * centuries)) * Math.Sin(2 * anomaly))
            + (0.000289 * Math.Sin(3 * anomaly));
        var node = Radians(125.04 - (1934.136 * centuries));
        var longitude = Radians(280.46646 + (centuries * (36000.76983 + (0.0003032 * centuries))) + equationDegrees - 0.00569 - (0.00478 * Math.Sin(node)));
        var obliquity = Radians(23.439291 - (0.0130042 * centuries) + (0.00256 * Math.Cos(node)));
        var eccentricity = 0.016708634 - (centuries * (0.000042037 + (0.0000001267 * centuries)));
        var distance = 1.000001018 * (1 - (eccentricity * eccentricity)) / (1 + (eccentricity * Math.Cos(anomaly + Radians(equationDegrees))));
        return new(Math.Asin(Math.Sin(obliquity) * Math.Sin(longitude)), MeanRadiusDegrees / distance);
    }

    private static double Radians(double degrees) => degrees % 360 * Math.PI / 180;
}
