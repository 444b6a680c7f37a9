using GroveSpec.Binding;
using GroveSpec.Checks.Moving;
using GroveSpec.Checks.Sentences;
using GroveSpec.Checks.Surveying;
using GroveSpec.Craft.Survey;
using GroveSpec.Drawing;

namespace GroveSpec.Editing.Deciding;

/// <summary>Where trunks stand by the tape.</summary>
internal static class SurveySheet
{
    /// <summary>Lays the places out; where the file names none, both ways round.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The sheet.</returns>
    public static DecisionSheet Of(Assessment assessment, CancellationToken cancellation)
    {
        if (assessment.Planting.Trunks.IsEmpty)
        {
            return new DecisionSheet { Says = ["No trunk is written down."] };
        }

        var survey = TapeSurvey.Search(assessment.State, isTurnedOver: false, cancellation);
        var isEitherWay = survey.Freedoms.Any(freedom => freedom.Kind == SurveyFreedomKind.Axes) && survey.Trunks.Any(trunk => trunk.CanBeWritten);
        var turned = isEitherWay ? TapeSurvey.Search(assessment.State, isTurnedOver: true, cancellation) : null;
        return new DecisionSheet
        {
            Says = [.. SurveyWords.NothingSought(survey) is { Length: > 0 } nothing ? [nothing] : Array.Empty<string>(), .. SurveyWords.Notes(survey, assessment.Units)],
            Picture = turned is null ? Picture(survey, 0) : null,
            Ways =
            [
                .. turned is null ? Way("As the readings have it", survey, null) : Way("One way round", survey, Picture(survey, 1)),
                .. turned is null ? [] : Way("The other way round", turned, Picture(turned, 2)),
            ],
        };

        string Picture(TapeSurvey found, int number) => SurveyPlate.Draw(assessment.State, found, SheetDrawing.Options(assessment, number));

        DecisionWay[] Way(string title, TapeSurvey found, string? picture)
        {
            if (found.Trunks.All(trunk => trunk.Kind == SurveyedPlaceKind.Known))
            {
                return [];
            }

            var edits = SurveyedPlaces.Edits(found, assessment.Tree, assessment.Origins, assessment.Units);
            return [new DecisionWay(title, SurveySentences.Places(found, assessment.Units), picture, edits, edits.IsEmpty ? "No place is sure enough to be written." : edits.Length == 1 ? "Write this place" : "Write these places")];
        }
    }
}
