using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Views;

/// <summary>
/// Sizes to draw the trunks of a planting with, where not all are known. Nothing is judged by an assumed size.
/// The rules are our own choice: a height is nine diameters, a diameter is a ninth of the height; a trunk of which neither is
/// known takes the middle diameter and height of the planting's others, or 20 mm and 180 mm; a crown's radius is a fifth
/// of the height and one and a half diameters more, at most a third of the height,
/// and at most the middle height of the planting's trunks, so that one height written in metres for millimetres does not
/// shrink all else to a dot.
/// </summary>
public sealed class ShownSizes
{
    private const double DiametersHigh = 9;

    private static readonly Length UsualDiameter = Length.FromMillimetres(20);

    private readonly Length middleDiameter;
    private readonly Length middleHeight;

    private ShownSizes(Length middleDiameter, Length middleHeight)
    {
        this.middleDiameter = middleDiameter;
        this.middleHeight = middleHeight;
    }

    /// <summary>The rules for one planting on a day.</summary>
    /// <param name="state">The planting.</param>
    /// <returns>The rules.</returns>
    public static ShownSizes For(PlantingState state)
    {
        var diameters = new List<Length>();
        var heights = new List<Length>();
        foreach (var trunk in state.Trunks)
        {
            if (trunk.Diameter is { } diameter)
            {
                diameters.Add(diameter.Value);
            }

            if (Height(trunk) is { } height)
            {
                heights.Add(height);
            }
        }

        var middleDiameter = Middle(diameters);
        var middleHeight = Middle(heights);
        return new ShownSizes(
            middleDiameter ?? (middleHeight is { } high ? high * (1 / DiametersHigh) : UsualDiameter),
            middleHeight ?? (middleDiameter ?? UsualDiameter) * DiametersHigh);
    }

    /// <summary>The sizes of a trunk.</summary>
    /// <param name="trunk">A trunk of this planting.</param>
    /// <returns>Its sizes, all above zero.</returns>
    public ShownSize Of(TrunkState trunk)
    {
        var statedHeight = Height(trunk);
        var diameter = trunk.Diameter?.Value ?? (statedHeight is { } high ? high * (1 / DiametersHigh) : middleDiameter);
        var height = statedHeight ?? (trunk.Diameter is { } thick ? thick.Value * DiametersHigh : middleHeight);
        var crown = trunk.Crown?.Value ?? Smaller(Smaller((height * 0.2) + (diameter * 1.5), height * (1.0 / 3)), middleHeight);
        return new ShownSize(diameter, trunk.Diameter is null, height, statedHeight is null, crown, trunk.Crown is null);
    }

    private static Length? Height(TrunkState trunk) =>
        trunk.Height?.Value ?? (trunk.Trunk.Line is [.., var tip] && tip.Z > Length.Zero ? tip.Z : null);

    private static Length? Middle(List<Length> values)
    {
        if (values.Count == 0)
        {
            return null;
        }

        values.Sort();
        return values[values.Count / 2];
    }

    private static Length Smaller(Length left, Length right) => left < right ? left : right;
}
