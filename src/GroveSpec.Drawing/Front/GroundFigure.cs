using GroveSpec.Craft.Containers;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Containers;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Drawing.Front;

/// <summary>The container in perspective: the rim round the soil, and its front wall.</summary>
internal sealed class GroundFigure
{
    private GroundFigure(Container container, Spot[] rim, Spot[] front, Spot[] foot, bool isRound)
    {
        Container = container;
        Rim = rim;
        Front = front;
        Foot = foot;
        IsRound = isRound;
    }

    public Container Container { get; }

    /// <summary>The rim on the page, all round.</summary>
    public Spot[] Rim { get; }

    /// <summary>The front of the rim, from left to right.</summary>
    public Spot[] Front { get; }

    /// <summary>The lower edge of the front wall, from left to right, point for point below <see cref="Front"/>.</summary>
    public Spot[] Foot { get; }

    /// <summary>Whether its edge is smooth, so that curves may be laid through the points.</summary>
    public bool IsRound { get; }

    public double Left => Rim.Min(spot => spot.X);

    public double Right => Rim.Max(spot => spot.X);

    public double Top => Rim.Min(spot => spot.Y);

    public double Bottom => Math.Max(Rim.Max(spot => spot.Y), Foot.Max(spot => spot.Y)) + FootHeight;

    /// <summary>How high the little feet of a pot are, in px; 0 for a slab.</summary>
    public double FootHeight => Container is Container.Slab ? 0 : Math.Clamp((Foot[Foot.Length / 2].Y - Front[Front.Length / 2].Y) * 0.22, 1.5, 7);

    /// <summary>Lays out a container.</summary>
    /// <param name="container">The container.</param>
    /// <param name="stage">Where the picture lies.</param>
    /// <returns>The figure; null when the eye stands so near that the rim cannot be seen whole.</returns>
    public static GroundFigure? Of(Container container, Stage stage)
    {
        var outline = ContainerOutline.Of(container).Points;
        var step = Math.Max(1, outline.Length / 60);
        var rim = new List<(Spot Spot, Length Depth, PlanPoint Place)>();
        for (var index = 0; index < outline.Length; index += step)
        {
            var place = outline[index];
            if (stage.Frame.See(new SpacePoint(place.X, place.Y, Length.Zero)) is not { } seen)
            {
                return null;
            }

            rim.Add((stage.At(seen), seen.Depth, place));
        }

        if (rim.Count < 3)
        {
            return null;
        }

        // A pot draws in a little toward its foot; a slab breaks off straight.
        var half = outline.Max(place => Math.Max(Math.Abs(place.X.Millimetres), Math.Abs(place.Y.Millimetres)));
        var draw = container is Container.Slab ? 1 : 1 - Math.Min(0.07, 0.3 * container.Depth.Millimetres / half);
        var front = FrontOf(rim);
        var foot = new List<Spot>();
        foreach (var (_, _, place) in front)
        {
            if (stage.See(new SpacePoint(place.X * draw, place.Y * draw, -container.Depth)) is not { } below)
            {
                return null;
            }

            foot.Add(below.Spot);
        }

        return new GroundFigure(
            container,
            [.. rim.Select(point => point.Spot)],
            [.. front.Select(point => point.Spot)],
            [.. foot],
            container is not Container.Rectangle);
    }

    /// <summary>Draws the closed line of the rim.</summary>
    /// <param name="pen">Where to.</param>
    public void DrawRim(Pen pen) => Closed(pen, Rim);

    /// <summary>Draws the closed front wall.</summary>
    /// <param name="pen">Where to.</param>
    public void DrawWall(Pen pen)
    {
        var back = FootLine();
        Array.Reverse(back);
        pen.Move(Front[0]);
        Along(pen, Front);
        pen.Line(back[0]);
        Along(pen, back);
        pen.Close();
    }

    /// <summary>Draws the lip of a pot, a line below the rim.</summary>
    /// <param name="pen">Where to.</param>
    public void DrawLip(Pen pen)
    {
        var lip = Front.Select((spot, index) => spot.Toward(Foot[index], 0.2)).ToArray();
        pen.Move(lip[0]);
        Along(pen, lip);
    }

    /// <summary>Draws the two feet that are seen.</summary>
    /// <param name="pen">Where to.</param>
    public void DrawFeet(Pen pen)
    {
        var wide = (Foot[^1].X - Foot[0].X) * 0.085;
        foreach (var part in (ReadOnlySpan<double>)[0.17, 0.83])
        {
            var x = Foot[0].X + ((Foot[^1].X - Foot[0].X) * part);
            var y = FootAt(x);
            pen.Move(new Spot(x - (wide / 2), FootAt(x - (wide / 2)) - 0.5))
                .Bend(new Spot(x - (wide * 0.42), y + FootHeight), new Spot(x - (wide * 0.3), y + FootHeight))
                .Line(new Spot(x + (wide * 0.3), y + FootHeight))
                .Bend(new Spot(x + (wide * 0.42), y + FootHeight), new Spot(x + (wide / 2), FootAt(x + (wide / 2)) - 0.5));
        }
    }

    /// <summary>Draws the shade on a pot's wall: fine level lines toward the right.</summary>
    /// <param name="pen">Where to.</param>
    public void DrawShade(Pen pen)
    {
        var hand = Wobble.Of(Container.Origin.Id, "shade");
        var (left, right) = (Front[0].X, Front[^1].X);
        var deep = FootAt((left + right) / 2) - FrontAt((left + right) / 2);
        var lines = (int)Math.Clamp(deep / 2.6, 2, 22);
        for (var line = 0; line < lines; line++)
        {
            var part = 0.28 + (0.66 * (line + 0.5) / lines);
            var from = left + ((right - left) * hand.Between(0.66, 0.9));
            var to = left + ((right - left) * (0.985 - (0.035 * part)));
            pen.Move(WallAt(from, part)).Bend(WallAt((from + to) / 2, part), WallAt(to, part));
        }
    }

    /// <summary>Draws the front of the rim, where the soil ends.</summary>
    /// <param name="pen">Where to.</param>
    public void DrawFront(Pen pen)
    {
        pen.Move(Front[0]);
        Along(pen, Front);
    }

    /// <summary>Draws the grain of a slab's broken edge: short slanting strokes, close below and toward the right.</summary>
    /// <param name="pen">Where to.</param>
    public void DrawGrain(Pen pen)
    {
        var hand = Wobble.Of(Container.Origin.Id, "grain");
        var (left, right) = (Front[0].X, Front[^1].X);
        var lower = FootLine();
        for (var x = left + 2; x < right - 2; x += hand.Between(1.1, 3.4) * (1.25 - (0.55 * (x - left) / (right - left))))
        {
            var (top, foot) = (FrontAt(x), HeightAt(lower, x));
            var from = top + ((foot - top) * Math.Pow(hand.Next(), 0.55));
            var to = Math.Min(foot, from + ((foot - top) * hand.Between(0.2, 0.7)));
            pen.Move(new Spot(x, from)).Line(new Spot(x - hand.Between(0.3, 1.8), to));
        }
    }

    /// <summary>Draws moss and grit on the soil: tufts near the rim, grains farther in.</summary>
    /// <param name="pen">Where to.</param>
    /// <param name="fullness">How much texture, up to 1.</param>
    public void DrawMoss(Pen pen, double fullness)
    {
        var hand = Wobble.Of(Container.Origin.Id, "moss");
        var count = (int)(Math.Clamp((Right - Left) / 7, 12, 90) * (0.4 + (0.6 * fullness)));
        var centre = new Spot((Left + Right) / 2, (Top + Rim.Max(spot => spot.Y)) / 2);
        for (var tuft = 0; tuft < count; tuft++)
        {
            var corner = (int)(hand.Next() * Rim.Length);
            var at = Rim[corner].Toward(Rim[(corner + 1) % Rim.Length], hand.Next()).Toward(centre, 0.05 + (0.6 * Math.Pow(hand.Next(), 1.7)));
            var blades = hand.Next() < 0.55 ? 1 : 3;
            for (var blade = 0; blade < blades; blade++)
            {
                var foot = at + new Spot(blade * 1.7, hand.Between(-0.4, 0.4));
                pen.Move(foot).Line(foot + (blades == 1 ? new Spot(1.2, 0) : new Spot((blade - 1) * 0.9, -hand.Between(1.6, 3))));
            }
        }
    }

    private static List<(Spot Spot, Length Depth, PlanPoint Place)> FrontOf(List<(Spot Spot, Length Depth, PlanPoint Place)> rim)
    {
        var (leftmost, rightmost) = (0, 0);
        for (var index = 1; index < rim.Count; index++)
        {
            leftmost = IsOuter(rim[index], rim[leftmost], -1) ? index : leftmost;
            rightmost = IsOuter(rim[index], rim[rightmost], 1) ? index : rightmost;
        }

        var (forward, backward) = (Walk(1), Walk(-1));
        return forward.Average(point => point.Depth.Millimetres) <= backward.Average(point => point.Depth.Millimetres) ? forward : backward;

        List<(Spot Spot, Length Depth, PlanPoint Place)> Walk(int way)
        {
            var chain = new List<(Spot, Length, PlanPoint)>();
            for (var index = leftmost; ; index = (index + way + rim.Count) % rim.Count)
            {
                chain.Add(rim[index]);
                if (index == rightmost)
                {
                    return chain;
                }
            }
        }
    }

    // Of two points equally far out, the nearer one begins the front.
    private static bool IsOuter((Spot Spot, Length Depth, PlanPoint Place) point, (Spot Spot, Length Depth, PlanPoint Place) other, int way)
    {
        var farther = (point.Spot.X - other.Spot.X) * way;
        return farther > 1e-6 || (farther > -1e-6 && point.Depth < other.Depth);
    }

    private void Closed(Pen pen, Spot[] points)
    {
        pen.Move(points[0]);
        if (!IsRound)
        {
            for (var index = 1; index < points.Length; index++)
            {
                pen.Line(points[index]);
            }

            pen.Close();
            return;
        }

        // A smooth line knows its direction at the seam from the points on either side.
        for (var index = 0; index < points.Length; index++)
        {
            var (before, from) = (points[(index + points.Length - 1) % points.Length], points[index]);
            var (to, after) = (points[(index + 1) % points.Length], points[(index + 2) % points.Length]);
            pen.Curve(from + ((to - before) * (1.0 / 6)), to - ((after - from) * (1.0 / 6)), to);
        }

        pen.Close();
    }

    private void Along(Pen pen, Spot[] points)
    {
        if (IsRound)
        {
            pen.Through(points);
            return;
        }

        for (var index = 1; index < points.Length; index++)
        {
            pen.Line(points[index]);
        }
    }

    /// <summary>The lower edge as drawn: a slab's broken stone wavers and thins toward both ends.</summary>
    private Spot[] FootLine()
    {
        var line = (Spot[])Foot.Clone();
        if (Container is Container.Slab)
        {
            var hand = Wobble.Of(Container.Origin.Id, "stone");
            for (var index = 0; index < line.Length; index++)
            {
                var deep = line[index].Y - Front[index].Y;
                var end = Math.Min(index, line.Length - 1 - index) / (line.Length / 2.0);
                line[index] = new Spot(line[index].X, line[index].Y - (deep * ((0.3 * (1 - Math.Min(1, end * 4))) + hand.Between(0, 0.13))));
            }
        }

        return line;
    }

    private Spot WallAt(double x, double part) => new(x, FrontAt(x) + ((FootAt(x) - FrontAt(x)) * part));

    private double FrontAt(double x) => HeightAt(Front, x);

    private double FootAt(double x) => HeightAt(Foot, x);

    private static double HeightAt(Spot[] line, double x)
    {
        for (var index = 1; index < line.Length; index++)
        {
            if (line[index].X >= x && line[index].X > line[index - 1].X)
            {
                return line[index - 1].Toward(line[index], Math.Clamp((x - line[index - 1].X) / (line[index].X - line[index - 1].X), 0, 1)).Y;
            }
        }

        return line[^1].Y;
    }
}
