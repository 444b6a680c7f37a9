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
        var name = Wording.Name(newcomer.Name);
        if (wish.Of is not null && context.Planting.IsFixed(newcomer.Trunk))
        {
            yield return $"{name} is fixed{(newcomer.Trunk.Fixed is null ? ", as all bases of a clump or raft are" : "")}, so nothing is offered to be written: the ground only shows where it could have stood.";
        }
        else if (wish.Of is not null && newcomer.Trunk.At is null)
        {
            yield return $"The file gives {name} no \"at\" of its own, so nothing is offered to be written: write one, or measure it anew once it stands elsewhere.";
        }

        string[] hung = wish.Of is null ? [] :
        [
            .. context.State.Standing
                .Where(trunk => trunk.Trunk.At is null && context.Planting.Tapes.Any(tape => (tape.From == trunk.Name && tape.To == wish.Of) || (tape.To == trunk.Name && tape.From == wish.Of)))
                .Select(trunk => trunk.Name).Order(StringComparer.Ordinal),
        ];
        if (hung.Length > 0)
        {
            yield return $"{Wording.List(hung)} {(hung.Length == 1 ? "is" : "are")} placed by tape readings from {name} and {(hung.Length == 1 ? "is" : "are")} taken to stay where {(hung.Length == 1 ? "it stands" : "they stand")}: write down an \"at\" before {name} is moved.";
        }

        string[] lost = [.. context.State.Trunks.Where(trunk => trunk is { Presence: Presence.Standing, Place: null } && trunk.Name != wish.Of).Select(trunk => trunk.Name).Order(StringComparer.Ordinal)];
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
