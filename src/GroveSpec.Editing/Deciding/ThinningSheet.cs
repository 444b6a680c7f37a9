using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Checks.Choosing;
using GroveSpec.Drawing;
using GroveSpec.Model.States;
using NodaTime;

namespace GroveSpec.Editing.Deciding;

/// <summary>Which trunks stay.</summary>
internal static class ThinningSheet
{
    /// <summary>Lays the choices out.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="fields">How many stay, who stays or goes in any case, and when they are taken out.</param>
    /// <param name="sideBySide">Runs pieces of work side by side; null for one after the other.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The sheet.</returns>
    public static DecisionSheet Of(Assessment assessment, FieldReading fields, Action<int, Action<int>>? sideBySide, CancellationToken cancellation)
    {
        var standing = assessment.State.Trunks.Count(trunk => trunk.Presence == Presence.Standing);
        var (least, most) = fields.Range("keep", "How many stay", UsualNumber(standing), ThinningWish.MostKept);
        var wish = new ThinningWish(least, most, fields.Names("with", "Stay in any case"), fields.Names("without", "Go in any case"));
        var day = fields.Day("on", "Taken out on", assessment.Date);
        var answer = Thinning.Choose(assessment.ToContext(), wish, sideBySide, cancellation);
        return new DecisionSheet
        {
            Says = answer.Obstacle is { } obstacle ? [obstacle] : [],
            Ways = [.. answer.Suggestions.Select((suggestion, place) => Way(assessment, suggestion, day, place + 1))],
            Notes = ThinningWords.NotWeighed(answer) is { Length: > 0 } told ? [told] : [],
            Fields = fields.Fields,
        };
    }

    /// <summary>Common practice: an odd number, and fewer than stand; of two and of one, one.</summary>
    private static int UsualNumber(int standing) => Math.Max(1, standing % 2 == 0 ? standing - 1 : standing - 2);

    private static string Title(ThinnedStand stand) => stand.TakenOut.IsEmpty ? "Keep all" : stand.TakenOut.Length < stand.Kept.Length ? $"Take out {Wording.Row(stand.TakenOut, int.MaxValue)}" : $"Keep {Wording.Row(stand.Kept, int.MaxValue)}";

    private static IEnumerable<string> Sentences(ThinningSuggestion suggestion)
    {
        yield return ThinningWords.Order(suggestion.Stand);
        yield return suggestion.Why;
        foreach (var left in SheetWords.Numbered(suggestion.Stand.Findings))
        {
            yield return left;
        }

        if (ThinningWords.NearlyAsGood(suggestion) is { Length: > 0 } near)
        {
            yield return near;
        }
    }

    private static DecisionWay Way(Assessment assessment, ThinningSuggestion suggestion, LocalDate? day, int number)
    {
        var goes = suggestion.Stand.TakenOut.Length;
        var edits = day is { } known ? ThinningEdits.Of(assessment.ToContext(), assessment.Tree, suggestion.Stand, known) : [];
        return new DecisionWay(
            Title(suggestion.Stand),
            [.. Sentences(suggestion), .. ThinningWords.Unneeded(assessment.Planting, suggestion.Stand)],
            ThinPlate.Draw(assessment.State, suggestion, SheetDrawing.Options(assessment, number)),
            edits,
            suggestion.Stand.TakenOut.IsEmpty ? "All that stand stay: there is nothing to write." : day is null ? "Say on which day they are taken out, and it can be written." : edits.Length == 0 ? "Nothing can be written: put the lines right that could not be read." : edits.Length < goes ? $"Write down {edits.Length} of {goes} as taken out: the other lines could not be read" : goes == 1 ? "Write down that it is taken out" : "Write down that they are taken out");
    }
}
