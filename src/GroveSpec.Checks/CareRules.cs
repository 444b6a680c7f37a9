using System.Collections.Immutable;
using GroveSpec.Checks.Rules;

namespace GroveSpec.Checks;

/// <summary>The rules about the work: what a careful grower would say of its time, its kind and its company.</summary>
internal static class CareRules
{
    /// <summary>Every rule, once.</summary>
    public static ImmutableArray<IRule> All { get; } =
    [
        new CoilAngle(),
        new WireTooThin(),
        new WireTooThick(),
        new BendTooSharp(),
        new WireOnTooLong(),
        new WireUnwatched(),
        new LateCut(),
        new TooMuchAtOnce(),
        new SacrificeInFront(),
        new SacrificeKept(),
        new UnfitForSpecies(),
        new OutOfSeason(),
        new NoShelter(),
        new FedTooSoon(),
        new ElmPruning(),
    ];
}
