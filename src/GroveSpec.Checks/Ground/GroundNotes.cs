using GroveSpec.Model.States;

namespace GroveSpec.Checks.Ground;

/// <summary>What a grower has to know besides the ground.</summary>
internal static class GroundNotes
{
    /// <summary>The notes of a search.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="wish">What was asked.</param>
    /// <param name="newcomer">The trunk.</param>
    /// <returns>Sentences.</returns>
    public static IEnumerable<string> Of(CheckContext context, GroundWish wish, TrunkState newcomer)
    {
        if (GroundEdits.WhyNot(context, newcomer) is { } whyNot)
        {
            yield return whyNot;
        }

        string[] lost = [.. context.State.Trunks.Where(trunk => trunk is { Presence: Presence.Standing, Place: null } && trunk.Name != wish.Of).Select(trunk => trunk.Name).Order(NaturalOrder.Instance)];
        if (lost.Length > 0)
        {
            yield return $"{Wording.List(lost)} {(lost.Length == 1 ? "stands" : "stand")} here too, but nothing gives {(lost.Length == 1 ? "its" : "their")} place, so the ground {(lost.Length == 1 ? "it takes" : "they take")} is not left out.";
        }

        if (newcomer.Height is null)
        {
            yield return "No height is given, so nothing that asks for it was looked at: tops in the view, neighbours of one height, and the order of sizes.";
        }
    }
}
