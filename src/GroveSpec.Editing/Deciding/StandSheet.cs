using GroveSpec.Binding;
using GroveSpec.Checks.Standing;
using GroveSpec.Craft.Stand;
using GroveSpec.Drawing;

namespace GroveSpec.Editing.Deciding;

/// <summary>How natural spacing and sizes are. There is nothing to choose: it informs.</summary>
internal static class StandSheet
{
    /// <summary>Lays it out.</summary>
    /// <param name="assessment">The file.</param>
    /// <param name="cancellation">Ends the work before it begins.</param>
    /// <returns>The sheet.</returns>
    public static DecisionSheet Of(Assessment assessment, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        var described = StandDescription.Of(assessment.State);
        return new DecisionSheet
        {
            Says = StandWords.Sentences(described, assessment.Units),
            Picture = described.Stems.Length < 2 ? null : StandPlate.Draw(assessment.State, described, SheetDrawing.Options(assessment, 0)),
        };
    }
}
