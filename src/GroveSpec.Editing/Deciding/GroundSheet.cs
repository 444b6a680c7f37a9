using GroveSpec.Binding;
using GroveSpec.Checks.Ground;
using GroveSpec.Checks.Moving;
using GroveSpec.Checks.Sentences;
using GroveSpec.Craft.Composition;
using GroveSpec.Drawing;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Editing.Deciding;

/// <summary>Where one more trunk goes, or one that stands could go instead.</summary>
internal static class GroundSheet
{
    private const string DiameterField = "diameter";
    private const string HeightField = "height";

    /// <summary>Lays the spots out.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="fields">How thick and high the trunk is, or which one of the planting it is.</param>
    /// <param name="sideBySide">Runs pieces of work side by side; null for one after the other.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The sheet.</returns>
    public static DecisionSheet Of(Assessment assessment, FieldReading fields, Action<int, Action<int>>? sideBySide, CancellationToken cancellation)
    {
        var of = fields.Name("of", "A trunk that is here");
        var (usualDiameter, usualHeight) = of is null ? UsualSizes(assessment.State, fields) : (null, null);
        var diameter = fields.Length(DiameterField, of is null ? "Or one more, thick" : "If it were thick", usualDiameter, mayBeEmpty: of is not null);
        var height = fields.Length(HeightField, "and high", usualHeight, mayBeEmpty: true);
        var answer = GroundReview.Find(assessment.ToContext(), assessment.Tree, new GroundWish(diameter, height, of), sideBySide, cancellation);
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

    /// <summary>Sizes to begin with; where a grower has written one of the two, the other follows it.</summary>
    private static (Length? Diameter, Length? Height) UsualSizes(PlantingState state, FieldReading fields)
    {
        var (diameter, height) = NewcomerSizes.Of(state);
        return (fields.Written(DiameterField), fields.Written(HeightField)) switch
        {
            ({ } thick, _) => (diameter, NewcomerSizes.HeightFor(state, thick) ?? height),
            (null, { } high) => (NewcomerSizes.DiameterFor(state, high) ?? diameter, height),
            _ => (diameter, height),
        };
    }

    private static DecisionWay Way(GroundAnswer answer, GroundSpot spot, UnitSystem units) => new(
        PlaceWording.Say(spot.Place, units),
        [spot.Why],
        null,
        spot.Edits,
        spot.Edits.IsEmpty ? $"The place of {answer.Trunk!.Name} is not written; the notes say why." : answer.IsOneMore ? "Write a trunk here" : "Write this place");
}
