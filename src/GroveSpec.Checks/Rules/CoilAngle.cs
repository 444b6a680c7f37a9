using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Wire;
using GroveSpec.Model.Judgement;

namespace GroveSpec.Checks.Rules;

/// <summary>A wire that is wound too close or too steep.</summary>
internal sealed class CoilAngle : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "coil-angle",
        Severity = Severity.Hint,
        Limit = new(5, ToleranceUnit.Degrees, 1, 30),
        Meaning = "A wire is wound at another angle than the one that holds best.",
        Explanation = "Common practice winds wire at 45 to 55 degrees from the trunk's axis. Steeper along the trunk there is too little wire round it to hold; flatter, close like a spring, it gives no purchase and takes more wire. The limit is how far from 50 degrees it may be.",
        Source = "common practice",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        // Of a task on several trunks the angle is one fact.
        foreach (var plan in WireDraft.Open(context).DistinctBy(plan => plan.Term.Wire.Dated.Task.Name, StringComparer.Ordinal))
        {
            if (plan.StatedCoil is not { } coil || Math.Abs(coil.Angle.Degrees - WirePlan.UsualCoil.Degrees) <= limit)
            {
                continue;
            }

            var (least, most) = (WirePlan.UsualCoil.Degrees - limit, WirePlan.UsualCoil.Degrees + limit);
            var isClose = coil.Angle.Degrees > most;
            var why = isClose ? "wound as close as that, like a spring, it gives no purchase" : "wound as open as that, there is too little wire round the trunk to hold";
            var better = LengthWording.Say(isClose ? most : least, 2);
            var finding = WorkDraft.Of(
                context,
                Description,
                plan.Term.Wire,
                $"{WorkDraft.Name(plan.Term.Wire)} is wound at {LengthWording.Say(coil.Angle.Degrees, 2)} deg from the trunk’s axis: {why}. Common practice is {LengthWording.Say(least, 2)} to {LengthWording.Say(most, 2)} deg.",
                coil.Origin);
            yield return finding with
            {
                Measured = coil.Angle.Degrees,
                Limit = isClose ? most : least,
                Unit = "deg",
                Weight = Math.Abs(coil.Angle.Degrees - WirePlan.UsualCoil.Degrees),
                Remedies = [new Remedy($"wind it at {better} deg", [new(context.Origins.Locate(coil.Origin), $"coil {better} deg")]), .. finding.Remedies],
            };
        }
    }
}
