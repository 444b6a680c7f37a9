using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Front;

/// <summary>Draws one path, point by point.</summary>
/// <param name="svg">Where to; a path has been begun.</param>
internal readonly struct Pen(SvgWriter svg)
{
    /// <summary>Lifts the pen to a point.</summary>
    public Pen Move(Spot to)
    {
        svg.MoveTo(to.X, to.Y);
        return this;
    }

    /// <summary>Draws straight to a point.</summary>
    public Pen Line(Spot to)
    {
        svg.LineTo(to.X, to.Y);
        return this;
    }

    /// <summary>Draws a curve with two control points to a point.</summary>
    public Pen Curve(Spot first, Spot second, Spot to)
    {
        svg.CurveTo(first.X, first.Y, second.X, second.Y, to.X, to.Y);
        return this;
    }

    /// <summary>Draws a curve with one control point to a point.</summary>
    public Pen Bend(Spot by, Spot to)
    {
        svg.QuadraticTo(by.X, by.Y, to.X, to.Y);
        return this;
    }

    /// <summary>Draws a piece of a circle to a point, clockwise on the page.</summary>
    public Pen Lobe(double radius, Spot to)
    {
        svg.ArcTo(radius, isLarge: false, isClockwise: true, to.X, to.Y);
        return this;
    }

    /// <summary>Draws back to where the pen was put down.</summary>
    public Pen Close()
    {
        svg.ClosePath();
        return this;
    }

    /// <summary>Draws a smooth line through points.</summary>
    /// <param name="points">The points; the first is where the pen is.</param>
    public Pen Through(ReadOnlySpan<Spot> points)
    {
        for (var index = 1; index < points.Length; index++)
        {
            var (from, to) = (points[index - 1], points[index]);
            var third = (to - from).Size / 3;
            Curve(from + (Way(points, index - 1) * third), to - (Way(points, index) * third), to);
        }

        return this;
    }

    /// <summary>Draws an upright ellipse.</summary>
    /// <param name="centre">Its centre.</param>
    /// <param name="across">Half its width.</param>
    /// <param name="up">Half its height.</param>
    public Pen Ellipse(Spot centre, double across, double up)
    {
        // Four curves with the usual control points at 0.5523 of the half axes, true to a fortieth of a percent.
        const double Round = 0.5523;
        Spot At(double x, double y) => new(centre.X + (across * x), centre.Y + (up * y));
        return Move(At(-1, 0))
            .Curve(At(-1, -Round), At(-Round, -1), At(0, -1)).Curve(At(Round, -1), At(1, -Round), At(1, 0))
            .Curve(At(1, Round), At(Round, 1), At(0, 1)).Curve(At(-Round, 1), At(-1, Round), At(-1, 0));
    }

    private static Spot Way(ReadOnlySpan<Spot> points, int index)
    {
        var way = points[Math.Min(points.Length - 1, index + 1)] - points[Math.Max(0, index - 1)];
        var size = way.Size;
        return size > 1e-9 ? way * (1 / size) : new Spot(0, 0);
    }
}
