using System.Collections.Immutable;
using GroveSpec.Craft.Views;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Choice;

/// <summary>
/// Choices of trunks that are all seen by the same eye. Where a file does not say from how far and how high it is seen, that
/// follows from the tallest and the farthest trunk that stand; so all choices with the same two make one case.
/// </summary>
/// <param name="Required">The trunks that stand in every choice of the case: the tallest and the farthest, or none.</param>
/// <param name="Allowed">The trunks that stand in any choice of the case.</param>
/// <param name="Frame">The viewer's eye.</param>
public sealed record ViewCase(uint Required, uint Allowed, ViewFrame Frame)
{
    /// <summary>Whether a choice is one of this case.</summary>
    /// <param name="kept">The trunks that stand.</param>
    /// <returns>True when it is.</returns>
    public bool Holds(uint kept) => (Required & ~kept) == 0 && (kept & ~Allowed) == 0;

    /// <summary>The cases of a stool: every choice of at least one trunk is in exactly one of them.</summary>
    /// <param name="state">The planting, of which at most <see cref="NeighbourTable.MostTrunks"/> stand and have a place.</param>
    /// <returns>The cases.</returns>
    public static ImmutableArray<ViewCase> Of(PlantingState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        TrunkState[] trunks = [.. state.Standing];
        var all = trunks.Length == 0 ? 0 : uint.MaxValue >> (NeighbourTable.MostTrunks - trunks.Length);
        var isDistanceStated = state.Planting.Viewed?.Distance is { } given && given > Model.Quantities.Length.Zero;
        var byHeight = isDistanceStated && state.Planting.Viewed?.EyeHeight is not null
            ? [(0, all)]
            : Greatest(trunks, all, trunk => ViewFrame.HeightMillimetres(trunk), double.NegativeInfinity);
        var byReach = isDistanceStated
            ? [(0, all)]
            : Greatest(trunks, all, trunk => ViewFrame.Distant(trunk.Place!.Value), ViewFrame.ReachMillimetres(state.Planting.Container));
        var cases = ImmutableArray.CreateBuilder<ViewCase>();
        foreach (var tallest in byHeight)
        {
            foreach (var farthest in byReach)
            {
                var (required, allowed) = (tallest.Required | farthest.Required, tallest.Allowed & farthest.Allowed);
                if ((required & ~allowed) == 0 && allowed != 0)
                {
                    cases.Add(new ViewCase(required, allowed, FrameOf(state, required)));
                }
            }
        }

        return cases.ToImmutable();
    }

    /// <summary>For each trunk those choices of which it is the greatest, and those in which none is greater than the least that counts.</summary>
    private static List<(uint Required, uint Allowed)> Greatest(TrunkState[] trunks, uint all, Func<TrunkState, double> measure, double least)
    {
        var cases = new List<(uint Required, uint Allowed)>();
        var allowed = all;
        foreach (var trunk in Enumerable.Range(0, trunks.Length).Where(index => measure(trunks[index]) > least).OrderByDescending(index => measure(trunks[index])))
        {
            cases.Add((1u << trunk, allowed));
            allowed &= ~(1u << trunk);
        }

        cases.Add((0, allowed));
        return cases;
    }

    private static ViewFrame FrameOf(PlantingState state, uint required)
    {
        var place = 0;
        return ViewFrame.Of(state with { Trunks = [.. state.Trunks.Select(Stands)] });

        TrunkState Stands(TrunkState trunk) => trunk is not { Presence: Presence.Standing, Place: not null } || (required >> place++ & 1) != 0
            ? trunk
            : trunk with { Presence = Presence.Removed };
    }
}
