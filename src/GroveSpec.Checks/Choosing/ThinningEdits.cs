using System.Collections.Immutable;
using GroveSpec.Checks.Moving;
using GroveSpec.Model;
using GroveSpec.Model.States;
using GroveSpec.Syntax.Text;
using GroveSpec.Syntax.Tree;
using NodaTime;

namespace GroveSpec.Checks.Choosing;

/// <summary>Writes into the text which trunks were taken out.</summary>
public static class ThinningEdits
{
    /// <summary>
    /// The edits that write <c>removed DAY</c> behind the last clause of each trunk that goes, and touch nothing else. A trunk that the
    /// file says is removed later gets the new day in place of the old one. From that day on the trunk is out.
    /// </summary>
    /// <param name="context">The planting that was chosen in.</param>
    /// <param name="tree">The tree of its file.</param>
    /// <param name="stand">What would stand.</param>
    /// <param name="day">The day on which the trunks are taken out.</param>
    /// <returns>The edits in the order of the text, one a trunk. A trunk that another file states, or whose statement could not be read whole, is left alone, since a clause at its end might be read as something else.</returns>
    public static ImmutableArray<TextEdit> Of(CheckContext context, SyntaxTree tree, ThinnedStand stand, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(tree);
        ArgumentNullException.ThrowIfNull(stand);
        var gone = stand.TakenOut.ToHashSet(StringComparer.Ordinal);
        var origins = context.Origins;
        var file = origins.Locate(Origin.Default).File;
        var written = $"removed {day.Year:0000}-{day.Month:00}-{day.Day:00}";
        return
        [
            .. context.State.Trunks
                .Where(trunk => trunk.Presence == Presence.Standing && gone.Contains(trunk.Name) && origins.Locate(trunk.Trunk.Origin).File == file && TornStatements.IsWhole(origins.StatementOf(trunk.Trunk.Origin).Span, tree))
                .Select(trunk => ClauseEdit.Write(origins, trunk.Trunk, trunk.Trunk.Removed?.Origin, written))
                .OrderBy(edit => edit.Place.Span.Start),
        ];
    }
}
