namespace GroveSpec.Model.Quantities;

/// <summary>
/// A direction in the plan, clockwise seen from above: 0 is the back, 90 the right, 180 the front and 270 the left.
/// </summary>
public readonly record struct Bearing
{
    /// <summary>The back of the planting, away from the usual viewer.</summary>
    public static readonly Bearing Back = new(0);

    /// <summary>The right-hand side of the usual viewer.</summary>
    public static readonly Bearing Right = new(90);

    /// <summary>The front, where the usual viewer stands.</summary>
    public static readonly Bearing Front = new(180);

    /// <summary>The left-hand side of the usual viewer.</summary>
    public static readonly Bearing Left = new(270);

    /// <summary>Makes a bearing; any number of full turns is taken off.</summary>
    /// <param name="degrees">Degrees clockwise from the back, finite.</param>
    public Bearing(double degrees)
    {
        var folded = degrees % 360;
        var turned = folded < 0 ? folded + 360 : folded;

        // A hair to the left of the back rounds up to a full turn, and minus zero is zero.
        Degrees = turned is 0 or >= 360 ? 0 : turned;
    }

    /// <summary>Degrees clockwise from the back, from 0 up to but not including 360.</summary>
    public double Degrees { get; }

    /// <summary>The part of a step in this direction that goes to the right: the sine of the bearing.</summary>
    public double Rightward => Math.Sin(Degrees * Math.PI / 180);

    /// <summary>The part of a step in this direction that goes to the back: the cosine of the bearing.</summary>
    public double Backward => Math.Cos(Degrees * Math.PI / 180);

    /// <summary>The opposite direction.</summary>
    public Bearing Opposite => new(Degrees + 180);

    /// <summary>The bearing of a step in the plan.</summary>
    /// <param name="rightward">The step to the right, in any unit.</param>
    /// <param name="backward">The step to the back, in the same unit.</param>
    /// <returns>Its bearing; the back when there is no step.</returns>
    public static Bearing Of(double rightward, double backward) => new(Math.Atan2(rightward, backward) * 180 / Math.PI);

    /// <inheritdoc/>
    public override string ToString() => $"{Degrees:0.######} deg";
}
