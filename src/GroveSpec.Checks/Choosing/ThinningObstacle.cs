using System.Collections.Immutable;
using GroveSpec.Model.States;

namespace GroveSpec.Checks.Choosing;

/// <summary>Says why there is nothing to choose.</summary>
internal static class ThinningObstacle
{
    /// <summary>Looks for an obstacle.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="open">The planting without what goes in any case.</param>
    /// <param name="wish">What is asked.</param>
    /// <param name="unplaced">The trunks that stay since they have no place.</param>
    /// <returns>A sentence with what to do; null where nothing is in the way.</returns>
    public static string? Of(CheckContext context, CheckContext open, ThinningWish wish, ImmutableArray<string> unplaced)
    {
        var standing = Standing(context);
        if (standing.Count == 0)
        {
            return "No trunk stands here, so there is none to choose.";
        }

        var strangers = Strangers(standing, wish);
        if (strangers.Length > 0)
        {
            return $"{Wording.List(strangers)} {(strangers.Length == 1 ? "is no trunk that stands" : "are no trunks that stand")} here. Standing are {Wording.List([.. standing.Order(StringComparer.Ordinal)], 24)}.";
        }

        var both = Both(wish);
        if (both.Length > 0)
        {
            return $"{Wording.List(both)} cannot both stay and go: name {(both.Length == 1 ? "it" : "them")} once, to stay or to go.";
        }

        var placed = open.Standing.Count;
        var left = placed + unplaced.Length;
        if (placed == 0)
        {
            return left == 0
                ? "All that stand are to go, so there is none to choose."
                : $"No trunk that may stay has a place ({Wording.List(unplaced)}), and without places nothing can be laid beside anything. Measure them with a tape, or write where they stand.";
        }

        if (placed > Thinning.MostTrunks)
        {
            return $"{placed} trunks stand here, and choices are looked through among up to {Thinning.MostTrunks}. Say which {(placed == Thinning.MostTrunks + 1 ? "one goes" : $"{placed - Thinning.MostTrunks} go")} in any case.";
        }

        if (left < wish.Least)
        {
            return $"Only {left} {(left == 1 ? "trunk" : "trunks")} could stay, and {wish.Least} are to be kept: ask for fewer.";
        }

        var fixedIn = wish.With.Union(unplaced, StringComparer.Ordinal).Count();
        if (fixedIn > wish.Most || (fixedIn == wish.Most && fixedIn == unplaced.Length))
        {
            return $"{Wording.List([.. wish.With.Union(unplaced, StringComparer.Ordinal).Order(StringComparer.Ordinal)])} would stay in any case, and no more than {wish.Most} are to be kept"
                + (unplaced.IsEmpty ? ": ask for more, or let fewer stay." : ". A trunk without a place stays too, since it cannot be laid beside the others: measure where it stands, or say that it goes.");
        }

        return left == wish.Least && wish.Without.IsEmpty
            ? $"No more than {left} {(left == 1 ? "trunk stands" : "trunks stand")} here, and as many are to be kept: there is nothing to choose."
            : null;
    }

    /// <summary>Whether the question cannot be meant of this planting: it names a trunk that does not stand, or one both to stay and to go.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="wish">What is asked.</param>
    /// <returns>True where it cannot.</returns>
    public static bool IsMisasked(CheckContext context, ThinningWish wish) => Strangers(Standing(context), wish).Length > 0 || Both(wish).Length > 0;

    private static HashSet<string> Standing(CheckContext context) =>
        context.State.Trunks.Where(trunk => trunk.Presence == Presence.Standing).Select(trunk => trunk.Name).ToHashSet(StringComparer.Ordinal);

    private static string[] Strangers(HashSet<string> standing, ThinningWish wish) =>
        [.. wish.With.Concat(wish.Without).Where(name => !standing.Contains(name)).Distinct(StringComparer.Ordinal)];

    private static string[] Both(ThinningWish wish) => [.. wish.With.Intersect(wish.Without, StringComparer.Ordinal)];
}
