using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Composition;

/// <summary>How thick and how high one more trunk could be, to begin with, where a grower has not said: sizes that fit those of the planting.</summary>
public static class NewcomerSizes
{
    /// <summary>The thickness of a trunk of which nothing is known; common practice, a young tree as it is sold for planting.</summary>
    public static readonly Length UsualDiameter = Length.FromMillimetres(18);

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

    private static Length Between(Length one, Length other) => Length.FromMillimetres(Math.Max(1, Math.Round(Math.Sqrt(one.Millimetres * other.Millimetres))));
}
