using GroveSpec.Craft.Wire;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Judging;

/// <summary>What the checks of wire against the trunk have in common.</summary>
internal static class WireDraft
{
    /// <summary>The wires that a grower can still change: those that were not taken off.</summary>
    /// <param name="context">The planting.</param>
    /// <returns>One for each wire on each trunk.</returns>
    public static IEnumerable<WirePlan> Open(CheckContext context) => context.Wires.Where(plan => !plan.Term.IsOff);

    /// <summary>A finding about the size of a wire.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="check">The check.</param>
    /// <param name="plan">The wire; its size and the trunk's thickness are known.</param>
    /// <param name="limit">The limit in percent.</param>
    /// <param name="isAllowed">Whether a share of the trunk's thickness passes the check.</param>
    /// <returns>The finding.</returns>
    public static Finding OfSize(CheckContext context, CheckDescription check, WirePlan plan, double limit, Func<Proportion, bool> isAllowed)
    {
        var (wire, thickness, share) = (plan.Used!.Value, plan.Thickness!.Value, plan.Share!.Value);
        var (units, name) = (context.Units, Wording.Name(plan.Trunk.Name));
        var equal = wire.AluminiumEqual == wire.Diameter ? "" : $", which bends as hard as one aluminium wire of {LengthWording.Say(wire.AluminiumEqual, units)},";
        var message = $"{WorkDraft.Name(plan.Term.Wire)} has {WireWording.Say(wire, units)}{equal} on {name}: {LengthWording.Say(share.Percent, 0)} % of the {LengthWording.Say(thickness, units)} that {name} has {Where(plan, units)}. Common practice is about a third, here {LengthWording.Say(plan.Third!.Value, units)}. {Advice(plan, isAllowed, units)}{Balance(plan)}";
        var finding = WorkDraft.Of(context, check, plan.Term.Wire, message, plan.Stated!.Origin, plan.Trunk.Name) with
        {
            Measured = share.Percent,
            Limit = limit,
            Unit = "%",
            Weight = Math.Abs(share.Percent - limit),
        };
        return Best(plan, isAllowed) is { } better && plan.Term.Wire.Trunks.Length == 1
            ? finding with { Remedies = [new Remedy($"take {WireWording.Say(better, units)}", [new(context.Origins.Locate(plan.Stated.Origin), WireWording.Clause(better))]), .. finding.Remedies] }
            : finding;
    }

    private static WireSize? Best(WirePlan plan, Func<Proportion, bool> isAllowed) =>
        plan.Best is { } best && isAllowed(new Proportion(best.AluminiumEqual / plan.Thickness!.Value)) ? best : null;

    private static string Where(WirePlan plan, UnitSystem units) => plan.Place > Length.Zero
        ? $"{LengthWording.Say(plan.Place, units)} up the trunk, where the wire does its work"
        : "above its flare";

    private static string Advice(WirePlan plan, Func<Proportion, bool> isAllowed, UnitSystem units) => Best(plan, isAllowed) is { } best
        ? $"The nearest that is sold is {WireWording.Say(best, units)}{(plan.Term.Wire.Trunks.Length == 1 ? "" : "; give this trunk a wire task of its own")}."
        : plan.Best is { } nearest && nearest.AluminiumEqual < plan.Third!.Value
            ? $"No wire sold comes near it, not even {WireWording.Say(nearest, units)}: bend in small passes, or pull the trunk with a guy line instead."
            : "Every wire sold is thicker: bend it by hand and hold it with raffia or a soft tie instead.";

    private static string Balance(WirePlan plan) => plan.Bend is { } bend
        ? $" For comparison only: at this bend {bend.Wood.Wood} pushes back with about {WireWording.Say(bend.OfWood.Usual)} in a laboratory, and the wire bears {WireWording.Say(bend.OfWire)}. Living wood yields and creeps, which this leaves out, and no figure promises that a wire holds."
        : " No figure promises that a wire holds.";
}
