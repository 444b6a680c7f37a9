using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Tasks;

namespace GroveSpec.Craft.Wire;

/// <summary>One size of wire to buy.</summary>
/// <param name="Metal">The metal.</param>
/// <param name="Diameter">The diameter.</param>
/// <param name="Pieces">To what lengths it is cut, the longest first.</param>
/// <param name="Mass">What all of it weighs.</param>
public sealed record WirePurchase(WireMetal Metal, Length Diameter, ImmutableArray<Length> Pieces, Mass Mass)
{
    /// <summary>All pieces together.</summary>
    public Length Total => Pieces.Aggregate(Length.Zero, (sum, piece) => sum + piece);

    /// <summary>What is to be bought for the wires that are not on yet.</summary>
    /// <param name="plans">The wires.</param>
    /// <returns>One entry for each size, by metal, the thinnest first; wires of which the length is not known are left out.</returns>
    public static ImmutableArray<WirePurchase> Of(ImmutableArray<WirePlan> plans) =>
    [
        .. plans.Where(plan => plan is { Winding: not null, Used: not null } && plan.Term.Wire.Dated.Task.Done.IsEmpty)
            .GroupBy(plan => (plan.Used!.Value.Metal, plan.Used.Value.Diameter))
            .OrderBy(size => size.Key.Metal).ThenBy(size => size.Key.Diameter)
            .Select(size => new WirePurchase(
                size.Key.Metal,
                size.Key.Diameter,
                [.. size.SelectMany(plan => Enumerable.Repeat(plan.Winding!.Cut, plan.Winding.Strands)).OrderDescending()],
                size.Aggregate(new Mass(0), (sum, plan) => sum + plan.Winding!.Mass))),
    ];
}
