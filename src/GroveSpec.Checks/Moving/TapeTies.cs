using GroveSpec.Model.States;

namespace GroveSpec.Checks.Moving;

/// <summary>Which trunks tape readings place from which: were one of those moved in the file alone, the others would seem to move with it.</summary>
public static class TapeTies
{
    /// <summary>Why a trunk is not to be moved in the file alone: tape readings place others from it.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="name">The trunk, one with a place in the file.</param>
    /// <param name="so">What follows, such as "so A stays where it is".</param>
    /// <returns>A sentence with what to do; null where no other trunk's place hangs on it.</returns>
    public static string? WhyNotMoved(CheckContext context, string name, string so)
    {
        string[] hung = [.. Of(context)[name]];
        var list = Wording.List(hung);
        return hung.Length == 0
            ? null
            : $"Tape readings from {Wording.Name(name)} place {list}, which would seem to move with {Wording.Name(name)}, {so}: write down where {list} {(hung.Length == 1 ? "stands" : "stand")} first, with survey --write.";
    }

    /// <summary>The trunks that tapes place, by the trunks at the other ends of their tapes.</summary>
    /// <param name="context">The planting.</param>
    /// <returns>For each trunk the names, in their order, of those without an <c>at</c>, standing or planned, that have their place from tapes one of which leads to it; none for one that no such tape leads to.</returns>
    internal static ILookup<string, string> Of(CheckContext context)
    {
        var placed = context.State.Trunks
            .Where(trunk => trunk is { Presence: not Presence.Removed, Place: not null, Trunk.At: null })
            .Select(trunk => trunk.Name).ToHashSet(StringComparer.Ordinal);
        return context.Planting.Tapes
            .SelectMany(tape => new[] { (Mark: tape.From, Placed: tape.To), (Mark: tape.To, Placed: tape.From) })
            .Where(tie => placed.Contains(tie.Placed))
            .Distinct()
            .OrderBy(tie => tie.Placed, StringComparer.Ordinal)
            .ToLookup(tie => tie.Mark, tie => tie.Placed, StringComparer.Ordinal);
    }
}
