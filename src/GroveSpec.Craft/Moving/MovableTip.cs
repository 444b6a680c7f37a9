namespace GroveSpec.Craft.Moving;

/// <summary>
/// A trunk whose foot is fast and whose tip may be bent elsewhere. A straight trunk leans: its length stays, so that its tip
/// goes along a sphere about the foot; where its height was read on a day the height stays. One with a run of its own keeps
/// the height of each place of the run.
/// </summary>
public sealed class MovableTip : Movable
{
    private const double SteepestLean = 80;
    private const double LeanStep = 0.5;

    // What is rounded to a lean that it may have may itself lie farther by so many degrees.
    private const double Hair = 1;

    // Asked of every place that is tried.
    private static readonly double SineOfSteepest = Math.Sin(SteepestLean * Math.PI / 180);
    private static readonly double TangentOfSteepest = Math.Tan(SteepestLean * Math.PI / 180);

    private readonly (double Right, double Back, double Up) first;
    private readonly bool keepsLength;
    private readonly double? runStep;
    private readonly double cosine;
    private readonly double length;
    private readonly (double Degrees, double Bearing) firstLean;

    /// <summary>Makes one.</summary>
    /// <param name="trunk">Its place among the trunks.</param>
    /// <param name="first">Where its tip is at first, from its foot, in millimetres; above the soil.</param>
    /// <param name="keepsLength">Whether its length stays, and not its height.</param>
    /// <param name="runStep">For one with a run of its own the step to which places are written, in millimetres; null for a straight one, whose lean is written to half a degree.</param>
    /// <param name="mostDegrees">By how many degrees, seen from its foot, the tip may be bent at most.</param>
    public MovableTip(int trunk, (double Right, double Back, double Up) first, bool keepsLength, double? runStep, double mostDegrees)
        : base(trunk)
    {
        (this.first, this.keepsLength, this.runStep) = (first, keepsLength, runStep);
        cosine = Math.Cos(mostDegrees * Math.PI / 180);
        length = Math.Sqrt((first.Right * first.Right) + (first.Back * first.Back) + (first.Up * first.Up));
        Farthest = FarthestOf(mostDegrees + Hair);
        var (degrees, bearing, _) = LeanAt(0, 0);
        firstLean = (degrees, bearing);
    }

    /// <inheritdoc/>
    public override double Farthest { get; }

    /// <summary>How the trunk leans with its tip somewhere.</summary>
    /// <param name="rightward">The way of the tip to the right.</param>
    /// <param name="backward">And to the back.</param>
    /// <returns>Degrees from upright, the bearing in degrees, and the tip's height above the soil in millimetres.</returns>
    public (double Degrees, double Bearing, double Up) LeanAt(double rightward, double backward)
    {
        double right = first.Right + rightward, back = first.Back + backward;
        var level = Math.Sqrt((right * right) + (back * back));
        var up = UpAt(level);
        var bearing = Math.Atan2(right, back) * 180 / Math.PI;
        return (Math.Atan2(level, up) * 180 / Math.PI, bearing < 0 ? bearing + 360 : bearing, up);
    }

    /// <inheritdoc/>
    public override void Put(LooseStand stand, double rightward, double backward)
    {
        ArgumentNullException.ThrowIfNull(stand);
        double right = first.Right + rightward, back = first.Back + backward;
        stand.Bend(Trunk, rightward, backward, UpAt(Math.Sqrt((right * right) + (back * back))));
    }

    /// <inheritdoc/>
    public override (double Rightward, double Backward) Rounded(double rightward, double backward)
    {
        if (runStep is { } step)
        {
            return (Math.Round(rightward / step) * step, Math.Round(backward / step) * step);
        }

        var (degrees, bearing, _) = LeanAt(rightward, backward);
        degrees = Math.Round(degrees / LeanStep) * LeanStep;
        bearing = Math.Round(bearing) % 360;
        if (degrees == firstLean.Degrees && (degrees == 0 || bearing == firstLean.Bearing))
        {
            return (0, 0);
        }

        var level = keepsLength ? length * Math.Sin(degrees * Math.PI / 180) : first.Up * Math.Tan(degrees * Math.PI / 180);
        var (sine, cosineOfBearing) = Math.SinCos(bearing * Math.PI / 180);
        return ((level * sine) - first.Right, (level * cosineOfBearing) - first.Back);
    }

    /// <inheritdoc/>
    public override bool MayGo(double rightward, double backward)
    {
        double right = first.Right + rightward, back = first.Back + backward;
        var level = Math.Sqrt((right * right) + (back * back));
        if (keepsLength && level >= length * SineOfSteepest)
        {
            return false;
        }

        var up = UpAt(level);
        var along = (right * first.Right) + (back * first.Back) + (up * first.Up);
        return level <= up * TangentOfSteepest && along >= cosine * length * Math.Sqrt((level * level) + (up * up)) * (1 - 1e-12);
    }

    /// <summary>Along a sphere the chord; at one height the way straight on down or straight back, whichever is longer.</summary>
    private double FarthestOf(double mostDegrees)
    {
        if (keepsLength)
        {
            return 2 * length * Math.Sin(Math.Min(mostDegrees, 180) * Math.PI / 360);
        }

        var lean = Math.Atan2(Math.Sqrt((first.Right * first.Right) + (first.Back * first.Back)), first.Up) * 180 / Math.PI;
        return Math.Max(LevelAt(lean + mostDegrees) - LevelAt(lean), LevelAt(lean) - LevelAt(lean - mostDegrees));

        double LevelAt(double degrees) => first.Up * Math.Tan(Math.Clamp(degrees, -SteepestLean - Hair, SteepestLean + Hair) * Math.PI / 180);
    }

    private double UpAt(double level) => keepsLength ? Math.Sqrt(Math.Max(0, (length * length) - (level * level))) : first.Up;
}
