namespace GroveSpec.Binding.Quantities;

/// <summary>The units, how they are written, and what is written in their place.</summary>
public static class UnitTable
{
    /// <summary>The unit of a word as the language writes it.</summary>
    /// <param name="word">The word.</param>
    /// <returns>The unit; null for any other word.</returns>
    public static UnitWord? Exact(string word) => word switch
    {
        "mm" => UnitWord.Millimetre,
        "cm" => UnitWord.Centimetre,
        "m" => UnitWord.Metre,
        "in" => UnitWord.Inch,
        "ft" => UnitWord.Foot,
        "deg" => UnitWord.Degree,
        "%" => UnitWord.Percent,
        "day" or "days" => UnitWord.Day,
        "week" or "weeks" => UnitWord.Week,
        "month" or "months" => UnitWord.Month,
        "year" or "years" => UnitWord.Year,
        "C" => UnitWord.Celsius,
        "F" => UnitWord.Fahrenheit,
        _ => null,
    };

    /// <summary>The unit that another spelling can only mean.</summary>
    /// <param name="word">A word that is no unit.</param>
    /// <param name="kind">What is counted.</param>
    /// <returns>The unit; null where it is not plain.</returns>
    public static UnitWord? Meant(string word, QuantityKind kind)
    {
        if (word.Length > 16)
        {
            return null;
        }

        UnitWord? unit = word.ToLowerInvariant() switch
        {
            "mm" or "millimetre" or "millimetres" or "millimeter" or "millimeters" or "mms" => UnitWord.Millimetre,
            "cm" or "centimetre" or "centimetres" or "centimeter" or "centimeters" or "cms" => UnitWord.Centimetre,
            "m" or "metre" or "metres" or "meter" or "meters" => UnitWord.Metre,
            "in" or "inch" or "inches" or "ins" or "\"" or "″" => UnitWord.Inch,
            "ft" or "foot" or "feet" or "′" => UnitWord.Foot,
            "deg" or "degs" or "degree" or "degrees" or "°" when kind == QuantityKind.Angle => UnitWord.Degree,
            "percent" or "per-cent" or "pct" => UnitWord.Percent,
            "day" or "days" or "d" => UnitWord.Day,
            "week" or "weeks" or "wk" or "wks" or "w" => UnitWord.Week,
            "month" or "months" or "mth" or "mths" => UnitWord.Month,
            "year" or "years" or "yr" or "yrs" or "y" => UnitWord.Year,
            "c" or "celsius" or "°c" or "degc" => UnitWord.Celsius,
            "f" or "fahrenheit" or "°f" or "degf" => UnitWord.Fahrenheit,
            _ => null,
        };
        return unit is { } found && KindOf(found) == kind ? found : null;
    }

    /// <summary>What a unit counts.</summary>
    /// <param name="unit">The unit.</param>
    /// <returns>Its kind; a bare number for none.</returns>
    public static QuantityKind KindOf(UnitWord unit) => unit switch
    {
        UnitWord.Millimetre or UnitWord.Centimetre or UnitWord.Metre or UnitWord.Inch or UnitWord.Foot => QuantityKind.Length,
        UnitWord.Degree => QuantityKind.Angle,
        UnitWord.Percent => QuantityKind.Share,
        UnitWord.Day or UnitWord.Week or UnitWord.Month or UnitWord.Year => QuantityKind.Time,
        UnitWord.Celsius or UnitWord.Fahrenheit => QuantityKind.Temperature,
        _ => QuantityKind.Count,
    };

    /// <summary>How a unit is written.</summary>
    /// <param name="unit">The unit.</param>
    /// <returns>The word.</returns>
    public static string Spelling(UnitWord unit) => unit switch
    {
        UnitWord.Millimetre => "mm",
        UnitWord.Centimetre => "cm",
        UnitWord.Metre => "m",
        UnitWord.Inch => "in",
        UnitWord.Foot => "ft",
        UnitWord.Degree => "deg",
        UnitWord.Percent => "%",
        UnitWord.Day => "days",
        UnitWord.Week => "weeks",
        UnitWord.Month => "months",
        UnitWord.Year => "years",
        UnitWord.Celsius => "C",
        UnitWord.Fahrenheit => "F",
        _ => "",
    };

    /// <summary>Which units can stand here, as part of a sentence.</summary>
    /// <param name="kind">What is counted.</param>
    /// <returns>Such as "a length is written in mm, cm, m, in or ft".</returns>
    public static string Choices(QuantityKind kind) => kind switch
    {
        QuantityKind.Length => "a length is written in mm, cm, m, in or ft",
        QuantityKind.Angle => "an angle is written in deg",
        QuantityKind.Share => "a part is written in %",
        QuantityKind.Time => "a span of time is written in days, weeks, months or years",
        QuantityKind.Temperature => "a temperature is written in C or F",
        _ => "a bare number stands here",
    };

    /// <summary>Nanometres in a unit of length, exact: an inch is 25.4 mm (NIST SP 811, B.8, in force since 1959), a foot twelve of them.</summary>
    /// <param name="unit">A unit of length.</param>
    /// <returns>How many.</returns>
    public static long Nanometres(UnitWord unit) => unit switch
    {
        UnitWord.Centimetre => 10_000_000,
        UnitWord.Metre => 1_000_000_000,
        UnitWord.Inch => 25_400_000,
        UnitWord.Foot => 304_800_000,
        _ => 1_000_000,
    };
}
