using GroveSpec.Craft.Wire;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Tasks;

namespace GroveSpec.Checks;

/// <summary>Says wire as a grower buys it.</summary>
public static class WireWording
{
    /// <summary>A wire by its metal and size.</summary>
    /// <param name="size">The wire.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>Such as "aluminium of 3.5 mm", "two wires of aluminium of 5 mm", "copper of 3.26 mm (gauge 8)".</returns>
    public static string Say(WireSize size, UnitSystem units)
    {
        var thick = units == UnitSystem.Inch ? LengthWording.Say(size.Diameter.Inches, 3) + " in" : LengthWording.Say(size.Diameter.Millimetres, 2) + " mm";
        var gauge = size.Gauge is { } number ? $" (gauge {number})" : "";
        return $"{Count(size.Strands)}{Metal(size.Metal)} of {thick}{gauge}";
    }

    /// <summary>A wire as a file says it.</summary>
    /// <param name="size">The wire.</param>
    /// <returns>Such as "with 2 x aluminium 5 mm".</returns>
    public static string Clause(WireSize size) => $"with {(size.Strands > 1 ? $"{size.Strands} x " : "")}{Metal(size.Metal)} {LengthWording.Say(size.Diameter.Millimetres, 6)} mm";

    /// <summary>A metal.</summary>
    /// <param name="metal">The metal.</param>
    /// <returns>The word that files use.</returns>
    public static string Metal(WireMetal metal) => metal == WireMetal.Copper ? "copper" : "aluminium";

    /// <summary>A bending moment.</summary>
    /// <param name="moment">The moment.</param>
    /// <returns>In newton metres with two figures, such as "0.045 N m" or "12 N m".</returns>
    public static string Say(BendingMoment moment)
    {
        var metres = moment.NewtonMillimetres / 1000;
        var decimals = metres > 0 ? Math.Clamp(1 - (int)Math.Floor(Math.Log10(metres)), 0, 6) : 0;
        return LengthWording.Say(metres, decimals) + " N m";
    }

    private static string Count(int strands) => strands switch
    {
        1 => "",
        2 => "two wires of ",
        _ => $"{strands} wires of ",
    };
}
