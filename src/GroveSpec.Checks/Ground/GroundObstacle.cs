using GroveSpec.Model.States;

namespace GroveSpec.Checks.Ground;

/// <summary>Says why no ground can be looked for.</summary>
internal static class GroundObstacle
{
    /// <summary>Looks for an obstacle.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="wish">The trunk.</param>
    /// <returns>A sentence with what to do; null where nothing is in the way.</returns>
    public static string? Of(CheckContext context, GroundWish wish)
    {
        var trunks = context.State.Trunks;
        if (wish.Of is { } name)
        {
            var known = trunks.Where(trunk => trunk.Presence != Presence.Removed).Select(trunk => trunk.Name).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
            if (known.Count == 0)
            {
                return "No trunk stands here or is planned, so there is none to find another place for.";
            }

            if (Named(context, name) is not { } named)
            {
                return $"{Wording.Name(name)} is no trunk that stands or is planned here. There are {Wording.List(Wording.Sorted(known), 24)}.";
            }

            if (named.Diameter is null && wish.Diameter is null)
            {
                return $"{Wording.Name(name)} has no diameter, and without one nothing can be laid beside the others: write it into the file, or give one here.";
            }
        }
        else if (wish.Diameter is null)
        {
            return "The thickness of the trunk is not known: give its diameter, such as 18 mm, or name a trunk of the planting.";
        }

        var others = trunks.Count(trunk => trunk is { Presence: Presence.Standing, Place: not null } && trunk.Name != wish.Of);
        if (others >= FreeGround.MostTrunks)
        {
            return $"{others} trunks stand here, and ground is looked for among up to {FreeGround.MostTrunks - 1}. Part the planting into several files, or leave out what stands far from the place you think of.";
        }

        return context.Planting.Container is null && others == 0
            ? "No trunk with a place stands here and no container is given, so nothing bounds the ground. Write a container, or where the trunks stand."
            : null;
    }

    /// <summary>Whether the question cannot be meant of this planting: it names a trunk that neither stands nor is planned.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="wish">The trunk.</param>
    /// <returns>True where it cannot.</returns>
    public static bool IsMisasked(CheckContext context, GroundWish wish) => wish.Of is { } name && Named(context, name) is null;

    private static TrunkState? Named(CheckContext context, string name) =>
        context.State.Trunks.FirstOrDefault(trunk => trunk.Name == name && trunk.Presence != Presence.Removed);
}
