using NodaTime;

namespace GroveSpec.Craft.Year;

/// <summary>
/// Equinoxes and solstices. Source: J. Meeus, Astronomical Algorithms, chapter 27 (from memory, and held against an astronomical
/// library by a test): the mean turn as a polynomial, corrected by 24 periodic terms; within a minute from 1951 to 2050.
/// From dynamical to universal time by the polynomials of F. Espenak and J. Meeus, which past the measured years are a forecast.
/// </summary>
public static class SolarTurns
{
    /// <summary>The first year for which the polynomials hold.</summary>
    public const int FirstYear = 1000;

    /// <summary>The last year for which the polynomials hold.</summary>
    public const int LastYear = 3000;

    private const double Epoch2000 = 2451545;

    /// <summary>The mean turn as a Julian day, by powers of thousands of years since 2000.</summary>
    private static ReadOnlySpan<double> MarchTerms => [2451623.80984, 365242.37404, 0.05169, -0.00411, -0.00057];

    private static ReadOnlySpan<double> JuneTerms => [2451716.56767, 365241.62603, 0.00325, 0.00888, -0.00030];

    private static ReadOnlySpan<double> SeptemberTerms => [2451810.21715, 365242.01767, -0.11575, 0.00337, 0.00078];

    private static ReadOnlySpan<double> DecemberTerms => [2451900.05952, 365242.74049, -0.06223, -0.00823, 0.00032];

    /// <summary>Size in 0.00001 days, phase in degrees, speed in degrees a century: three numbers a term.</summary>
    private static ReadOnlySpan<double> PeriodicTerms =>
    [
        485, 324.96, 1934.136, 203, 337.23, 32964.467, 199, 342.08, 20.186, 182, 27.85, 445267.112,
        156, 73.14, 45036.886, 136, 171.52, 22518.443, 77, 222.54, 65928.934, 74, 296.72, 3034.906,
        70, 243.58, 9037.513, 58, 119.81, 33718.147, 52, 297.17, 150.678, 50, 21.02, 2281.226,
        45, 247.54, 29929.562, 44, 325.15, 31555.956, 29, 60.93, 4443.417, 18, 155.12, 67555.328,
        17, 288.79, 4562.452, 16, 198.04, 62894.029, 14, 199.76, 31436.921, 12, 95.39, 14577.848,
        12, 287.11, 31931.756, 12, 320.81, 34777.259, 9, 227.73, 1222.114, 8, 15.45, 16859.074,
    ];

    /// <summary>When a turn comes.</summary>
    /// <param name="turn">Which.</param>
    /// <param name="year">The calendar year.</param>
    /// <returns>The moment in universal time; null outside <see cref="FirstYear"/> to <see cref="LastYear"/>.</returns>
    public static Instant? MomentOf(SolarTurn turn, int year)
    {
        if (year is < FirstYear or > LastYear)
        {
            return null;
        }

        var terms = turn switch
        {
            SolarTurn.MarchEquinox => MarchTerms,
            SolarTurn.JuneSolstice => JuneTerms,
            SolarTurn.SeptemberEquinox => SeptemberTerms,
            _ => DecemberTerms,
        };
        var meanDay = Polynomial(terms, (year - 2000) / 1000.0);
        var centuries = (meanDay - Epoch2000) / 36525;
        var anomaly = Radians((35999.373 * centuries) - 2.47);
        var speed = 1 + (0.0334 * Math.Cos(anomaly)) + (0.0007 * Math.Cos(2 * anomaly));
        var sum = 0.0;
        for (var index = 0; index < PeriodicTerms.Length; index += 3)
        {
            sum += PeriodicTerms[index] * Math.Cos(Radians(PeriodicTerms[index + 1] + (PeriodicTerms[index + 2] * centuries)));
        }

        var day = meanDay + (0.00001 * sum / speed);
        return Instant.FromJulianDate(day) - Duration.FromSeconds(ClockDifferenceSeconds(year + (((int)turn + 1) * 0.25)));
    }

    /// <summary>The day on which a turn comes, in universal time: a place far east or west of Greenwich may already, or still, have its neighbour.</summary>
    /// <param name="turn">Which.</param>
    /// <param name="year">The calendar year.</param>
    /// <returns>The day; null where <see cref="MomentOf"/> is.</returns>
    public static LocalDate? DayOf(SolarTurn turn, int year) => MomentOf(turn, year)?.InUtc().Date;

    /// <summary>Dynamical less universal time, in seconds. Source: Espenak and Meeus, polynomial expressions for delta T (from memory).</summary>
    private static double ClockDifferenceSeconds(double year)
    {
        var sinceParabola = (year - 1820) / 100;
        var parabola = -20 + (32 * sinceParabola * sinceParabola);
        return year switch
        {
            < 1941 or >= 2150 => parabola,
            < 1961 => Polynomial([29.07, 0.407, -1 / 233.0, 1 / 2547.0], year - 1950),
            < 1986 => Polynomial([45.45, 1.067, -1 / 260.0, -1 / 718.0], year - 1975),
            < 2005 => Polynomial([63.86, 0.3345, -0.060374, 0.0017275, 0.000651814, 0.00002373599], year - 2000),
            < 2050 => Polynomial([62.92, 0.32217, 0.005589], year - 2000),
            _ => parabola - (0.5628 * (2150 - year)),
        };
    }

    private static double Polynomial(ReadOnlySpan<double> terms, double value)
    {
        var sum = 0.0;
        for (var power = terms.Length - 1; power >= 0; power--)
        {
            sum = (sum * value) + terms[power];
        }

        return sum;
    }

    private static double Radians(double degrees) => degrees * Math.PI / 180;
}
