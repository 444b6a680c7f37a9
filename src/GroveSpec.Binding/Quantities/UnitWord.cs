namespace GroveSpec.Binding.Quantities;

/// <summary>A unit that the language knows.</summary>
public enum UnitWord
{
    /// <summary>No unit was written.</summary>
    None,

    /// <summary>Millimetres.</summary>
    Millimetre,

    /// <summary>Centimetres.</summary>
    Centimetre,

    /// <summary>Metres.</summary>
    Metre,

    /// <summary>Inches of 25.4 mm.</summary>
    Inch,

    /// <summary>Feet of twelve inches.</summary>
    Foot,

    /// <summary>Degrees of angle.</summary>
    Degree,

    /// <summary>Percent.</summary>
    Percent,

    /// <summary>Days.</summary>
    Day,

    /// <summary>Weeks.</summary>
    Week,

    /// <summary>Months.</summary>
    Month,

    /// <summary>Years.</summary>
    Year,

    /// <summary>Degrees Celsius.</summary>
    Celsius,

    /// <summary>Degrees Fahrenheit.</summary>
    Fahrenheit,
}
