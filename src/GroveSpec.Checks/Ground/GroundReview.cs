using System.Collections.Immutable;
using GroveSpec.Checks.Moving;
using GroveSpec.Model.States;
using GroveSpec.Syntax.Tree;

namespace GroveSpec.Checks.Ground;

/// <summary>The search for free ground as growers are told of it: lays what was found beside what the search does not look at: planted later, and lines that could not be read.</summary>
public static class GroundReview
{
    /// <summary>Finds the free ground of a planting and its best spots, reviewed.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="tree">The tree of its file.</param>
    /// <param name="wish">The trunk.</param>
    /// <param name="sideBySide">As <see cref="FreeGround.Find"/> takes it.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>
    /// The answer, its spots with those last where the trunk would touch one that is planned to stand there, each said in a note. Where
    /// a place would be written into a line that could not be read whole, it is not, since a second place would hide the one that was
    /// meant.
    /// </returns>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public static GroundAnswer Find(CheckContext context, SyntaxTree tree, GroundWish wish, Action<int, Action<int>>? sideBySide = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(tree);
        var answer = FreeGround.Find(context, wish, sideBySide, cancellation);
        return answer.Trunk is not { } trunk || answer.Spots.IsEmpty ? answer : Unread(PlannedLast(answer, trunk, context), trunk, context, tree);
    }

    private static GroundAnswer PlannedLast(GroundAnswer answer, TrunkState trunk, CheckContext context)
    {
        var looked = answer.Spots.Select(spot => (Spot: spot, Touched: PlannedTrunks.Touched(context.State, trunk, spot.Place)));

        // The order is stable, so the better of two that touch none, or that touch some, stays before the other.
        (GroundSpot Spot, ImmutableArray<TrunkState> Touched)[] ordered = [.. looked.OrderBy(one => one.Touched.IsEmpty ? 0 : 1)];
        var notes = ordered.SelectMany((one, place) => one.Touched.Select(other => PlannedTrunks.Say($"At spot {place + 1} {Wording.Name(trunk.Name)}", one.Spot.Place, other, context.Units)));
        return answer with { Spots = [.. ordered.Select(one => one.Spot)], Notes = [.. answer.Notes, .. notes] };
    }

    private static GroundAnswer Unread(GroundAnswer answer, TrunkState trunk, CheckContext context, SyntaxTree tree)
    {
        if (trunk.Trunk.At is not null || answer.Spots[0].Edits.IsEmpty || answer.IsOneMore)
        {
            return answer;
        }

        var statement = context.Origins.StatementOf(trunk.Trunk.Origin).Span;
        return !tree.Problems.Any(problem => problem.Span.Start <= statement.End && problem.Span.End >= statement.Start) ? answer : answer with
        {
            Spots = [.. answer.Spots.Select(spot => spot with { Edits = [] })],
            Notes = [.. answer.Notes, $"The line of {Wording.Name(trunk.Name)} could not be read whole, so nothing is offered to be written: put that right first."],
        };
    }
}
