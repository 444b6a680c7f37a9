using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Front;

/// <summary>The ink of a trunk: its outline, the bark on its shaded side, fissures and the roots at its foot.</summary>
internal static class TrunkInk
{
    /// <summary>The closed outline.</summary>
    /// <param name="pen">Where to.</param>
    /// <param name="figure">The trunk.</param>
    public static void Outline(Pen pen, TrunkFigure figure)
    {
        pen.Move(figure.Left[0]).Through(figure.Left);
        var (left, right) = (figure.Left[^1], figure.Right[^1]);
        var rise = figure.Axis[^1] - figure.Axis[^2];
        var cap = rise * (Math.Min(1.5, (right - left).Size * 0.7) / Math.Max(1e-6, rise.Size));
        pen.Curve(left + cap, right + cap, right);
        var down = (Spot[])figure.Right.Clone();
        Array.Reverse(down);
        Base(pen.Through(down), figure).Close();
    }

    /// <summary>The outline with few points, for plantings of many trunks.</summary>
    /// <param name="pen">Where to.</param>
    /// <param name="figure">The trunk.</param>
    public static void PlainOutline(Pen pen, TrunkFigure figure)
    {
        pen.Move(figure.Left[0]);
        for (var station = 1; station < figure.Left.Length; station++)
        {
            pen.Line(figure.Left[station]);
        }

        for (var station = figure.Right.Length - 1; station >= 0; station--)
        {
            pen.Line(figure.Right[station]);
        }

        pen.Close();
    }

    /// <summary>Bark as short strokes along the trunk, thick on the shaded right, thrown so that no band appears.</summary>
    /// <param name="pen">Where to.</param>
    /// <param name="figure">The trunk.</param>
    /// <param name="fullness">How much texture, 1 for a planting of few trunks and less for many.</param>
    public static void Bark(Pen pen, TrunkFigure figure, double fullness)
    {
        var hand = Wobble.Of(figure.Trunk.Name, "bark");
        var (stations, total) = Areas(figure);
        var count = (int)(Math.Clamp(total / 26, 10, 150) * fullness);
        var place = hand.Next();
        for (var stroke = 0; stroke < count; stroke++)
        {
            // Steps of the golden section never fall into rows; the hand's jitter takes the last of the pattern away.
            place = (place + 0.6180339887498949) % 1;
            var station = StationOf(stations, Math.Clamp(place + hand.Between(-0.03, 0.03), 0, 0.999) * total);
            var shade = hand.Next();
            var isLit = stroke % 7 == 0;
            var side = isLit ? -0.55 - (0.38 * hand.Next()) : 0.95 - (1.25 * Math.Pow(shade, 1.55));
            var half = figure.HalfAt(station);
            if (half < 0.9)
            {
                continue;
            }

            var reach = Math.Min(half * hand.Between(0.5, isLit ? 0.9 : 1.9), 15);
            var end = StationAbove(figure, station, reach);
            var (from, to) = (figure.On(station, side), figure.On(end, side + hand.Between(-0.08, 0.06)));
            var bend = from.Toward(to, 0.5) + new Spot(hand.Between(-0.07, 0.07) * half, 0);
            pen.Move(from).Bend(bend, to);
        }
    }

    /// <summary>A few long cracks in the bark of a trunk that is thick for its height.</summary>
    /// <param name="pen">Where to.</param>
    /// <param name="figure">The trunk.</param>
    public static void Fissures(Pen pen, TrunkFigure figure)
    {
        var stoutness = figure.Size.Diameter / figure.Size.Height;
        if (stoutness < 0.055 || figure.Thick < 6)
        {
            return;
        }

        var hand = Wobble.Of(figure.Trunk.Name, "fissures");
        var count = (int)Math.Clamp((stoutness * 40) + (figure.Thick / 8), 2, 8);
        Span<Spot> points = stackalloc Spot[4];
        for (var crack = 0; crack < count; crack++)
        {
            var side = -0.5 + (1.2 * ((crack + hand.Between(0.2, 0.8)) / count));
            var station = figure.StationAt(hand.Between(0.03, 0.42));
            for (var step = 0; step < points.Length; step++)
            {
                points[step] = figure.On(station, Math.Clamp(side + hand.Between(-0.12, 0.12), -0.9, 0.9));
                station = StationAbove(figure, station, figure.Thick * hand.Between(0.35, 0.9));
            }

            pen.Move(points[0]).Through(points);
        }
    }

    /// <summary>Roots that run out from the foot and the trunk's small shadow on the soil.</summary>
    /// <param name="pen">Where to.</param>
    /// <param name="figure">The trunk.</param>
    public static void Roots(Pen pen, TrunkFigure figure)
    {
        if (figure.Thick < 2.2)
        {
            return;
        }

        var hand = Wobble.Of(figure.Trunk.Name, "roots");
        var half = figure.FootHalf;
        foreach (var way in (ReadOnlySpan<int>)[-1, 1])
        {
            var edge = way < 0 ? figure.Left : figure.Right;
            var start = edge[0].Toward(edge[1], 0.45);
            var end = new Spot(
                figure.Foot.X + (way * half * hand.Between(1.2, 1.42)),
                figure.Foot.Y + (figure.Dip * hand.Between(0.35, 0.95)));
            pen.Move(start).Bend(new Spot(edge[0].X + (way * half * 0.04), end.Y - (figure.Dip * 0.35)), end);
            var inner = new Spot(figure.Foot.X + (way * half * hand.Between(0.3, 0.6)), figure.Foot.Y + (figure.Dip * 0.6));
            pen.Move(figure.On(hand.Between(0.9, 1.6), way * hand.Between(0.25, 0.5)))
                .Bend(new Spot(inner.X - (way * half * 0.12), inner.Y - (figure.Dip * 0.6)), inner);
        }

    }

    /// <summary>The trunk's small shadow on the soil, as level strokes to its right.</summary>
    /// <param name="pen">Where to.</param>
    /// <param name="figure">The trunk.</param>
    public static void Shadow(Pen pen, TrunkFigure figure)
    {
        var hand = Wobble.Of(figure.Trunk.Name, "shadow");
        var half = figure.FootHalf;
        var shadows = (int)Math.Clamp(figure.Dip / 1.7, 2, 6);
        for (var line = 0; line < shadows; line++)
        {
            var y = figure.Foot.Y + (figure.Dip * (0.8 - (1.1 * line / shadows)));
            var x = figure.Foot.X + (half * hand.Between(0.8, 1.12));
            var to = new Spot(x + (half * hand.Between(0.35, 1.0) * (1 - (0.4 * line / shadows))), y - hand.Between(0, 0.6));
            pen.Move(new Spot(x, y)).Line(to);
        }
    }

    /// <summary>What is left of a trunk that was taken out: a low stump with its cut.</summary>
    /// <param name="pen">Where to.</param>
    /// <param name="figure">The trunk as it would stand.</param>
    public static void Stump(Pen pen, TrunkFigure figure)
    {
        var half = Math.Max(3, figure.Thick);
        var rise = half * 0.9;
        var flat = Math.Max(1.2, Math.Min(half * 0.45, figure.Dip));
        var (foot, wide) = (figure.Foot, half * 1.3);
        var (left, right) = (new Spot(foot.X - half, foot.Y - rise), new Spot(foot.X + half, foot.Y - rise));
        pen.Move(left).Bend(new Spot(foot.X - half, foot.Y - (rise * 0.3)), new Spot(foot.X - wide, foot.Y))
            .Bend(new Spot(foot.X, foot.Y + (flat * 1.4)), new Spot(foot.X + wide, foot.Y))
            .Bend(new Spot(foot.X + half, foot.Y - (rise * 0.3)), right);
        pen.Ellipse(new Spot(foot.X, foot.Y - rise), half, flat);
        pen.Ellipse(new Spot(foot.X, foot.Y - rise), half * 0.55, flat * 0.55);
    }

    /// <summary>The near edge of the base, with the toes of the roots.</summary>
    private static Pen Base(Pen pen, TrunkFigure figure)
    {
        var hand = Wobble.Of(figure.Trunk.Name, "toes");
        var (right, left) = (figure.Right[0], figure.Left[0]);
        var toes = figure.Thick > 9 ? 4 : figure.Thick > 3 ? 3 : 2;
        var from = right;
        for (var toe = 1; toe <= toes; toe++)
        {
            var part = toe == toes ? 1 : (toe + hand.Between(-0.18, 0.18)) / toes;
            var hang = Math.Sqrt(Math.Max(0, 1 - Math.Pow((2 * part) - 1, 2)));
            var to = right.Toward(left, part) + new Spot(0, toe == toes ? 0 : figure.Dip * hang * 0.82);
            var middle = from.Toward(to, 0.5);
            var half = toe == 1 || toe == toes ? 0.5 : 0.32;
            pen.Bend(new Spot(middle.X, Math.Max(from.Y, to.Y) + (figure.Dip * half)), to);
            from = to;
        }

        return pen;
    }

    private static (double[] Sums, double Total) Areas(TrunkFigure figure)
    {
        var sums = new double[figure.Axis.Length];
        for (var station = 1; station < sums.Length; station++)
        {
            sums[station] = sums[station - 1]
                + ((figure.Axis[station] - figure.Axis[station - 1]).Size * (figure.HalfAt(station) + figure.HalfAt(station - 1)));
        }

        return (sums, sums[^1]);
    }

    private static double StationOf(double[] sums, double area)
    {
        var station = 1;
        while (station < sums.Length - 1 && sums[station] < area)
        {
            station++;
        }

        var span = sums[station] - sums[station - 1];
        return station - 1 + (span > 0 ? (area - sums[station - 1]) / span : 0);
    }

    private static double StationAbove(TrunkFigure figure, double station, double reach)
    {
        while (reach > 0 && station < figure.Axis.Length - 1.01)
        {
            var index = (int)station;
            var length = Math.Max(1e-6, (figure.Axis[index + 1] - figure.Axis[index]).Size);
            var left = (index + 1 - station) * length;
            if (left > reach)
            {
                return station + (reach / length);
            }

            reach -= left;
            station = index + 1;
        }

        return Math.Min(station, figure.Axis.Length - 1.01);
    }
}
