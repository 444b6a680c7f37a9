using System.Collections.Immutable;
using GroveSpec.Craft.Containers;
using GroveSpec.Craft.Views;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Fronts;

/// <summary>What <see cref="ViewFrame"/> makes of trunks and of a container, as expressions of the bearing; all in millimetres.</summary>
internal sealed class TurnedShapes
{
    private readonly (double X, double Y, double Radius)[] feet;
    private readonly (double X, double Y, double Z)?[] tips;
    private readonly double distance;
    private readonly double eye;

    /// <summary>Lays a planting out.</summary>
    /// <param name="trunks">The trunks, as they are numbered.</param>
    /// <param name="frame">The viewer's eye.</param>
    public TurnedShapes(ImmutableArray<TrunkState> trunks, ViewFrame frame)
    {
        feet = [.. trunks.Select(trunk => (trunk.Place!.Value.X.Millimetres, trunk.Place.Value.Y.Millimetres, ((trunk.Diameter?.Value ?? Length.Zero) * 0.5).Millimetres))];
        tips = [.. trunks.Select(trunk => TrunkAxis.TipOf(trunk) is { } tip ? (tip.X.Millimetres, tip.Y.Millimetres, tip.Z.Millimetres) : ((double, double, double)?)null)];
        (distance, eye) = (frame.Distance.Millimetres, frame.EyeHeight.Millimetres);
    }

    /// <summary>Whether a trunk's tip is known.</summary>
    public bool HasTip(int trunk) => tips[trunk] is not null;

    /// <summary>Whether two trunks stand at one place.</summary>
    public bool IsSamePlace(int one, int other) => (feet[one].X, feet[one].Y) == (feet[other].X, feet[other].Y);

    /// <summary>Whether two tips are over one place, so that they are always seen at one place across.</summary>
    public bool IsTipOver(int one, int other) => (tips[one]!.Value.X, tips[one]!.Value.Y) == (tips[other]!.Value.X, tips[other]!.Value.Y);

    /// <summary>Whether two tips are one place.</summary>
    public bool IsSameTip(int one, int other) => tips[one] == tips[other];

    /// <summary>How far off a trunk's foot is.</summary>
    public Ranged Depth(TurnRange range, int trunk) => range.Beyond(feet[trunk].X, feet[trunk].Y) + distance;

    /// <summary>By how much a trunk is clear of what is too near to be seen.</summary>
    public Ranged Clearance(TurnRange range, int trunk) => Depth(range, trunk) - (feet[trunk].Radius + (distance * ViewFrame.NearestShare));

    /// <summary>By how much a trunk's tip is clear of what is too near to be seen.</summary>
    public Ranged TipClearance(TurnRange range, int trunk) => range.Beyond(tips[trunk]!.Value.X, tips[trunk]!.Value.Y) + (distance * (1 - ViewFrame.NearestShare));

    /// <summary>Where a trunk's foot is seen, across.</summary>
    public Ranged Foot(TurnRange range, int trunk) => distance * (range.Across(feet[trunk].X, feet[trunk].Y) / Depth(range, trunk));

    /// <summary>Where a trunk's tip is seen, across and up.</summary>
    public (Ranged Across, Ranged Up) Tip(TurnRange range, int trunk)
    {
        var (x, y, z) = tips[trunk]!.Value;
        var depth = range.Beyond(x, y) + distance;
        return (distance * (range.Across(x, y) / depth), (Ranged)eye + (((z - eye) * distance) / depth));
    }

    /// <summary>How near a trunk is, as an order: <see cref="ViewFrame.Power(PlanPoint, Length)"/> without the part that all have, in mm².</summary>
    public Ranged Power(TurnRange range, int trunk)
    {
        var (x, y, radius) = feet[trunk];
        return (2 * distance * range.Beyond(x, y)) + ((x * x) + (y * y) - (radius * radius));
    }

    /// <summary>An edge of what a trunk's base covers: <see cref="ViewFrame.Cover(PlanPoint, Length)"/>.</summary>
    /// <param name="range">The bearings.</param>
    /// <param name="trunk">The trunk.</param>
    /// <param name="side">−1 for the left edge, 1 for the right one.</param>
    public Ranged Edge(TurnRange range, int trunk, int side)
    {
        var (x, y, radius) = feet[trunk];
        var (across, depth) = (range.Across(x, y), Depth(range, trunk));
        var square = (2 * distance * range.Beyond(x, y)) + ((distance * distance) + (x * x) + (y * y) - (radius * radius));
        return distance * (((across * depth) + (side * radius * square.Root())) / (depth.Square() - (radius * radius)));
    }

    /// <summary>How far to the right of the container's centre line a trunk stands, and how wide the container is.</summary>
    public (Ranged Offset, Ranged Width) OffCentre(TurnRange range, ContainerOutline outline, int trunk)
    {
        var across = range.Across(feet[trunk].X, feet[trunk].Y);
        if (outline.HalfAxesInMillimetres is { } half)
        {
            var reach = (range.Across(half.Width, 0).Square() + range.Across(0, half.Breadth).Square()).Root();
            return (across, 2 * reach);
        }

        var (right, left) = (Farthest(range, outline, 1), Farthest(range, outline, -1));
        return (across - (0.5 * (right - left)), right + left);
    }

    /// <summary>The farthest that a rim with corners reaches to the right, or with −1 to the left.</summary>
    private static Ranged Farthest(TurnRange range, ContainerOutline outline, int side)
    {
        ReadOnlySpan<double> x = outline.XInMillimetres, y = outline.YInMillimetres;
        double low = double.NegativeInfinity, high = double.NegativeInfinity;
        for (var point = 0; point < x.Length; point++)
        {
            var reach = range.Across(side * x[point], side * y[point]);
            (low, high) = (Math.Max(low, reach.Low), Math.Max(high, reach.High));
        }

        double falling = double.PositiveInfinity, rising = double.NegativeInfinity;
        for (var point = 0; point < x.Length; point++)
        {
            var reach = range.Across(side * x[point], side * y[point]);
            if (reach.High >= low)
            {
                (falling, rising) = (Math.Min(falling, reach.Falling), Math.Max(rising, reach.Rising));
            }
        }

        return new(low, high, falling, rising);
    }
}
