using GroveSpec.Model.States;

namespace GroveSpec.Checks.Choosing;

/// <summary>A planting as it would be with some of its trunks taken out.</summary>
internal static class ThinnedContext
{
    /// <summary>Takes trunks out.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="isTakenOut">Which of the standing trunks are.</param>
    /// <returns>The planting on the same day with those removed, to be looked at afresh.</returns>
    public static CheckContext Of(CheckContext context, Func<TrunkState, bool> isTakenOut)
    {
        var trunks = context.State.Trunks.Select(trunk => trunk.Presence == Presence.Standing && isTakenOut(trunk) ? trunk with { Presence = Presence.Removed } : trunk);
        return new CheckContext(context.Planting, context.State with { Trunks = [.. trunks] }, context.Origins, context.Units);
    }

    /// <summary>Keeps some of the trunks that stand and have a place; those without one stay.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="kept">Those kept, as a set of places in <see cref="CheckContext.Standing"/>.</param>
    /// <returns>The planting with the others taken out.</returns>
    public static CheckContext Of(CheckContext context, uint kept)
    {
        var names = context.Standing.Trunks.Where((_, index) => (kept >> index & 1) != 0).Select(trunk => trunk.Name).ToHashSet(StringComparer.Ordinal);
        return Of(context, trunk => trunk.Place is not null && !names.Contains(trunk.Name));
    }
}
