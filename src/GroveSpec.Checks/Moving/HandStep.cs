using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Moving;

/// <summary>How finely a grower sets a trunk by hand: to the whole millimetre, or the twentieth of an inch.</summary>
public static class HandStep
{
    private static readonly Length TwentiethOfAnInch = new(1_270_000);

    /// <summary>The step in a system of units.</summary>
    /// <param name="units">The units that the grower works in.</param>
    /// <returns>1 mm, or 0.05 in.</returns>
    public static Length Of(UnitSystem units) => units == UnitSystem.Inch ? TwentiethOfAnInch : new Length(Length.NanometresPerMillimetre);

    /// <summary>A length to the nearest whole step.</summary>
    /// <param name="length">The length; negative to the left and to the front.</param>
    /// <param name="units">The units that the grower works in.</param>
    /// <returns>The length; of two steps as near as each other the even one.</returns>
    public static Length Nearest(Length length, UnitSystem units)
    {
        var step = Of(units);
        return new((long)Math.Round(length / step) * step.Nanometres);
    }
}
