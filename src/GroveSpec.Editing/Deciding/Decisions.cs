using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Drawing;

namespace GroveSpec.Editing.Deciding;

/// <summary>Looks into what a grower wants to decide, and lays out what there is to choose from.</summary>
public static class Decisions
{
    /// <summary>Looks into one question.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="question">What is asked.</param>
    /// <param name="answers">What was written into the question's fields, by their names; fields that are not named hold what is usual.</param>
    /// <param name="sideBySide">Runs pieces of work, counted from zero, side by side; null runs them one after the other.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>What there is to choose from; where there is nothing, a sentence that says why. The same for the same file and answers.</returns>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public static DecisionSheet Of(Assessment assessment, Question question, IReadOnlyDictionary<string, string> answers, Action<int, Action<int>>? sideBySide = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        ArgumentNullException.ThrowIfNull(answers);
        if (!Checker.IsJudged(assessment.State))
        {
            return new DecisionSheet { Says = [$"More than {Checker.MostTrunks} trunks stand here, and no more are looked into."] };
        }

        var fields = new FieldReading(answers, assessment.Units);
        var sheet = question switch
        {
            Question.Survey => SurveySheet.Of(assessment, cancellation),
            Question.Thin => ThinningSheet.Of(assessment, fields, sideBySide, cancellation),
            Question.Fronts => FrontsSheet.Of(assessment, cancellation),
            Question.Nudge => NudgeSheet.Of(assessment, fields, sideBySide, cancellation),
            Question.Ground => GroundSheet.Of(assessment, fields, sideBySide, cancellation),
            _ => StandSheet.Of(assessment, cancellation),
        };

        // Where there is nothing to choose, the planting as it is.
        return sheet is { Picture: null, Ways.IsEmpty: true } && !assessment.Planting.Trunks.IsEmpty
            ? sheet with { Picture = PlanPlate.Draw(new DrawingSubject(assessment.State, assessment.Findings), SheetDrawing.Options(assessment, 0)) }
            : sheet;
    }
}
