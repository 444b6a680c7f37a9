using GroveSpec.Craft.Views;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Drawing.Front;

/// <summary>A trunk's axis as a smooth curve through its places, since wood does not grow in corners.</summary>
internal sealed class AxisCurve
{
    private readonly (double X, double Y, double Z)[] places;
    private readonly (double X, double Y, double Z)[] slopes;
    private readonly double[] along;

    public AxisCurve(TrunkAxis axis)
    {
        places = [.. axis.Points.Select(point => (point.X.Millimetres, point.Y.Millimetres, point.Z.Millimetres))];
        along = new double[places.Length];
        for (var index = 1; index < places.Length; index++)
        {
            var step = Minus(places[index], places[index - 1]);
            along[index] = along[index - 1] + Math.Max(1e-6, Math.Sqrt((step.X * step.X) + (step.Y * step.Y) + (step.Z * step.Z)));
        }

        slopes = new (double, double, double)[places.Length];
        for (var index = 0; index < places.Length; index++)
        {
            var (before, after) = (Math.Max(0, index - 1), Math.Min(places.Length - 1, index + 1));
            slopes[index] = Times(Minus(places[after], places[before]), 1 / (along[after] - along[before]));
        }
    }

    /// <summary>The length along the trunk, in mm.</summary>
    public double RunMillimetres => along[^1];

    /// <summary>A place along the trunk.</summary>
    /// <param name="share">0 at the soil, 1 at the tip.</param>
    /// <returns>The place, never below the soil.</returns>
    public SpacePoint At(double share)
    {
        var target = share * along[^1];
        var index = 1;
        while (index < places.Length - 1 && along[index] < target)
        {
            index++;
        }

        var span = along[index] - along[index - 1];
        var t = (target - along[index - 1]) / span;
        var (t2, t3) = (t * t, t * t * t);
        var (x, y, z) = Plus(
            Plus(Times(places[index - 1], (2 * t3) - (3 * t2) + 1), Times(slopes[index - 1], (t3 - (2 * t2) + t) * span)),
            Plus(Times(places[index], (3 * t2) - (2 * t3)), Times(slopes[index], (t3 - t2) * span)));
        return new SpacePoint(Length.FromMillimetres(x), Length.FromMillimetres(y), Length.FromMillimetres(Math.Max(0, z)));
    }

    private static (double X, double Y, double Z) Plus((double X, double Y, double Z) left, (double X, double Y, double Z) right) =>
        (left.X + right.X, left.Y + right.Y, left.Z + right.Z);

    private static (double X, double Y, double Z) Minus((double X, double Y, double Z) left, (double X, double Y, double Z) right) =>
        (left.X - right.X, left.Y - right.Y, left.Z - right.Z);

    private static (double X, double Y, double Z) Times((double X, double Y, double Z) place, double factor) =>
        (place.X * factor, place.Y * factor, place.Z * factor);
}
