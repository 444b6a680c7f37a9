using System.Globalization;
using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Survey;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Model.Trunks;

namespace GroveSpec.Checks.Moving;

/// <summary>Finds the smallest move of one trunk that clears a finding and raises no new one.</summary>
/// <remarks>
/// A grower sets a trunk by the millimetre, so places a whole number of millimetres away are tried (twentieths of an inch
/// for one who works in inches), the nearest first; of places as near as each other the trunk that comes first by name and
/// the lesser bearing win. Each place is judged as the file itself would be after the move.
/// </remarks>
public static class SmallestMove
{
    /// <summary>How often a trunk may be looked at for what is asked at once: a second or two of work.</summary>
    public const int MostLooks = 400_000;

    private const int FarthestStep = 60;

    /// <summary>Finds the move.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="finding">A finding of its composition.</param>
    /// <param name="looks">How often a trunk may be looked at.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>
    /// The move as edits of the trunk's <c>at</c> and of its <c>line</c>, whichever it has, titled such as "move B 6 mm toward
    /// 120 deg"; null where the finding is about no trunk with a place in the file that may be moved and from which tape readings
    /// place no other, or no move of up to 60 mm (3 in) was found within so many looks.
    /// </returns>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public static Remedy? Find(CheckContext context, Finding finding, int looks, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(finding);
        var movable = Movable(context, finding);
        if (movable.Count == 0 || Rule(finding.Check) is not { } rule)
        {
            return null;
        }

        var before = Keys(Checker.Composition(context, cancellation), out var countBefore);
        var limit = new Limits(context).For(finding.Check);
        var key = KeyOf(finding);
        var step = HandStep.Of(context.Units);
        var looked = 0;
        foreach (var (right, back) in Offsets())
        {
            foreach (var trunk in movable)
            {
                cancellation.ThrowIfCancellationRequested();
                looked += context.State.Trunks.Length;
                if (looked > looks)
                {
                    return null;
                }

                var from = trunk.Place!.Value;
                var place = new PlanPoint(from.X + new Length(right * step.Nanometres), from.Y + new Length(back * step.Nanometres));
                var moved = Moved(context, trunk.Trunk, place);
                if (rule.Look(moved, limit).Any(other => KeyOf(other) == key))
                {
                    continue;
                }

                looked += 3 * context.State.Trunks.Length;
                // Afresh, for the rule has told its facts to the context it looked at.
                var after = Keys(Checker.Composition(new CheckContext(moved.Planting, moved.State, moved.Origins, moved.Units), cancellation), out var countAfter);
                if (!after.Contains(key) && after.IsSubsetOf(before) && countAfter < countBefore)
                {
                    return Remedy(context, trunk.Trunk, from, place);
                }
            }
        }

        return null;
    }

    private static List<TrunkState> Movable(CheckContext context, Finding finding)
    {
        var ties = TapeTies.Of(context);
        return
        [
            .. context.State.Standing
                .Where(trunk => trunk.Trunk.At is not null && finding.Trunks.Contains(trunk.Name) && !context.Planting.IsFixed(trunk.Trunk) && !ties.Contains(trunk.Name))
                .OrderBy(trunk => trunk.Name, StringComparer.Ordinal),
        ];
    }

    private static IRule? Rule(CheckDescription check)
    {
        foreach (var rule in Catalogue.Rules)
        {
            if (ReferenceEquals(rule.Description, check))
            {
                return rule;
            }
        }

        return null;
    }

    private static string KeyOf(Finding finding) => Acceptances.Key(finding.Check.Name, finding.Trunks);

    private static HashSet<string> Keys(IEnumerable<Finding> findings, out int count)
    {
        var keys = new HashSet<string>(StringComparer.Ordinal);
        count = 0;
        foreach (var finding in findings)
        {
            keys.Add(KeyOf(finding));
            count += 1 + finding.Untold;
        }

        return keys;
    }

    /// <summary>Whole steps to the right and to the back, the nearest first and of equals by bearing.</summary>
    private static IEnumerable<(int Right, int Back)> Offsets()
    {
        var offsets = new List<(int Right, int Back)>();
        for (var right = -FarthestStep; right <= FarthestStep; right++)
        {
            for (var back = -FarthestStep; back <= FarthestStep; back++)
            {
                var square = (right * right) + (back * back);
                if (square > 0 && square <= FarthestStep * FarthestStep)
                {
                    offsets.Add((right, back));
                }
            }
        }

        return offsets
            .OrderBy(offset => (offset.Right * offset.Right) + (offset.Back * offset.Back))
            .ThenBy(offset => Bearing.Of(offset.Right, offset.Back).Degrees);
    }

    /// <summary>The planting as it is once a trunk stands elsewhere, its run with it; a trunk without a place may have one by tape readings then.</summary>
    private static CheckContext Moved(CheckContext context, Trunk trunk, PlanPoint place)
    {
        var moved = trunk with { At = new Stated<PlanPoint>(place, trunk.At!.Value.Origin), Line = FootEdits.RunAt(trunk, place) };
        var planting = context.Planting with { Trunks = [.. context.Planting.Trunks.Select(other => ReferenceEquals(other, trunk) ? moved : other)] };
        var state = planting.Tapes.IsEmpty
            ? context.State with { Planting = planting, Trunks = [.. context.State.Trunks.Select(state => ReferenceEquals(state.Trunk, trunk) ? state with { Trunk = moved, Place = place } : state)] }
            : TapePlacement.Complete(planting.StateOn(context.State.Date), context.Distrusted);
        return new CheckContext(planting, state, context.Origins, context.Units) { Distrusted = context.Distrusted };
    }

    private static Remedy Remedy(CheckContext context, Trunk trunk, PlanPoint from, PlanPoint place)
    {
        var bearing = Math.Round(from.BearingTo(place).Degrees) % 360;
        var distance = from.DistanceTo(place);
        var said = context.Units == UnitSystem.Inch ? $"{LengthWording.Say(distance.Inches, 2)} in" : $"{LengthWording.Say(distance.Millimetres, 1)} mm";
        return new(
            string.Create(CultureInfo.InvariantCulture, $"move {Wording.Name(trunk.Name)} {said} toward {bearing:0} deg"),
            FootEdits.Of(context, trunk, place));
    }
}
