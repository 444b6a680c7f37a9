using GroveSpec.Binding;
using GroveSpec.Checks.Standing;
using GroveSpec.Craft.Stand;
using GroveSpec.Drawing;
using GroveSpec.Model.Quantities;

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
            Says = [.. Says(described, assessment.Units)],
            Picture = described.Stems.Length < 2 ? null : StandPlate.Draw(assessment.State, described, SheetDrawing.Options(assessment, 0)),
        };
    }

    private static IEnumerable<string> Says(StandDescription described, UnitSystem units)
    {
        if (described.Stems.Length < 2)
        {
            return [StandWords.TooFew, .. StandWords.LeftOut(described)];
        }

        return
        [
            $"{StandWords.Nearest(described, units)} {StandWords.Sum(described)}",
            .. described.Indices.Select(index => $"{StandWords.Heading(index.Kind)}: {StandWords.Tell(described, index.Kind)}{(index.Value is not null && StandWords.RealStands(index.Kind) is { Length: > 0 } stands ? $" {stands}" : "")}"),
            .. StandWords.LeftOut(described),
            StandWords.Chance(described),
        ];
    }
}
