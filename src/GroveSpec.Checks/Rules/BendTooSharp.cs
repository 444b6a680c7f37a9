using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Wire;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Rules;

/// <summary>A bend that stretches the outer fibres past the limit of the species.</summary>
internal sealed class BendTooSharp : IRule
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "bend-too-sharp",
        Severity = Severity.Warning,
        Meaning = "A bend stretches the outer fibres further than the species' profile allows.",
        Explanation = "Where a trunk is bent, the fibres outside are stretched by the trunk's radius over the radius of the bend, and past some stretch they tear. A bend is spread over a length and reached in passes, each held until it has set, and the hands carry the load. The limit is the bend-limit of the species' profile; none could be read in a source, so the built-in profiles have none, and the check is silent until a profile in the file gives one.",
        Source = "strain of a bent round bar, D / 2R; the limit is the profile's",
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        foreach (var plan in WireDraft.Open(context))
        {
            if (plan.Bend is { SpeciesLimit: { } allowed } bend && bend.Strain > allowed)
            {
                yield return Told(context, plan, bend, allowed);
            }
        }
    }

    private Finding Told(CheckContext context, WirePlan plan, WireBend bend, Proportion allowed)
    {
        var units = context.Units;
        var (trunk, longer) = (Wording.Name(plan.Trunk.Name), Length.FromMillimetres(Math.Ceiling(bend.LengthForReference.Millimetres)));
        var fits = plan.Run is not { } run || longer <= run;
        var spread = fits
            ? $"Spread it over {LengthWording.Say(longer, units)} or more, or go there"
            : $"Even the whole trunk is too short to spread it, for that takes {LengthWording.Say(longer, units)}: bend it less, or go there";
        var finding = WorkDraft.Of(
            context,
            Description,
            plan.Term.Wire,
            $"{WorkDraft.Name(plan.Term.Wire)} bends {trunk}, {LengthWording.Say(plan.Thickness!.Value, units)} thick there, by {LengthWording.Say(bend.Stated.Angle.Degrees, 1)} deg over {LengthWording.Say(bend.Over, units)}: the outer fibres are stretched by {Strain(bend.Strain)}, past the {Strain(allowed)} that the profile of {plan.Kind.Said} gives. {spread} in {bend.Passes} passes, each held until it has set. Living wood differs from tree to tree, and no figure makes a bend safe.",
            bend.Stated.Origin,
            plan.Trunk.Name) with
        {
            Measured = bend.Strain.Percent,
            Limit = allowed.Percent,
            Unit = "%",
            Weight = bend.Strain.Share / allowed.Share,
        };
        if (!fits || plan.Term.Wire.Trunks.Length != 1)
        {
            return finding;
        }

        var clause = $"bend {LengthWording.Say(bend.Stated.Angle.Degrees, 6)} deg toward {LengthWording.Say(bend.Stated.Toward.Degrees, 6)} deg over {LengthWording.Say(longer.Millimetres, 0)} mm";
        return finding with { Remedies = [new Remedy($"spread the bend over {LengthWording.Say(longer, units)}", [new(context.Origins.Locate(bend.Stated.Origin), clause)]), .. finding.Remedies] };
    }

    private static string Strain(Proportion strain) => LengthWording.Say(strain.Percent, strain.Percent < 9.95 ? 2 : 0) + " %";
}
