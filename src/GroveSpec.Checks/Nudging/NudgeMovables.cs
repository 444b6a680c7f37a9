using System.Collections.Immutable;
using GroveSpec.Checks.Moving;
using GroveSpec.Craft.Containers;
using GroveSpec.Craft.Moving;
using GroveSpec.Craft.Views;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Checks.Nudging;

/// <summary>Which trunks of a planting may be nudged, and how.</summary>
internal static class NudgeMovables
{
    /// <summary>The trunks that may be nudged: of a group those that are not fixed are moved, of a clump or raft they are bent.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="now">What the checks find now.</param>
    /// <param name="wish">How far.</param>
    /// <param name="remarks">Takes a sentence for those that stay.</param>
    /// <returns>The trunks.</returns>
    public static List<Movable> Of(CheckContext context, ImmutableArray<Finding> now, NudgeWish wish, ImmutableArray<string>.Builder remarks)
    {
        var isGroup = context.Planting.EffectiveHabit == Habit.Group;
        var trunks = context.Standing.Trunks;
        var ties = TapeTies.Of(context);
        var beyond = now.Where(finding => finding.Check.Name == "off-container").SelectMany(finding => finding.Trunks).ToHashSet(StringComparer.Ordinal);
        var movables = new List<Movable>();
        var (byTape, withoutHeight, isFixed, torn, outside) = (new List<string>(), new List<string>(), new List<string>(), new List<string>(), new List<string>());
        for (var place = 0; place < trunks.Length; place++)
        {
            var trunk = trunks[place];
            if (trunk.Trunk.Fixed is not null)
            {
                isFixed.Add(trunk.Name);
            }
            else if (wish.Torn.Contains(trunk.Name))
            {
                torn.Add(trunk.Name);
            }
            else if (isGroup && (trunk.Trunk.At is null || ties.Contains(trunk.Name)))
            {
                byTape.Add(trunk.Name);
            }
            else if (isGroup && beyond.Contains(trunk.Name) && RimRoom.Of(context.Outline!, trunk) + wish.Reach < Length.Zero)
            {
                outside.Add(trunk.Name);
            }
            else if (isGroup)
            {
                var foot = trunk.Place!.Value;
                movables.Add(new MovableFoot(place, foot.X.Millimetres, foot.Y.Millimetres, wish.Reach.Millimetres, wish.Step.Millimetres));
            }
            else if (Tip(trunk, place, wish) is { } tip)
            {
                movables.Add(tip);
            }
            else
            {
                withoutHeight.Add(trunk.Name);
            }
        }

        Remark(remarks, isFixed, "fixed", "stay as they are", "stays as it is");
        if (torn.Count > 0)
        {
            remarks.Add($"{Wording.List(Wording.Sorted(torn), 12)} {(torn.Count == 1 ? "stays as it is, since its line" : "stay as they are, since their lines")} could not be read whole: put that right first.");
        }

        if (outside.Count > 0)
        {
            remarks.Add($"{Wording.List(Wording.Sorted(outside), 12)} {(outside.Count == 1 ? "stays where it is, since it stands" : "stay where they are, since they stand")} farther outside the container than {LengthWording.Say(wish.Reach, context.Units)}, which no move within reach can mend: measure the place again, or write the container as it is.");
        }

        if (byTape.Count > 0)
        {
            remarks.Add($"{Wording.List(Wording.Sorted(byTape), 12)} {(byTape.Count == 1 ? "stays where it is, since its place hangs" : "stay where they are, since their places hang")} on tape readings that moving would make wrong: write the places down first with survey --write.");
        }

        if (withoutHeight.Count > 0)
        {
            remarks.Add($"{Wording.List(Wording.Sorted(withoutHeight), 12)} cannot be bent here, since the file gives no height for {(withoutHeight.Count == 1 ? "it" : "them")}.");
        }

        var unplaced = context.State.Trunks.Where(trunk => trunk is { Presence: Presence.Standing, Place: null }).Select(trunk => trunk.Name).Order(StringComparer.Ordinal).ToList();
        if (unplaced.Count > 0)
        {
            remarks.Add($"{Wording.List(Wording.Sorted(unplaced), 12)} {(unplaced.Count == 1 ? "has" : "have")} no place in the file and could not be looked at.");
        }

        return movables;
    }

    private static void Remark(ImmutableArray<string>.Builder remarks, List<string> names, string why, string several, string one)
    {
        if (names.Count > 0)
        {
            remarks.Add($"{Wording.List(Wording.Sorted(names), 12)} {(names.Count == 1 ? $"is {why} and {one}" : $"are {why} and {several}")}.");
        }
    }

    private static MovableTip? Tip(TrunkState trunk, int place, NudgeWish wish)
    {
        if (TrunkAxis.TipOf(trunk) is not { } tip || tip.Z.Millimetres <= 0)
        {
            return null;
        }

        var foot = trunk.Place!.Value;
        var way = ((tip.X - foot.X).Millimetres, (tip.Y - foot.Y).Millimetres, tip.Z.Millimetres);
        var hasRun = !trunk.Trunk.Line.IsEmpty;
        return new MovableTip(place, way, !hasRun && KeepsLength(trunk), hasRun ? wish.Step.Millimetres : null, wish.Bend.Degrees);
    }

    /// <summary>Whether a trunk's height may be written anew when it leans otherwise; one that was read on a day is history and stays.</summary>
    /// <param name="trunk">The trunk.</param>
    /// <returns>True when its height stands in its own line.</returns>
    public static bool KeepsLength(TrunkState trunk) => trunk.Trunk.Line.IsEmpty && trunk.Height == trunk.Trunk.Height;
}
