using GroveSpec.Binding;
using GroveSpec.Checks.Ground;
using GroveSpec.Checks.Moving;
using GroveSpec.Checks.Sentences;
using GroveSpec.Craft.Composition;
using GroveSpec.Drawing;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Editing.Deciding;

/// <summary>Where one more trunk goes, or one that stands could go instead.</summary>
internal static class GroundSheet
{
    /// <summary>Lays the spots out.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="fields">How thick and high the trunk is, or which one of the planting it is.</param>
    /// <param name="sideBySide">Runs pieces of work side by side; null for one after the other.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The sheet.</returns>
    public static DecisionSheet Of(Assessment assessment, FieldReading fields, Action<int, Action<int>>? sideBySide, CancellationToken cancellation)
    {
        var of = fields.Name("of", "A trunk that is here");
        (Length? usualDiameter, Length? usualHeight) = (null, null);
        if (of is null)
        {
            (usualDiameter, usualHeight) = NewcomerSizes.Of(assessment.State);
        }

        var diameter = fields.Length("diameter", of is null ? "Or one more, thick" : "If it were thick", usualDiameter, mayBeEmpty: of is not null);
        var height = fields.Length("height", "and high", usualHeight, mayBeEmpty: true);
        var answer = FreeGround.Find(assessment.ToContext(), new GroundWish(diameter, height, of), sideBySide, cancellation);
        if (answer.Obstacle is { } obstacle)
        {
            return new DecisionSheet { Says = [obstacle], Fields = fields.Fields };
        }

        return new DecisionSheet
        {
            Says = GroundSentences.Sum(answer, assessment.Units),
            Picture = GroundPlate.Draw(assessment.State, answer, SheetDrawing.Options(assessment, 0)),
            Ways = [.. answer.Spots.Select(spot => Way(answer, spot, assessment.Units))],
            Notes = GroundSentences.Notes(answer),
            Fields = fields.Fields,
        };
    }

    private static DecisionWay Way(GroundAnswer answer, GroundSpot spot, UnitSystem units) => new(
        PlaceWording.Say(spot.Place, units),
        [spot.Why],
        null,
        spot.Edits,
        spot.Edits.IsEmpty ? $"{answer.Trunk!.Name} is fixed, or tape readings place it: its place is not written." : answer.IsOneMore ? "Write a trunk here" : "Write this place");
}
