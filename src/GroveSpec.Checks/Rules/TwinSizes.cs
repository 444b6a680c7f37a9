using System.Collections.Immutable;
using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Composition;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Checks.Rules;

/// <summary>What twin-diameters and twin-heights have in common.</summary>
internal static class TwinSizes
{
    /// <summary>Looks for neighbours of one size.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="limit">How far sizes must differ, in percent of the larger.</param>
    /// <param name="check">The check.</param>
    /// <param name="clause">The clause of a trunk's statement that gives the size.</param>
    /// <param name="size">The size.</param>
    /// <param name="kind">The size in a sentence, such as "thickness".</param>
    /// <param name="advice">What to do, as a sentence.</param>
    /// <returns>The findings.</returns>
    public static List<Finding> Look(CheckContext context, double limit, CheckDescription check, string clause, Func<TrunkState, Length?> size, string kind, string advice)
    {
        return WorstFirst.Make(
            context,
            check,
            Twins.Find(context.Standing, size, limit),
            group => group.Trunks.Length - (group.Difference / 100),
            group => Trunks(context, group.Trunks),
            group => Tell(group.Trunks, group.Difference));

        Finding Tell(ImmutableArray<int> group, double difference)
        {
            var trunks = Trunks(context, group);
            var sizes = trunks.Select(trunk => size(trunk)!.Value).Order().ToArray();
            var (one, other) = LengthWording.SayApart(size(trunks[0])!.Value, size(trunks[^1])!.Value, context.Units);
            var (least, greatest) = LengthWording.SayApart(sizes[0], sizes[^1], context.Units);
            var range = sizes[0] == sizes[^1] ? $"{LengthWording.Say(sizes[0], context.Units)} each"
                : trunks.Length == 2 ? $"{(one == other ? $"{one} each" : $"{one} and {other}")}, {Wording.Percent(difference)} apart"
                : $"each within {LengthWording.Say(limit, 2)} % of another, from {least} to {greatest}";
            var names = Wording.List([.. trunks.Select(trunk => trunk.Name)]);
            return Draft.Of(context, check, clause, trunks, $"{names} are neighbours of one {kind}: {range}. {advice} by {LengthWording.Say(limit, 2)} %, or let them stand with a reason.") with
            {
                Measured = difference,
                Limit = limit,
                Unit = "%",
                Figures = [.. trunks.Take(12).Select(trunk => new Figure.Ring(trunk.Name))],
            };
        }
    }

    private static TrunkState[] Trunks(CheckContext context, ImmutableArray<int> group) => [.. group.Select(index => context.Standing.Trunks[index])];
}
