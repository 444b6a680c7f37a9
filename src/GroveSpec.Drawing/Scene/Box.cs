namespace GroveSpec.Drawing.Scene;

/// <summary>An upright box on the page, in pixels, y downward.</summary>
/// <param name="Left">Its left edge.</param>
/// <param name="Top">Its upper edge.</param>
/// <param name="Right">Its right edge.</param>
/// <param name="Bottom">Its lower edge.</param>
internal readonly record struct Box(double Left, double Top, double Right, double Bottom)
{
    /// <summary>From left to right.</summary>
    public double Width => Right - Left;

    /// <summary>From top to bottom.</summary>
    public double Height => Bottom - Top;

    /// <summary>The middle, from the left.</summary>
    public double CentreX => (Left + Right) / 2;

    /// <summary>The middle, from the top.</summary>
    public double CentreY => (Top + Bottom) / 2;

    /// <summary>A box about a centre.</summary>
    public static Box About(double x, double y, double width, double height) => new(x - (width / 2), y - (height / 2), x + (width / 2), y + (height / 2));

    /// <summary>Whether two boxes share any ground; touching edges share none.</summary>
    public bool Overlaps(Box other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    /// <summary>Whether the other box lies wholly inside this one.</summary>
    public bool Holds(Box other) => other.Left >= Left && other.Right <= Right && other.Top >= Top && other.Bottom <= Bottom;

    /// <summary>The box grown by as much on every side.</summary>
    public Box Grown(double by) => new(Left - by, Top - by, Right + by, Bottom + by);

    /// <summary>The smallest box that holds both.</summary>
    public Box With(Box other) => new(Math.Min(Left, other.Left), Math.Min(Top, other.Top), Math.Max(Right, other.Right), Math.Max(Bottom, other.Bottom));

    /// <summary>How deep a disc reaches into the box, up to its radius; 0 or less where it does not.</summary>
    public double DepthOfDisc(double x, double y, double radius)
    {
        var acrossX = x - Math.Clamp(x, Left, Right);
        var acrossY = y - Math.Clamp(y, Top, Bottom);
        return radius - Math.Sqrt((acrossX * acrossX) + (acrossY * acrossY));
    }

    /// <summary>The length of a straight piece that runs inside the box; 0 where it misses.</summary>
    public double LengthInside(double fromX, double fromY, double toX, double toY)
    {
        // Most pieces lie wholly to one side, and dividing is what takes the time.
        if ((fromX <= Left && toX <= Left) || (fromX >= Right && toX >= Right) || (fromY <= Top && toY <= Top) || (fromY >= Bottom && toY >= Bottom))
        {
            return 0;
        }

        double enter = 0;
        double leave = 1;
        if (!Cut(fromX, toX - fromX, Left, Right, ref enter, ref leave) || !Cut(fromY, toY - fromY, Top, Bottom, ref enter, ref leave))
        {
            return 0;
        }

        var x = toX - fromX;
        var y = toY - fromY;
        return (leave - enter) * Math.Sqrt((x * x) + (y * y));
    }

    private static bool Cut(double from, double step, double low, double high, ref double enter, ref double leave)
    {
        if (Math.Abs(step) < 1e-12)
        {
            return from > low && from < high;
        }

        var first = (low - from) / step;
        var second = (high - from) / step;
        enter = Math.Max(enter, Math.Min(first, second));
        leave = Math.Min(leave, Math.Max(first, second));
        return enter < leave;
    }
}
