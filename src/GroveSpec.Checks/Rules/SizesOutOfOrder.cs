using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Composition;
using GroveSpec.Model.Roles;
using GroveSpec.Model.States;

namespace GroveSpec.Checks.Rules;

/// <summary>What wide-but-short and thin-but-tall have in common.</summary>
internal static class SizesOutOfOrder
{
    /// <summary>Looks for trunks whose height does not go with their thickness.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="limit">How far sizes must differ, in percent of the larger.</param>
    /// <param name="check">The check.</param>
    /// <param name="isWide">Which of the two kinds is asked for.</param>
    /// <returns>The findings.</returns>
    public static List<Finding> Look(CheckContext context, double limit, CheckDescription check, bool isWide)
    {
        // The order is one for both checks; the other kind is told by the other check, with its own limit.
        var other = new Limits(context).For(Catalogue.Find(isWide ? "thin-but-tall" : "wide-but-short")!);
        var (wide, thin) = isWide ? (limit, other) : (other, limit);
        List<OutOfOrder> found =
        [
            .. SizeOrder.Find(context.Standing, wide, thin, index => HasForm(context, index, Form.Stout), index => HasForm(context, index, Form.Slender))
                .Where(trunk => trunk.IsWide == isWide),
        ];
        return WorstFirst.Make(
            context,
            check,
            found,
            trunk => trunk.Against.Length + (trunk.Difference / 1000),
            trunk => [context.Standing.Trunks[trunk.Trunk]],
            trunk => Tell(context, limit, check, trunk));
    }

    private static bool HasForm(CheckContext context, int index, Form form) =>
        context.Planting.RoleOf(context.Standing.Trunks[index].Trunk)?.Form?.Value == form;

    private static Finding Tell(CheckContext context, double limit, CheckDescription check, OutOfOrder found)
    {
        var trunk = context.Standing.Trunks[found.Trunk];
        TrunkState[] against = [.. found.Against.Select(index => context.Standing.Trunks[index])];
        var name = Wording.Name(trunk.Name);
        var thick = LengthWording.Say(trunk.Diameter!.Value.Value, context.Units);
        var high = LengthWording.Say(trunk.Height!.Value.Value, context.Units);
        var others = Wording.List([.. against.Select(other => other.Name)]);
        var verb = against.Length == 1 ? "is" : "are";
        var message = found.IsWide
            ? $"{name} is wide but short: {thick} thick, {Wording.Ordinal(found.DiameterRank)} of {found.Measured}, but {high} high, {Wording.Ordinal(found.HeightRank)}, while {others} {verb} thinner and yet taller. Let it run up or hold {(against.Length == 1 ? others : "the others")} back; if it is meant so, give it a role with form stout."
            : $"{name} is tall but thin: {high} high, {Wording.Ordinal(found.HeightRank)} of {found.Measured}, but {thick} thick, {Wording.Ordinal(found.DiameterRank)}, while {others} {verb} wider and yet shorter. Shorten it or let it thicken; if it is meant so, give it a role with form slender.";
        return Draft.Of(context, check, found.IsWide ? "height" : "diameter", [trunk], message, against) with
        {
            Measured = found.Difference,
            Limit = limit,
            Unit = "%",
            Figures = [new Figure.Ring(trunk.Name)],
        };
    }
}
