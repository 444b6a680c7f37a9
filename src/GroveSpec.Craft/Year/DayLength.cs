using GroveSpec.Model.Quantities;
using NodaTime;

namespace GroveSpec.Craft.Year;

/// <summary>
/// How long the sun is up: while its upper edge, with refraction, is above a level horizon. Of a day of any year by W. C. Forsythe
/// and others, A model comparison for daylength as a function of latitude and day of year, Ecological Modelling 80 (1995), the CBM
/// model, which stays within 8 minutes of astronomy up to 54°; of a day of one year by where the sun stands as it rises and sets.
/// </summary>
public static class DayLength
{
    private const double HoursOfDay = 24;
    private const double SunBelowHorizonDegrees = 0.8333;
    private const double RefractionDegrees = 34 / 60.0;
    private const int Rounds = 4;

    private static readonly LocalDate Epoch = new(2000, 1, 1);

    /// <summary>The length of a day of one year from sunrise to sunset.</summary>
    /// <param name="latitude">Degrees north of the equator, negative south of it; beyond ±90 the pole is taken.</param>
    /// <param name="day">The day, as on the meridian of Greenwich; elsewhere it differs by what half a day changes at most.</param>
    /// <returns>From none, where the sun does not rise, to 24 hours, where it does not set.</returns>
    public static Duration Of(Angle latitude, LocalDate day)
    {
        var latitudeRadians = Math.Clamp(latitude.Degrees, -90, 90) * Math.PI / 180;
        var noon = (double)Period.DaysBetween(Epoch, day);
        var (before, after) = (HoursOfDay / 4, HoursOfDay / 4);
        for (var round = 0; round < Rounds; round++)
        {
            // The sun moves on between sunrise and sunset; near the polar circles that is minutes.
            (before, after) = (HalfHours(latitudeRadians, SunPlace.At(noon - (before / HoursOfDay))), HalfHours(latitudeRadians, SunPlace.At(noon + (after / HoursOfDay))));
        }

        return Duration.FromHours(before + after);
    }

    /// <summary>The length of a day from sunrise to sunset.</summary>
    /// <param name="latitude">Degrees north of the equator, negative south of it; beyond ±90 the pole is taken.</param>
    /// <param name="dayOfYear">The number of the day, 1 for the first of January.</param>
    /// <returns>From none to 24 hours.</returns>
    public static Duration Of(Angle latitude, int dayOfYear)
    {
        var latitudeRadians = Math.Clamp(latitude.Degrees, -90, 90) * Math.PI / 180;
        var revolutionRadians = 0.2163108 + (2 * Math.Atan(0.9671396 * Math.Tan(0.00860 * (dayOfYear - 186))));
        var declinationRadians = Math.Asin(0.39795 * Math.Cos(revolutionRadians));
        return Duration.FromHours(HoursOfDay - (HoursOfDay / Math.PI * Math.Acos(CosineOfDark(latitudeRadians, declinationRadians, SunBelowHorizonDegrees))));
    }

    private static double HalfHours(double latitudeRadians, SunPlace sun) =>
        (HoursOfDay / 2) - (HoursOfDay / 2 / Math.PI * Math.Acos(CosineOfDark(latitudeRadians, sun.DeclinationRadians, RefractionDegrees + sun.RadiusDegrees)));

    private static double CosineOfDark(double latitudeRadians, double declinationRadians, double belowDegrees) => Math.Clamp(
        (Math.Sin(belowDegrees * Math.PI / 180) + (Math.Sin(latitudeRadians) * Math.Sin(declinationRadians))) / (Math.Cos(latitudeRadians) * Math.Cos(declinationRadians)),
        -1,
        1);
}
