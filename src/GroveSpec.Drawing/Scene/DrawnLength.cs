using System.Globalization;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Drawing.Scene;

/// <summary>Lengths as a drawing writes them.</summary>
internal static class DrawnLength
{
    private const double MillimetresPerInch = 25.4;
    private const double MillimetresPerFoot = 304.8;

    /// <summary>A length with its unit: 260 mm, 1.1 m, 4.5 in, 6 ft.</summary>
    /// <param name="length">The length.</param>
    /// <param name="units">The units that are read.</param>
    /// <returns>Metres from one metre on, feet from six feet on; two decimals of a metre or an inch, one of a millimetre or a foot, at most.</returns>
    public static string Text(Length length, UnitSystem units)
    {
        var millimetres = length.Millimetres;
        if (units == UnitSystem.Inch)
        {
            return Math.Abs(millimetres) < 6 * MillimetresPerFoot
                ? $"{Plain(millimetres / MillimetresPerInch, Math.Abs(millimetres) < 254 ? 2 : 1)} in"
                : $"{Plain(millimetres / MillimetresPerFoot, 1)} ft";
        }

        return Math.Abs(millimetres) < 1000 ? $"{Plain(millimetres, Math.Abs(millimetres) < 100 ? 1 : 0)} mm" : $"{Plain(millimetres / 1000, 2)} m";
    }

    /// <summary>A number alone, in the unit that suits the whole drawing: see <see cref="UnitFor"/>.</summary>
    /// <param name="length">The length.</param>
    /// <param name="unit">mm, m, in or ft.</param>
    /// <returns>The number: whole millimetres, two decimals of a metre, one of an inch or a foot.</returns>
    public static string Bare(Length length, string unit) => unit switch
    {
        "m" => Plain(length.Millimetres / 1000, 2),
        "in" => Plain(length.Millimetres / MillimetresPerInch, 1),
        "ft" => Plain(length.Millimetres / MillimetresPerFoot, 1),
        _ => Plain(length.Millimetres, 0),
    };

    /// <summary>The one unit for bare numbers in a drawing.</summary>
    /// <param name="extent">The largest length shown.</param>
    /// <param name="units">The units that are read.</param>
    /// <returns>mm up to three metres, then m; in up to ten feet, then ft.</returns>
    public static string UnitFor(Length extent, UnitSystem units) => units == UnitSystem.Inch
        ? extent.Millimetres > 10 * MillimetresPerFoot ? "ft" : "in"
        : extent.Millimetres > 3000 ? "m" : "mm";

    /// <summary>The longest round length that fits, for a scale bar.</summary>
    /// <param name="roomMillimetres">The room, above zero.</param>
    /// <param name="units">The units that are read.</param>
    /// <returns>The length in millimetres, half of it as a number, and the whole with its unit.</returns>
    public static (double Millimetres, string Middle, string End) RoundBar(double roomMillimetres, UnitSystem units)
    {
        var (unitMillimetres, unit) = units == UnitSystem.Inch
            ? roomMillimetres >= 2.999 * MillimetresPerFoot ? (MillimetresPerFoot, "ft") : (MillimetresPerInch, "in")
            : roomMillimetres >= 2000 ? (1000.0, "m") : (1.0, "mm");

        // A room that is round itself may come out a hair short.
        var room = Math.Max(roomMillimetres / unitMillimetres, 1e-6) * (1 + 1e-9);
        var power = Math.Pow(10, Math.Floor(Math.Log10(room)));
        var amount = room >= 5 * power ? 5 * power : room >= 2 * power ? 2 * power : power;
        return (amount * unitMillimetres, Plain(amount / 2, 6), $"{Plain(amount, 6)} {unit}");
    }

    /// <summary>A number in plain digits.</summary>
    /// <param name="value">The number.</param>
    /// <param name="decimals">The most decimals, up to six; trailing zeros go.</param>
    /// <returns>Such as 12.5, never -0.</returns>
    public static string Plain(double value, int decimals)
    {
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0.######", CultureInfo.InvariantCulture);
    }
}
