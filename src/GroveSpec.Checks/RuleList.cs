using System.Collections.Immutable;
using GroveSpec.Checks.Rules;

namespace GroveSpec.Checks;

/// <summary>The rules in the order of the language's table.</summary>
internal static class RuleList
{
    /// <summary>Every rule, once.</summary>
    public static ImmutableArray<IRule> All { get; } =
    [
        new ThreeInLine(),
        new EvenGaps(),
        new EvenGapsInView(),
        new TwinDiameters(),
        new TwinHeights(),
        new WideButShort(),
        new ThinButTall(),
        new HiddenTrunk(),
        new DepthReversed(),
        new LevelTops(),
        new CentredMain(),
        new EvenCount(),
        new Touching(),
        new NearRim(),
        new OffContainer(),
    ];
}
