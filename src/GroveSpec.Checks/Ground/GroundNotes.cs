using GroveSpec.Model.States;

namespace GroveSpec.Checks.Ground;

/// <summary>What a grower has to know besides the ground.</summary>
internal static class GroundNotes
{
    /// <summary>The notes of a search.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="wish">What was asked.</param>
    /// <param name="ground">The planting with the trunk.</param>
    /// <returns>Sentences.</returns>
    public static IEnumerable<string> Of(CheckContext context, GroundWish wish, GroundCase ground)
    {
        var newcomer = ground.Newcomer;
        if (GroundEdits.WhyNot(context, newcomer) is { } whyNot)
        {
            yield return whyNot;
        }

        string[] lost = [.. context.State.Trunks.Where(trunk => trunk is { Presence: Presence.Standing, Place: null } && trunk.Name != wish.Of).Select(trunk => trunk.Name).Order(NaturalOrder.Instance)];
        if (lost.Length > 0)
        {
            yield return $"{Wording.List(lost)} {(lost.Length == 1 ? "stands" : "stand")} here too, but nothing gives {(lost.Length == 1 ? "its" : "their")} place, so the ground {(lost.Length == 1 ? "it takes" : "they take")} is not left out.";
        }

        if (FirstPlace.Of(context, ground) is not null)
        {
            yield return "No other trunk whose place is known stands here. The spots keep off the centre line and lie about a third of the way in from a side, where most growers put the largest trunk; for a smaller one, set the largest first.";
        }

        if (newcomer.Height is null)
        {
            yield return "No height is given, so nothing that asks for it was looked at: tops in the view, neighbours of one height, and the order of sizes.";
        }
    }
}
