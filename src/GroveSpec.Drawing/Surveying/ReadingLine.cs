using GroveSpec.Drawing.Plan;

namespace GroveSpec.Drawing.Surveying;

/// <summary>A reading as a line from the edge of one trunk to that of another.</summary>
/// <param name="one">The trunk it was read from.</param>
/// <param name="other">The trunk it was read to.</param>
/// <param name="kind">What it is.</param>
/// <param name="text">What is written along it.</param>
/// <param name="origin">The id of what it stands for; null for a reading that is still to be taken.</param>
internal sealed class ReadingLine(DrawnTrunk one, DrawnTrunk other, ReadingLineKind kind, string text, string? origin)
{
    private const double NextBeside = 5;

    private ((double X, double Y) From, (double X, double Y) To)? ends;

    /// <summary>What it is.</summary>
    public ReadingLineKind Kind => kind;

    /// <summary>What is written along it.</summary>
    public string Text => text;

    /// <summary>The id of what it stands for; null for a reading that is still to be taken.</summary>
    public string? Origin => origin;

    /// <summary>Whether what is written must stand somewhere; a length may be left out.</summary>
    public bool MustBeTold => kind != ReadingLineKind.Fits;

    /// <summary>By how many degrees what is written is turned clockwise, from -90 to under 90. A length lies along its line, and what is said of a line stands upright beside it.</summary>
    public double TurnDegrees { get; } = kind == ReadingLineKind.Fits ? Turn(other.X - one.X, other.Y - one.Y) : 0;

    private double Run => Math.Sqrt(Math.Pow(other.X - one.X, 2) + Math.Pow(other.Y - one.Y, 2));

    /// <summary>A place along the line.</summary>
    /// <param name="share">0 at the edge of one trunk, 1 at that of the other.</param>
    /// <param name="beside">How far beside the line, in pixels, to its own left.</param>
    /// <returns>The place on the page.</returns>
    public (double X, double Y) At(double share, double beside)
    {
        var (x, y) = (other.X - one.X, other.Y - one.Y);
        var length = Math.Max(1e-9, Run);
        var (first, last) = Ends();
        var along = first + ((last - first) * share);

        // What is read again runs beside its first reading.
        var off = beside + (kind == ReadingLineKind.Next ? NextBeside : 0);
        return (one.X + (x * along) + (y / length * off), one.Y + (y * along) - (x / length * off));
    }

    /// <summary>Whether a text on the line lies between both ends.</summary>
    /// <param name="share">Where the middle of the text is.</param>
    /// <param name="width">How long it is, in pixels.</param>
    /// <returns>True where it does.</returns>
    public bool Holds(double share, double width)
    {
        var (first, last) = Ends();
        return Math.Min(share, 1 - share) * (last - first) * Run >= width / 2;
    }

    /// <summary>How far from the line the middle of an upright box is that just clears it.</summary>
    /// <param name="width">Its width, in pixels.</param>
    /// <param name="height">Its height, in pixels.</param>
    /// <returns>Pixels.</returns>
    public double Clearance(double width, double height)
    {
        var length = Math.Max(1e-9, Run);
        return (Math.Abs(other.Y - one.Y) / length * width / 2) + (Math.Abs(other.X - one.X) / length * height / 2) + 1;
    }

    /// <summary>The sine of the angle between two lines.</summary>
    /// <param name="line">The other line.</param>
    /// <returns>From 0, where they run the same way or against each other, to 1.</returns>
    public double SineTo(ReadingLine line)
    {
        var (x, y) = (line.At(1, 0).X - line.At(0, 0).X, line.At(1, 0).Y - line.At(0, 0).Y);
        return Math.Abs(((other.X - one.X) * y) - ((other.Y - one.Y) * x)) / Math.Max(1e-9, Run * Math.Sqrt((x * x) + (y * y)));
    }

    /// <summary>Whether another line joins the same two trunks.</summary>
    /// <param name="line">The other line.</param>
    /// <returns>True where it does, whichever way it was read.</returns>
    public bool JoinsTheSame(ReadingLine line) => line.Joins(one, other) || line.Joins(other, one);

    /// <summary>How far a place is from the line.</summary>
    /// <param name="x">The place.</param>
    /// <param name="y">The place, downward.</param>
    /// <returns>Pixels.</returns>
    public double DistanceFrom(double x, double y)
    {
        var (from, to) = ends ??= (At(0, 0), At(1, 0));
        var (runX, runY) = (to.X - from.X, to.Y - from.Y);
        var square = (runX * runX) + (runY * runY);
        var share = square == 0 ? 0 : Math.Clamp((((x - from.X) * runX) + ((y - from.Y) * runY)) / square, 0, 1);
        var (awayX, awayY) = (x - from.X - (runX * share), y - from.Y - (runY * share));
        return Math.Sqrt((awayX * awayX) + (awayY * awayY));
    }

    private bool Joins(DrawnTrunk from, DrawnTrunk to) => one == from && other == to;

    private (double First, double Last) Ends()
    {
        var length = Math.Max(1e-9, Run);
        return (Math.Min(0.4, one.FlareRadius / length), 1 - Math.Min(0.4, other.FlareRadius / length));
    }

    private static double Turn(double x, double y)
    {
        var degrees = Math.Round(Math.Atan2(y, x) * 180 / Math.PI, 1);
        return degrees >= 90 ? degrees - 180 : degrees < -90 ? degrees + 180 : degrees;
    }
}
