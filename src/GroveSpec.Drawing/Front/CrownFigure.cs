using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Front;

/// <summary>One crown on the page: the line round its leaves, before the lobes are set on it.</summary>
internal sealed class CrownFigure
{
    private CrownFigure(TrunkFigure trunk, bool isConifer, double radius, double top, double foot, Spot[] edge)
    {
        Trunk = trunk;
        IsConifer = isConifer;
        Radius = radius;
        Top = top;
        Foot = foot;
        Edge = edge;
    }

    public TrunkFigure Trunk { get; }

    /// <summary>Whether it stands in tiers, as a conifer does.</summary>
    public bool IsConifer { get; }

    /// <summary>Its radius in px.</summary>
    public double Radius { get; }

    /// <summary>Its upper end on the page.</summary>
    public double Top { get; }

    /// <summary>Its lower end on the page.</summary>
    public double Foot { get; }

    /// <summary>From top to foot, in px.</summary>
    public double Height => Foot - Top;

    /// <summary>The line round the leaves, clockwise from the top, evenly walked; the last point joins the first.</summary>
    public Spot[] Edge { get; }

    /// <summary>Lays out the crown of a trunk.</summary>
    /// <param name="trunk">The trunk.</param>
    /// <param name="isConifer">Whether it stands in tiers.</param>
    /// <returns>The crown; null when it would be too small to be seen.</returns>
    public static CrownFigure? Of(TrunkFigure trunk, bool isConifer)
    {
        var radius = trunk.Size.Crown.Millimetres * trunk.CrownScale;
        var rise = trunk.Foot.Y - trunk.Tip.Y;
        if (radius < 1.5 || rise < 4)
        {
            return null;
        }

        var hand = Wobble.Of(trunk.Trunk.Name, "crown");
        var height = isConifer
            ? rise * hand.Between(0.7, 0.78)
            : Math.Clamp(radius * hand.Between(2.1, 2.5), rise * 0.45, rise * hand.Between(0.62, 0.7));
        var top = trunk.Tip.Y - Math.Min(6, rise * 0.015);
        var edge = isConifer
            ? Tiered(trunk, ref hand, radius, top, height)
            : Rounded(trunk, ref hand, radius, top, height);
        return new CrownFigure(trunk, isConifer, radius, top, top + height, edge);
    }

    /// <summary>The middle of the crown at a height of the page: it follows the trunk, but less than the trunk leans.</summary>
    /// <param name="trunk">The trunk.</param>
    /// <param name="y">The height.</param>
    /// <param name="middle">The height of the crown's middle.</param>
    /// <returns>The x there.</returns>
    public static double Centre(TrunkFigure trunk, double y, double middle)
    {
        var centre = trunk.MiddleAcross(middle);
        return centre + (0.6 * (trunk.MiddleAcross(y) - centre));
    }

    /// <summary>A rounded crown: the line round a handful of masses of leaf, with clefts between them.</summary>
    private static Spot[] Rounded(TrunkFigure trunk, ref Wobble hand, double radius, double top, double height)
    {
        const int Steps = 120;
        const double Above = 0.56;
        var middle = top + (height * Above);
        var count = (int)hand.Between(6, 9);
        var turned = hand.Between(-0.25, 0.25);
        Span<(double X, double Y, double Radius)> masses = stackalloc (double, double, double)[9];
        masses[0] = (0, 0, 0.66);
        for (var mass = 1; mass <= count; mass++)
        {
            // The first stands at the very top, so that the crown ends where the trunk does.
            var angle = mass == 1 ? 0 : ((mass - 1) * Math.Tau / count) + turned + hand.Between(-0.22, 0.22);
            var (out1, size) = mass == 1 ? (0.56, 0.44) : (hand.Between(0.52, 0.68), hand.Between(0.33, 0.46));
            masses[mass] = (Math.Sin(angle) * out1, Math.Cos(angle) * out1, size);
        }

        Span<double> reach = stackalloc double[Steps];
        var widest = 0.0;
        for (var step = 0; step < Steps; step++)
        {
            var (across, up) = Math.SinCos(step * Math.Tau / Steps);
            reach[step] = ReachOf(masses[..(count + 1)], across, up);
            widest = Math.Max(widest, Math.Abs(reach[step] * across));
        }

        var edge = new Spot[Steps];
        for (var step = 0; step < Steps; step++)
        {
            var (across, up) = Math.SinCos(step * Math.Tau / Steps);
            var y = middle - (Math.Min(1, reach[step] * up) * height * (up > 0 ? Above : 1 - Above));
            edge[step] = new Spot(Centre(trunk, y, middle) + (across * reach[step] / widest * radius), y);
        }

        return edge;
    }

    /// <summary>How far a ray from the crown's middle runs until it leaves the last mass.</summary>
    private static double ReachOf(ReadOnlySpan<(double X, double Y, double Radius)> masses, double across, double up)
    {
        var farthest = 0.0;
        foreach (var (x, y, radius) in masses)
        {
            var along = (x * across) + (y * up);
            var square = (radius * radius) - ((x * x) + (y * y)) + (along * along);
            farthest = square > 0 ? Math.Max(farthest, along + Math.Sqrt(square)) : farthest;
        }

        return farthest;
    }

    private static Spot[] Tiered(TrunkFigure trunk, ref Wobble hand, double radius, double top, double height)
    {
        var tiers = (int)Math.Clamp(Math.Round(height / Math.Max(9, radius * 0.5)), 3, 8);
        var middle = top + (height * 0.6);
        var right = Side(trunk, ref hand, radius, top, height, tiers, 1, middle);
        var left = Side(trunk, ref hand, radius, top, height, tiers, -1, middle);
        left.Reverse();
        var tip = new Spot(Centre(trunk, top, middle), top);
        return [tip, .. right, .. left];
    }

    /// <summary>One side of a tiered crown from the top down: out along each tier's upper side, back in under its tip.</summary>
    private static List<Spot> Side(
        TrunkFigure trunk, ref Wobble hand, double radius, double top, double height, int tiers, int way, double middle)
    {
        var side = new List<Spot>(tiers * 5);
        for (var tier = 0; tier < tiers; tier++)
        {
            // Tiers grow toward the foot; the lowest two keep one width, as the oldest branches do.
            var from = top + (height * Math.Pow(tier / (double)tiers, 1.12));
            var to = top + (height * Math.Pow((tier + 1.0) / tiers, 1.12));
            var reach = radius * Math.Min(1, 0.1 + (0.95 * Math.Pow((tier + 1.0) / tiers, 0.95))) * hand.Between(0.86, 1.08);
            var inner = reach * hand.Between(0.42, 0.56);
            var tip = to - ((to - from) * hand.Between(0.06, 0.3));
            Add(from + ((tip - from) * 0.45), Math.Max(inner * 0.75, reach * 0.5));
            Add(from + ((tip - from) * 0.78), reach * 0.82);
            Add(tip, reach);
            Add(to, (reach + inner) * 0.5);
            Add(to + ((to - from) * 0.04), tier == tiers - 1 ? inner * 0.35 : inner);
        }

        return side;

        void Add(double y, double across) => side.Add(new Spot(Centre(trunk, y, middle) + (way * across), y));
    }
}
