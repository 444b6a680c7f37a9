namespace GroveSpec.Model.Quantities;

/// <summary>An air temperature.</summary>
/// <param name="Celsius">Degrees Celsius.</param>
public readonly record struct Temperature(double Celsius);
