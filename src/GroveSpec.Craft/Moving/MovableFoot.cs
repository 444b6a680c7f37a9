namespace GroveSpec.Craft.Moving;

/// <summary>A trunk whose foot may be moved, and all of it with the foot.</summary>
/// <param name="trunk">Its place among the trunks.</param>
/// <param name="right">Where its foot is at first, to the right of the origin, in millimetres.</param>
/// <param name="back">And to the back.</param>
/// <param name="farthest">How far it may be moved, in millimetres.</param>
/// <param name="step">The step to which places are written, in millimetres.</param>
public sealed class MovableFoot(int trunk, double right, double back, double farthest, double step) : Movable(trunk)
{
    /// <inheritdoc/>
    public override double Farthest => farthest;

    /// <inheritdoc/>
    public override void Put(LooseStand stand, double rightward, double backward)
    {
        ArgumentNullException.ThrowIfNull(stand);
        stand.Shift(Trunk, rightward, backward);
    }

    /// <inheritdoc/>
    public override (double Rightward, double Backward) Rounded(double rightward, double backward) =>
        Math.Abs(rightward) < step / 2 && Math.Abs(backward) < step / 2
            ? (0, 0)
            : ((Math.Round((right + rightward) / step) * step) - right, (Math.Round((back + backward) / step) * step) - back);

    /// <inheritdoc/>
    public override bool MayGo(double rightward, double backward) => (rightward * rightward) + (backward * backward) <= farthest * farthest * (1 + 1e-12);
}
