using GroveSpec.Craft.Composition;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Views;

/// <summary>How near a top lies to the straight line over the tops beside it, in the picture.</summary>
/// <param name="Length">From the one top to the other.</param>
/// <param name="Offset">From that line, square to it, to the top between them: above zero when it stands over the line.</param>
/// <param name="LevelShare">The level part of the line's length, from 0 for an upright line to 1 for a level one.</param>
public readonly record struct TopLine(Length Length, Length Offset, double LevelShare)
{
    /// <summary>The offset in percent of the length; infinite when both tops are at one place.</summary>
    public double Percent => Length > Length.Zero ? 100 * Math.Abs((double)Offset.Nanometres) / Length.Nanometres : double.PositiveInfinity;

    /// <summary>Measures three tops.</summary>
    /// <param name="left">The top on the left.</param>
    /// <param name="middle">The top between.</param>
    /// <param name="right">The top on the right.</param>
    /// <returns>The line; of no length and offset when left and right are at one place.</returns>
    public static TopLine Over(ViewedPoint left, ViewedPoint middle, ViewedPoint right)
    {
        double ux = right.Across.Nanometres - left.Across.Nanometres, uy = right.Up.Nanometres - left.Up.Nanometres;
        double vx = middle.Across.Nanometres - left.Across.Nanometres, vy = middle.Up.Nanometres - left.Up.Nanometres;
        var length = Math.Sqrt((ux * ux) + (uy * uy));
        return length > 0
            ? new(new((long)Math.Round(length)), new((long)Math.Round(((ux * vy) - (uy * vx)) / length)), ux / length)
            : default;
    }

    /// <summary>Whether the offset is at most so many percent of the length.</summary>
    /// <param name="percent">The limit.</param>
    /// <returns>True when it is; false when the line has no length.</returns>
    public bool IsWithin(double percent) => Length > Length.Zero && Likeness.IsAtMostPart(Offset.Magnitude, Length, percent);

    /// <summary>How much the middle top has to rise or sink, further to its side, to come to a limit.</summary>
    /// <param name="percent">The limit in percent of the length.</param>
    /// <returns>The change in the picture, not below zero; a tenth of the length at least for a line that is nearly upright.</returns>
    public Length RiseToClear(double percent)
    {
        var missing = (Length * (percent / 100)) - Offset.Magnitude;
        return missing <= Length.Zero ? Length.Zero : missing * (1 / Math.Max(LevelShare, 0.1));
    }
}
