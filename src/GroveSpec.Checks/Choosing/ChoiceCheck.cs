using GroveSpec.Checks.Judging;

namespace GroveSpec.Checks.Choosing;

/// <summary>One check as it counts for choices of trunks and of fronts, in plantings of at most 64 trunks: what a finding of it weighs, and which ones the file lets stand.</summary>
internal sealed class ChoiceCheck
{
    private const double ErrorWeight = 3;
    private const double HintWeight = 0.5;

    private readonly HashSet<ulong> accepted = [];

    /// <summary>Reads what a file says of a check.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="limits">Its limits.</param>
    /// <param name="name">The check's name.</param>
    public ChoiceCheck(CheckContext context, Limits limits, string name)
    {
        var check = Catalogue.Find(name)!;
        Limit = limits.For(check);
        IsOn = !context.Planting.Muted.Any(muted => muted.Check == name);
        Weight = WeightOf(check.Severity);
        foreach (var one in context.Planting.Accepted.Where(accept => accept.Check == name))
        {
            var set = 0UL;
            var isKnown = true;
            foreach (var trunk in one.Trunks)
            {
                var place = Place(context, trunk);
                isKnown &= place >= 0;
                set |= place >= 0 ? 1UL << place : 0;
            }

            if (isKnown)
            {
                accepted.Add(set);
            }
        }
    }

    /// <summary>Its limit for this file.</summary>
    public double Limit { get; }

    /// <summary>Whether the file does not mute it.</summary>
    public bool IsOn { get; }

    /// <summary>What one finding of it adds to the score.</summary>
    public double Weight { get; }

    /// <summary>Whether the file accepts any finding of it.</summary>
    public bool HasAccepted => accepted.Count > 0;

    /// <summary>What a finding adds to the score.</summary>
    /// <param name="severity">How much it weighs.</param>
    /// <returns>3 for an error, 1 for a warning, a half for a hint.</returns>
    public static double WeightOf(Severity severity) => severity switch
    {
        Severity.Error => ErrorWeight,
        Severity.Warning => 1,
        _ => HintWeight,
    };

    /// <summary>Whether the file lets a finding stand.</summary>
    /// <param name="trunks">The trunks it is about, as a set.</param>
    /// <returns>True when it does.</returns>
    public bool Accepts(ulong trunks) => accepted.Contains(trunks);

    /// <summary>What a finding adds to the score, unless the file lets it stand.</summary>
    /// <param name="trunks">The trunks it is about, as a set.</param>
    /// <returns>Its weight, or 0 where the file lets it stand.</returns>
    public double Of(ulong trunks) => accepted.Contains(trunks) ? 0 : Weight;

    private static int Place(CheckContext context, string name)
    {
        var trunks = context.Standing.Trunks;
        for (var index = 0; index < trunks.Length; index++)
        {
            if (trunks[index].Name == name)
            {
                return index;
            }
        }

        return -1;
    }
}
