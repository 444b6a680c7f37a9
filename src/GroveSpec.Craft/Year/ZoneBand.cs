using GroveSpec.Model.Quantities;
using GroveSpec.Model.Sites;

namespace GroveSpec.Craft.Year;

/// <summary>
/// What a hardiness zone says: the mean, over years, of the coldest night of each. Source: the bands of the USDA plant hardiness
/// map, ten degrees Fahrenheit a zone, zone 1 from −60 °F, each half five.
/// </summary>
/// <param name="Coldest">The least mean of the coldest nights, itself within the band.</param>
/// <param name="Warmest">The mean from which on the next band begins.</param>
public readonly record struct ZoneBand(Temperature Coldest, Temperature Warmest)
{
    private const int FirstZone = 1;
    private const int LastZone = 13;

    /// <summary>The band of a zone.</summary>
    /// <param name="zone">The zone, whole or half; a number outside 1 to 13 goes on in the same steps.</param>
    /// <returns>Its band.</returns>
    public static ZoneBand Of(HardinessZone zone)
    {
        var coldestFahrenheit = -60 + (10 * (zone.Number - 1)) + (zone.Half == 'b' ? 5 : 0);
        return new ZoneBand(FromFahrenheit(coldestFahrenheit), FromFahrenheit(coldestFahrenheit + (zone.Half is null ? 10 : 5)));
    }

    /// <summary>The half zone in which a mean of coldest nights lies.</summary>
    /// <param name="coldestNight">The mean.</param>
    /// <returns>The half zone, 1a for all that is colder and 13b for all that is warmer.</returns>
    public static HardinessZone At(Temperature coldestNight)
    {
        // In tenths of a thousandth of a degree, so that a limit worked out in Celsius falls into the band that begins there.
        var fahrenheit = Math.Round((coldestNight.Celsius * 9 / 5) + 32, 4);
        var halves = Math.Clamp((int)Math.Floor((fahrenheit + 60) / 5), 0, (2 * (LastZone - FirstZone)) + 1);
        return new HardinessZone(FirstZone + (halves / 2), halves % 2 == 0 ? 'a' : 'b');
    }

    private static Temperature FromFahrenheit(int degrees) => new((degrees - 32) * 5 / 9.0);
}
