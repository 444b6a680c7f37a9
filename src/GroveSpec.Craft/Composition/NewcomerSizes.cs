using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Composition;

/// <summary>How thick and how high one more trunk could be, to begin with, where a grower has not said: sizes that fit those of the planting.</summary>
public static class NewcomerSizes
{
    /// <summary>The thickness of a trunk of which nothing is known; common practice, a young tree as it is sold for planting.</summary>
    public static readonly Length UsualDiameter = Length.FromMillimetres(18);

    private const double HeightPower = 2.0 / 3;

    /// <summary>A thickness and a height that no trunk has, so that a first look is not spoilt by twins: between the two thicknesses that differ by the largest factor, and between the heights of those two.</summary>
    /// <param name="state">The planting on its day.</param>
    /// <returns>Both in whole millimetres; <see cref="UsualDiameter"/> where fewer than two thicknesses are known, and no height where one of the two has none.</returns>
    public static (Length Diameter, Length? Height) Of(PlantingState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        TrunkState[] sized = [.. state.Standing.Where(trunk => trunk.Diameter is not null).OrderBy(trunk => trunk.Diameter!.Value.Value).ThenBy(trunk => trunk.Name, StringComparer.Ordinal)];
        if (sized.Length < 2)
        {
            return (UsualDiameter, null);
        }

        var widest = Enumerable.Range(1, sized.Length - 1).MaxBy(place => sized[place].Diameter!.Value.Value.Millimetres / sized[place - 1].Diameter!.Value.Value.Millimetres);
        var (thinner, thicker) = (sized[widest - 1], sized[widest]);
        return (Between(thinner.Diameter!.Value.Value, thicker.Diameter!.Value.Value), thinner.Height is { } one && thicker.Height is { } other ? Between(one.Value, other.Value) : null);
    }

    /// <summary>The height that goes with a thickness in this planting.</summary>
    /// <param name="state">The planting on its day.</param>
    /// <param name="diameter">The thickness, above zero.</param>
    /// <returns>In whole millimetres, between the heights of the trunks next thinner and next thicker; null where no trunk has both. Beyond the thinnest and the thickest, heights go with the power 2/3 of the thickness, as in trees that bend alike under their own weight (McMahon 1973, Science 179:1201).</returns>
    public static Length? HeightFor(PlantingState state, Length diameter) =>
        On(Pairs(state), diameter.Millimetres, HeightPower);

    /// <summary>The thickness that goes with a height in this planting.</summary>
    /// <param name="state">The planting on its day.</param>
    /// <param name="height">The height, above zero.</param>
    /// <returns>In whole millimetres, as in <see cref="HeightFor"/>; null where no trunk has both.</returns>
    public static Length? DiameterFor(PlantingState state, Length height) =>
        On([.. Pairs(state).Select(pair => (pair.Other, pair.Given)).OrderBy(pair => pair.Other)], height.Millimetres, 1 / HeightPower);

    private static (double Given, double Other)[] Pairs(PlantingState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return [.. state.Standing.Where(trunk => trunk is { Diameter: not null, Height: not null }).Select(trunk => (trunk.Diameter!.Value.Value.Millimetres, trunk.Height!.Value.Value.Millimetres)).Order()];
    }

    // Along a broken line through the pairs, on scales of powers, so that equal factors count alike.
    private static Length? On((double Given, double Other)[] rising, double given, double power)
    {
        if (rising.Length == 0)
        {
            return null;
        }

        var next = Array.FindIndex(rising, pair => pair.Given >= given);
        var other = next < 0 ? rising[^1].Other * Math.Pow(given / rising[^1].Given, power)
            : next == 0 ? rising[0].Other * Math.Pow(given / rising[0].Given, power)
            : rising[next - 1].Other * Math.Pow(rising[next].Other / rising[next - 1].Other, Math.Log(given / rising[next - 1].Given) / Math.Log(rising[next].Given / rising[next - 1].Given));
        return Length.FromMillimetres(Math.Max(1, Math.Round(other)));
    }

    private static Length Between(Length one, Length other) => Length.FromMillimetres(Math.Max(1, Math.Round(Math.Sqrt(one.Millimetres * other.Millimetres))));
}
