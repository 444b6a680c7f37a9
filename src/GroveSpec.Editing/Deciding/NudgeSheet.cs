using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Checks.Nudging;
using GroveSpec.Checks.Sentences;
using GroveSpec.Drawing;
using GroveSpec.Model;

namespace GroveSpec.Editing.Deciding;

/// <summary>What to move, or bend, a little.</summary>
internal static class NudgeSheet
{
    private const int MostNames = 4;

    /// <summary>Lays the moves out.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="fields">How far may be moved or bent.</param>
    /// <param name="sideBySide">Runs pieces of work side by side; null for one after the other.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The sheet.</returns>
    public static DecisionSheet Of(Assessment assessment, FieldReading fields, Action<int, Action<int>>? sideBySide, CancellationToken cancellation)
    {
        var wish = NudgeWish.Usual(assessment.Units);
        wish = assessment.Planting.EffectiveHabit == Habit.Group
            ? wish with { Reach = fields.Length("reach", "No farther than", wish.Reach, mayBeEmpty: false) ?? wish.Reach }
            : wish with { Bend = fields.Angle("bend", "No more than", wish.Bend, NudgeWish.SteepestBend) };
        var answer = Nudging.Find(assessment.ToContext(), assessment.Tree, wish, sideBySide, cancellation);
        return new DecisionSheet
        {
            Says = answer.Obstacle is { } obstacle ? [obstacle] : [],
            Ways = [.. answer.Suggestions.Select((suggestion, place) => Way(assessment, suggestion, place + 1))],
            Notes = NudgeSentences.Remarks(answer),
            Fields = fields.Fields,
        };
    }

    private static DecisionWay Way(Assessment assessment, NudgeSuggestion suggestion, int number) => new(
        Title(suggestion),
        [suggestion.Why, .. suggestion.Moves.Select(move => NudgeWords.Order(move, assessment.Units)), .. NudgeSentences.Left(suggestion)],
        NudgePlate.Draw(assessment.State, suggestion, SheetDrawing.Options(assessment, number)),
        suggestion.Edits,
        suggestion.Moves.Length == 1 ? "Write this move" : "Write these moves");

    private static string Title(NudgeSuggestion suggestion)
    {
        var moves = suggestion.Moves;
        var deed = moves.Any(move => move.IsMoved) ? "Move" : "Bend";
        return moves.Length > MostNames ? $"{deed} {moves.Length} trunks" : $"{deed} {Wording.Row([.. moves.Select(move => move.Name)])}";
    }
}
