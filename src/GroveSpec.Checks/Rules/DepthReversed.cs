using GroveSpec.Checks.Judging;
using GroveSpec.Craft.Composition;
using GroveSpec.Model.Judgement;
using GroveSpec.Model.Views;

namespace GroveSpec.Checks.Rules;

/// <summary>The small stand in front of the large, or behind, against the depth that the file chose.</summary>
internal sealed class DepthReversed : IRule
{
    private const int Fewest = 3;

    /// <inheritdoc/>
    public CheckDescription Description { get; } = new()
    {
        Name = "depth-reversed",
        Severity = Severity.Warning,
        Limit = new(0.3, ToleranceUnit.Ratio, 0, 1),
        Meaning = "The order of sizes from front to back goes against the depth that the file chose.",
        Explanation = "Large near and small far deepens a small scene; small near and large far is a wood seen from its edge. Both are sound, but the trunks should follow the one that was chosen with near or far. The measure is Spearman's rank correlation of diameter with nearness, from three trunks on; it is told when it is at least the limit on the wrong side.",
        Source = "common practice; the limit is our own choice",
        IsComposition = true,
    };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CheckContext context, double limit)
    {
        if (context.Planting.Viewed is not { Depth: { } depth } viewed)
        {
            return [];
        }

        var seen = context.View.Trunks.Where(trunk => trunk.Trunk.Diameter is not null).ToList();
        var correlation = RankCorrelation.Spearman(
            [.. seen.Select(trunk => trunk.Trunk.Diameter!.Value.Value.Millimetres)],
            [.. seen.Select(trunk => -trunk.Foot.Depth.Millimetres)]);
        var agreement = Agreement(depth, correlation);
        if (!IsReversed(depth, correlation, seen.Count, limit))
        {
            return [];
        }

        var largest = Wording.Name(seen.MaxBy(trunk => trunk.Trunk.Diameter!.Value.Value)!.Name);
        var (chosen, found, way, other) = depth == DepthOrder.Near
            ? ("large near and small far", "the thicker trunks stand further back", "forward", "far")
            : ("small near and large far", "the thicker trunks stand nearer", "back", "near");
        return
        [
            new Finding
            {
                Check = Description,
                Severity = Description.Severity,
                Place = context.Origins.Locate(viewed.Origin),
                Message = $"The view is meant as {chosen}, but {found}: from 1, just as chosen, to -1, just the reverse, the order comes to {LengthWording.Say(agreement, 2)}. Bring {largest} and the thick ones {way}, or write {other} if that is what you mean.",
                Measured = agreement,
                Limit = -limit,
                Weight = -agreement,
                Remedies = Acceptance.Offer(context, Description, []),
            },
        ];
    }

    /// <summary>Whether the order runs against the one that was chosen.</summary>
    /// <param name="depth">The order that was chosen.</param>
    /// <param name="correlation">How far thickness goes with nearness, from −1 to 1.</param>
    /// <param name="trunks">Of how many trunks.</param>
    /// <param name="limit">How far it has to run against it.</param>
    /// <returns>True when it does.</returns>
    public static bool IsReversed(DepthOrder depth, double correlation, int trunks, double limit) =>
        trunks >= Fewest && Agreement(depth, correlation) is < 0 and var agreement && agreement <= -limit;

    private static double Agreement(DepthOrder depth, double correlation) => depth == DepthOrder.Near ? correlation : -correlation;
}
