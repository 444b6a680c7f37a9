using GroveSpec.Model.Quantities;
using NodaTime;

namespace GroveSpec.Craft.Year;

/// <summary>
/// How long the sun is up. Source: W. C. Forsythe and others, A model comparison for daylength as a function of latitude and
/// day of year, Ecological Modelling 80 (1995), the CBM model; the sun is up while its upper edge, with refraction, is above a
/// level horizon (a centre 0.8333° below it). Up to 54° it stays within 8 minutes of astronomy; nearer the polar circles,
/// where a day makes more of a difference, within what two days change.
/// </summary>
public static class DayLength
{
    private const double HoursOfDay = 24;
    private const double SunBelowHorizonDegrees = 0.8333;

    /// <summary>The length of a day from sunrise to sunset.</summary>
    /// <param name="latitude">Degrees north of the equator, negative south of it; beyond ±90 the pole is taken.</param>
    /// <param name="day">The day; only its number in the year counts.</param>
    /// <returns>From none, where the sun does not rise, to 24 hours, where it does not set.</returns>
    public static Duration Of(Angle latitude, LocalDate day) => Of(latitude, day.DayOfYear);

    /// <summary>The length of a day from sunrise to sunset.</summary>
    /// <param name="latitude">Degrees north of the equator, negative south of it; beyond ±90 the pole is taken.</param>
    /// <param name="dayOfYear">The number of the day, 1 for the first of January.</param>
    /// <returns>From none to 24 hours.</returns>
    public static Duration Of(Angle latitude, int dayOfYear)
    {
        var latitudeRadians = Math.Clamp(latitude.Degrees, -90, 90) * Math.PI / 180;
        var revolutionRadians = 0.2163108 + (2 * Math.Atan(0.9671396 * Math.Tan(0.00860 * (dayOfYear - 186))));
        var declinationRadians = Math.Asin(0.39795 * Math.Cos(revolutionRadians));
        var sunBelowRadians = SunBelowHorizonDegrees * Math.PI / 180;
        var cosine = (Math.Sin(sunBelowRadians) + (Math.Sin(latitudeRadians) * Math.Sin(declinationRadians)))
            / (Math.Cos(latitudeRadians) * Math.Cos(declinationRadians));
        return Duration.FromHours(HoursOfDay - (HoursOfDay / Math.PI * Math.Acos(Math.Clamp(cosine, -1, 1))));
    }
}
