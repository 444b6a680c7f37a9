namespace GroveSpec.Model.Quantities;

/// <summary>Which units a person reads: the file's own units stay as written either way.</summary>
public enum UnitSystem
{
    /// <summary>Millimetres, metres and degrees Celsius.</summary>
    Metric,

    /// <summary>Inches, feet and degrees Fahrenheit.</summary>
    Inch,
}
