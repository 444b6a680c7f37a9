using GroveSpec.Binding;
using GroveSpec.Checks.Ground;
using GroveSpec.Checks.Moving;
using GroveSpec.Checks.Sentences;
using GroveSpec.Drawing;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Editing.Deciding;

/// <summary>Where one more trunk goes, or one that stands could go instead.</summary>
internal static class GroundSheet
{
    private const double UsualDiameter = 18;

    /// <summary>Lays the spots out.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="fields">How thick and high the trunk is, or which one of the planting it is.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The sheet.</returns>
    public static DecisionSheet Of(Assessment assessment, FieldReading fields, CancellationToken cancellation)
    {
        var of = fields.Name("of", "A trunk that is here");
        var (usualDiameter, usualHeight) = of is null ? UsualSizes(assessment.State) : (null, null);
        var diameter = fields.Length("diameter", of is null ? "Or one more, thick" : "If it were thick", usualDiameter, mayBeEmpty: of is not null);
        var height = fields.Length("height", "and high", usualHeight, mayBeEmpty: true);
        var answer = FreeGround.Find(assessment.ToContext(), new GroundWish(diameter, height, of), cancellation);
        if (answer.Obstacle is { } obstacle)
        {
            return new DecisionSheet { Says = [obstacle], Fields = fields.Fields };
        }

        return new DecisionSheet
        {
            Says = [.. Says(answer, assessment.Units)],
            Picture = GroundPlate.Draw(assessment.State, answer, SheetDrawing.Options(assessment, 0)),
            Ways = [.. answer.Spots.Select(spot => Way(answer, spot, assessment.Units))],
            Notes = GroundSentences.Notes(answer),
            Fields = fields.Fields,
        };
    }

    private static IEnumerable<string> Says(GroundAnswer answer, UnitSystem units)
    {
        yield return GroundSentences.Ground(answer, units);
        if (GroundSentences.Takers(answer) is { Length: > 0 } takers)
        {
            yield return takers;
        }
    }

    private static DecisionWay Way(GroundAnswer answer, GroundSpot spot, UnitSystem units) => new(
        PlaceWording.Say(spot.Place, units),
        [spot.Why],
        null,
        spot.Edits,
        spot.Edits.IsEmpty ? $"{answer.Trunk!.Name} is fixed, or tape readings place it: its place is not written." : answer.IsOneMore ? "Write a trunk here" : "Write this place");

    /// <summary>
    /// Sizes that no other trunk has, so that a first look needs no writing and is not spoilt by twins: between the two thicknesses that
    /// differ by the largest factor, and between the heights of those two; the height only where both are known.
    /// </summary>
    private static (Length? Diameter, Length? Height) UsualSizes(PlantingState state)
    {
        TrunkState[] sized = [.. state.Standing.Where(trunk => trunk.Diameter is not null).OrderBy(trunk => trunk.Diameter!.Value.Value).ThenBy(trunk => trunk.Name, StringComparer.Ordinal)];
        if (sized.Length < 2)
        {
            return (Length.FromMillimetres(UsualDiameter), null);
        }

        var widest = Enumerable.Range(1, sized.Length - 1).MaxBy(place => sized[place].Diameter!.Value.Value.Millimetres / sized[place - 1].Diameter!.Value.Value.Millimetres);
        var (thinner, thicker) = (sized[widest - 1], sized[widest]);
        return (Between(thinner.Diameter!.Value.Value, thicker.Diameter!.Value.Value), thinner.Height is { } one && thicker.Height is { } other ? Between(one.Value, other.Value) : null);
    }

    private static Length Between(Length one, Length other) => Length.FromMillimetres(Math.Max(1, Math.Round(Math.Sqrt(one.Millimetres * other.Millimetres))));
}
