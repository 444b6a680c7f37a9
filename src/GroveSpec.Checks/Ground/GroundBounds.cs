using GroveSpec.Craft.Containers;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Checks.Ground;

/// <summary>Where the ground ends: at the rim, or without a container as far from the trunks as neighbours reach.</summary>
internal sealed class GroundBounds
{
    private readonly ContainerOutline? outline;
    private readonly PlanPoint[] places;

    /// <summary>The bounds for a newcomer.</summary>
    /// <param name="ground">The planting and the newcomer.</param>
    public GroundBounds(GroundCase ground)
    {
        outline = ground.Without.Outline;
        places = [.. ground.Others.Trunks.Select(trunk => trunk.Place!.Value)];
        var diameters = (ground.Newcomer.Diameter?.Value ?? Length.Zero) * 5;
        var gaps = ground.Others.MedianNearestGap * 2.5;
        Reach = outline is not null ? null : gaps > diameters ? gaps : diameters;
        var around = Reach ?? Length.Zero;
        PlanPoint[] corners = [.. outline?.Points ?? [.. places.SelectMany(place => new[] { new PlanPoint(place.X - around, place.Y - around), new PlanPoint(place.X + around, place.Y + around) })]];
        Least = new(corners.Min(corner => corner.X), corners.Min(corner => corner.Y));
        Greatest = new(corners.Max(corner => corner.X), corners.Max(corner => corner.Y));
    }

    /// <summary>How near trunks the ground is looked for where no container bounds it: 2.5 × the median gap from each to its nearest, five of the newcomer's diameters at the least.</summary>
    public Length? Reach { get; }

    /// <summary>The corner at the left and front of a box round it.</summary>
    public PlanPoint Least { get; }

    /// <summary>The corner at the right and back.</summary>
    public PlanPoint Greatest { get; }

    /// <summary>Whether a place lies within.</summary>
    /// <param name="place">The place.</param>
    /// <returns>True when it does.</returns>
    public bool Contains(PlanPoint place)
    {
        if (outline is not null)
        {
            return outline.Covers(place);
        }

        double reach = Reach!.Value.Millimetres;
        foreach (var trunk in places)
        {
            double x = (place.X - trunk.X).Millimetres, y = (place.Y - trunk.Y).Millimetres;
            if ((x * x) + (y * y) <= reach * reach)
            {
                return true;
            }
        }

        return false;
    }
}
