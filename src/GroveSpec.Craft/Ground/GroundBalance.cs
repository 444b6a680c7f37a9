using GroveSpec.Craft.Choice;
using GroveSpec.Craft.Composition;
using GroveSpec.Craft.Containers;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Ground;

/// <summary>How far wood would be from its balance with a newcomer at a place, as <see cref="ChoiceMeasures.Imbalance"/> has it.</summary>
public sealed class GroundBalance
{
    private readonly double x;
    private readonly double y;
    private readonly double weight;
    private readonly double own;
    private readonly (double X, double Y) middle;
    private readonly double reach;

    /// <summary>Weighs what stands.</summary>
    /// <param name="others">The trunks that stand already; one whose diameter is not known weighs as the middle one of the others.</param>
    /// <param name="diameter">The newcomer's diameter.</param>
    /// <param name="outline">The container's rim; null without one.</param>
    public GroundBalance(StandingTrunks others, Length diameter, ContainerOutline? outline)
    {
        ArgumentNullException.ThrowIfNull(others);
        double[] known = [.. others.Trunks.Select(trunk => trunk.Diameter?.Value.Millimetres).OfType<double>().Order()];
        var usual = known.Length == 0 ? 1 : known[known.Length / 2];
        double spread = 0, sumX = 0, sumY = 0;
        foreach (var trunk in others.Trunks)
        {
            var heavy = Math.Pow(trunk.Diameter?.Value.Millimetres ?? usual, 2);
            (x, y, weight) = (x + (trunk.Place!.Value.X.Millimetres * heavy), y + (trunk.Place!.Value.Y.Millimetres * heavy), weight + heavy);
            (sumX, sumY) = (sumX + trunk.Place!.Value.X.Millimetres, sumY + trunk.Place!.Value.Y.Millimetres);
        }

        own = diameter.Millimetres * diameter.Millimetres;
        if (outline is { AreaInSquareMillimetres: > 0 })
        {
            var centre = ChoiceMeasures.Centroid(outline);
            (middle, reach) = ((centre.X.Millimetres, centre.Y.Millimetres), outline.RadiusOfEqualCircleInMillimetres);
        }
        else if (others.Count > 0)
        {
            middle = (sumX / others.Count, sumY / others.Count);
            spread = others.Trunks.Average(trunk => Math.Pow(trunk.Place!.Value.X.Millimetres - middle.X, 2) + Math.Pow(trunk.Place!.Value.Y.Millimetres - middle.Y, 2));
            reach = Math.Sqrt(spread);
        }
    }

    /// <summary>How far the wood is from its balance with the newcomer at a place.</summary>
    /// <param name="place">The place.</param>
    /// <returns>From 0, over the middle, to 1.</returns>
    public double Imbalance(PlanPoint place)
    {
        if (reach <= 0 || weight + own <= 0)
        {
            return 0;
        }

        double dx = ((x + (place.X.Millimetres * own)) / (weight + own)) - middle.X, dy = ((y + (place.Y.Millimetres * own)) / (weight + own)) - middle.Y;
        return Math.Min(1, Math.Sqrt((dx * dx) + (dy * dy)) / reach);
    }
}
