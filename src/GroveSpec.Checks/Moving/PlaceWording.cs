using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Moving;

/// <summary>Writes the place of a trunk as the language has it.</summary>
public static class PlaceWording
{
    /// <summary>The clause that states a place.</summary>
    /// <param name="place">The place.</param>
    /// <param name="units">The units to write it in.</param>
    /// <returns>Such as <c>at 22, -18.5 mm</c>; millimetres to a thousandth, inches to a hundred-thousandth.</returns>
    public static string Say(PlanPoint place, UnitSystem units) => units == UnitSystem.Inch
        ? $"at {LengthWording.Say(place.X.Inches, 5)}, {LengthWording.Say(place.Y.Inches, 5)} in"
        : $"at {LengthWording.Say(place.X.Millimetres, 3)}, {LengthWording.Say(place.Y.Millimetres, 3)} mm";
}
