using GroveSpec.Binding;
using GroveSpec.Checks.Fronts;
using GroveSpec.Drawing;

namespace GroveSpec.Editing.Deciding;

/// <summary>From which side it is seen best.</summary>
internal static class FrontsSheet
{
    /// <summary>Lays the fronts out.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The sheet.</returns>
    public static DecisionSheet Of(Assessment assessment, CancellationToken cancellation)
    {
        var answer = BestFronts.Find(assessment.ToContext(), assessment.Tree, cancellation);
        if (answer.Obstacle is { } obstacle)
        {
            return new DecisionSheet { Says = [obstacle] };
        }

        return new DecisionSheet
        {
            Picture = FrontsPlate.Draw(assessment.State, answer, SheetDrawing.Options(assessment, 0)),
            Ways = [.. answer.Suggestions.Select((suggestion, place) => Way(assessment, suggestion, place + 1))],
            Notes = [.. Notes(answer)],
        };
    }

    private static IEnumerable<string> Notes(FrontsAnswer answer)
    {
        if (answer.Now is { } now)
        {
            yield return $"{FrontSentences.From(now, isNow: true)}, {FrontSentences.Score(now)}. {answer.NowHolds}";
            foreach (var lost in Losses(now))
            {
                yield return lost;
            }
        }

        if (FrontSentences.NotSeen(answer) is { Length: > 0 } unseen)
        {
            yield return unseen;
        }
    }

    private static IEnumerable<string> Losses(Front front) => front.Findings.IsEmpty ? [FrontSentences.NothingIsLost] : front.Findings.Select(finding => finding.Message);

    private static DecisionWay Way(Assessment assessment, FrontSuggestion suggestion, int number)
    {
        var front = suggestion.Front;
        var isNow = front.From == assessment.Planting.Viewed?.From;
        return new DecisionWay(
            FrontSentences.From(front),
            [suggestion.Why, suggestion.Holds, .. front.Findings.IsEmpty ? [FrontSentences.NothingIsLost] : SheetWords.Numbered(front.Findings)],
            FrontsPlate.DrawOne(assessment.State, front, SheetDrawing.Options(assessment, number)),
            isNow ? [] : suggestion.Edits,
            isNow ? "This is the front it has." : suggestion.Edits.IsEmpty ? "The file's own line about the viewer could not be read whole: put that right first." : "Write this front");
    }
}
