using System.Collections.Immutable;
using GroveSpec.Craft.Composition;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Ground;

/// <summary>Says why a spot is good, and what limits it.</summary>
internal static class GroundWords
{
    private const int MostNeighbours = 3;

    /// <summary>Why a free spot is good.</summary>
    /// <param name="ground">The planting and the newcomer.</param>
    /// <param name="place">The spot.</param>
    /// <param name="edge">The nearest place where a finding begins.</param>
    /// <param name="room">How far that is.</param>
    /// <param name="reason">What begins there; null where only the ground ends.</param>
    /// <param name="clears">What is found without the newcomer and no longer with it.</param>
    /// <param name="isOneMore">Whether the newcomer is no trunk of the planting, so that without it is now.</param>
    /// <returns>One sentence.</returns>
    public static string Why(GroundCase ground, PlanPoint place, PlanPoint edge, Length room, GroundReason? reason, ImmutableArray<Finding> clears, bool isOneMore)
    {
        var units = ground.Without.Units;
        var limit = reason is { } begins ? Begins(ground, begins, edge) : "the ground ends there";
        var toward = room > Length.Zero ? $" {Wording.Toward(place.BearingTo(edge))}" : "";
        var gaps = Gaps(ground, place);
        var welcome = clears.IsEmpty ? "" : $"; {(isOneMore ? "" : "of what is found without it ")}{(clears.Length == 1 ? "it clears" : $"it clears {clears.Length} findings, the first being")} {clears[0].Check.Name}{(clears[0].Trunks.IsEmpty ? "" : $" of {Wording.List(clears[0].Trunks)}")}";
        return $"It may be set {LengthWording.Say(room, units)} off in any direction before a finding begins, the nearest{toward}: {limit}{gaps}{welcome}.";
    }

    /// <summary>What a spot that is not free leaves.</summary>
    /// <param name="raises">What it raises.</param>
    /// <returns>One sentence.</returns>
    public static string LeastBad(ImmutableArray<Finding> raises) => raises.Length == 1
        ? $"It raises one finding: {Said(raises[0])}."
        : $"It raises {raises.Length} findings: {string.Join("; ", raises.Take(4).Select(Said))}{(raises.Length > 4 ? $"; and {raises.Length - 4} more" : "")}.";

    /// <summary>What begins at an edge, as the end of a sentence.</summary>
    /// <param name="ground">The planting and the newcomer.</param>
    /// <param name="reason">The finding.</param>
    /// <param name="edge">Where it begins.</param>
    /// <returns>Such as "there it comes into line with A and C".</returns>
    public static string Begins(GroundCase ground, GroundReason reason, PlanPoint edge)
    {
        var others = ground.NamesOf(reason.Trunks & ~ground.Own);
        var names = Wording.List(others);
        var isOwn = (reason.Trunks & ground.Own) != 0;
        return reason.Check.Name switch
        {
            "near-rim" => "there the rim comes too near",
            "off-container" => "there its bark reaches past the rim",
            "centred-main" => "there it stands on the container's centre line",
            "depth-reversed" => "there the order of sizes from front to back turns against the depth that was chosen",
            "touching" when isOwn => $"there it touches {names}",
            "three-in-line" when isOwn => $"there it comes into line with {names}",
            "even-gaps" when isOwn => EvenGap(ground, others, edge),
            "even-gaps-in-view" when isOwn => $"there, seen from the front, the gaps between it, {names} look the same",
            "level-tops" when isOwn => $"there, seen from the front, its top comes into line with those of {names}",
            "twin-diameters" when isOwn => $"there it becomes a neighbour of {names}, and as thick",
            "twin-heights" when isOwn => $"there it becomes a neighbour of {names}, and as tall",
            "hidden-trunk" => isOwn ? "there it is hidden, as seen from the front" : $"there {names} is hidden behind it, as seen from the front",
            _ => $"there it makes {names} a finding of {reason.Check.Name}",
        };
    }

    private static string EvenGap(GroundCase ground, ImmutableArray<string> others, PlanPoint edge)
    {
        if (others.Length != 2)
        {
            return $"there its gaps to {Wording.List(others)} are even";
        }

        PlanPoint one = PlaceOf(ground, others[0]), other = PlaceOf(ground, others[1]);
        Length left = edge.DistanceTo(one), right = edge.DistanceTo(other), between = one.DistanceTo(other);
        var (fromBoth, fromOne, fromOther) = (Likeness.DifferenceInPercent(left, right), Likeness.DifferenceInPercent(left, between), Likeness.DifferenceInPercent(right, between));
        return fromBoth <= fromOne && fromBoth <= fromOther ? $"there it stands as far from {Wording.Name(others[0])} as from {Wording.Name(others[1])}"
            : fromOne <= fromOther ? $"there it stands as far from {Wording.Name(others[0])} as {Wording.Name(others[1])} does"
            : $"there it stands as far from {Wording.Name(others[1])} as {Wording.Name(others[0])} does";
    }

    private static PlanPoint PlaceOf(GroundCase ground, string name) => ground.Trunks.First(trunk => trunk.Name == name).Place!.Value;

    private static string Gaps(GroundCase ground, PlanPoint place)
    {
        var near = ground.Others.Trunks
            .Select(trunk => (trunk.Name, Gap: trunk.Place!.Value.DistanceTo(place)))
            .OrderBy(one => one.Gap).ThenBy(one => one.Name, StringComparer.Ordinal).Take(MostNeighbours)
            .Select(one => $"{Wording.Name(one.Name)} {LengthWording.Say(one.Gap, ground.Without.Units)}").ToList();
        return near.Count == 0 ? "" : $"; nearest to it, centre to centre, {(near.Count == 1 ? "stands" : "stand")} {(near.Count == 1 ? near[0] : $"{string.Join(", ", near.SkipLast(1))} and {near[^1]}")} off";
    }

    private static string Said(Finding finding) => $"{finding.Check.Name}{(finding.Trunks.IsEmpty ? "" : $" of {Wording.List(finding.Trunks)}")}";
}
