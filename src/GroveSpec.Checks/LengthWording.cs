using System.Globalization;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks;

/// <summary>Says lengths as a grower reads them off a rule.</summary>
public static class LengthWording
{
    /// <summary>A length with its unit: tenths of a millimetre under 10 mm, whole millimetres up to 10 m, then metres; inches to the hundredth, feet from ten feet on.</summary>
    /// <param name="length">The length.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>Such as "4.1 mm", "265 mm", "0.16 in". A length too small to show but not zero is "under 0.1 mm".</returns>
    public static string Say(Length length, UnitSystem units) => units == UnitSystem.Inch ? SayInches(length.Inches) : SayMillimetres(length.Millimetres);

    /// <summary>A length that was worked out in millimetres.</summary>
    /// <param name="millimetres">The length in millimetres, finite.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>As <see cref="Say(Length, UnitSystem)"/>.</returns>
    public static string Say(double millimetres, UnitSystem units) => units == UnitSystem.Inch ? SayInches(millimetres / 25.4) : SayMillimetres(millimetres);

    /// <summary>Two lengths that are told against each other: where they would read the same, with one decimal more, to a tenth of a millimetre or a thousandth of an inch, as a caliper reads them.</summary>
    /// <param name="one">One length.</param>
    /// <param name="other">The other.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>As <see cref="Say(Length, UnitSystem)"/>; of 20 mm and 19.6 mm not "20 mm" twice. Both read the same when less than that parts them.</returns>
    public static (string One, string Other) SayApart(Length one, Length other, UnitSystem units)
    {
        var said = (Say(one, units), Say(other, units));
        return said.Item1 != said.Item2 || one == other ? said
            : units == UnitSystem.Inch ? (Say(one.Inches, 3) + " in", Say(other.Inches, 3) + " in")
            : (Say(one.Millimetres, 1) + " mm", Say(other.Millimetres, 1) + " mm");
    }

    /// <summary>A bare number with a few decimals and no trailing zeros.</summary>
    /// <param name="value">The number, finite.</param>
    /// <param name="decimals">How many decimals at most.</param>
    /// <returns>Such as "0.42" or "8".</returns>
    public static string Say(double value, int decimals)
    {
        var text = Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }

    private static string SayMillimetres(double value) => Math.Abs(value) switch
    {
        > 0 and < 0.05 => "under 0.1 mm",
        < 9.95 => Say(value, 1) + " mm",
        < 10_000 => Say(value, 0) + " mm",
        _ => Say(value / 1000, 1) + " m",
    };

    private static string SayInches(double value) => Math.Abs(value) switch
    {
        > 0 and < 0.005 => "under 0.01 in",
        < 120 => Say(value, 2) + " in",
        _ => Say(value / 12, 1) + " ft",
    };
}
