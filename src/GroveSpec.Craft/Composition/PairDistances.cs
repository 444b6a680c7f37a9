using GroveSpec.Craft.Containers;

namespace GroveSpec.Craft.Composition;

/// <summary>
/// Means over the distance of two places taken at random within an outline.
/// </summary>
/// <remarks>
/// For a function f of the distance and a function g with Δg = f in the plane, the divergence theorem, once for each
/// place, turns the mean of f into an integral over the rim alone:
/// E[f(L)] = −(1/A²) ∮∮ g(r) (dx dx′ + dy dy′) (own derivation). So f = r, with g = r³/9, gives the mean distance. The rim is
/// taken in pieces with Gauss points, which is the same on every run.
/// </remarks>
internal sealed class PairDistances
{
    private const int PiecesOfTheRim = 60;

    private readonly double area;
    private readonly List<(double X, double Y, double StepX, double StepY)> nodes = [];

    /// <summary>Prepares an outline.</summary>
    /// <param name="outline">The outline, of some area.</param>
    public PairDistances(ContainerOutline outline)
    {
        var x = outline.XInMillimetres;
        var y = outline.YInMillimetres;
        for (int index = 0, before = x.Length - 1; index < x.Length; before = index++)
        {
            Perimeter += Math.Sqrt(((x[index] - x[before]) * (x[index] - x[before])) + ((y[index] - y[before]) * (y[index] - y[before])));
        }

        var twiceArea = 0.0;
        for (int index = 0, before = x.Length - 1; index < x.Length; before = index++)
        {
            twiceArea += ((x[before] - x[0]) * (y[index] - y[0])) - ((x[index] - x[0]) * (y[before] - y[0]));
            AddSide(x[before], y[before], x[index], y[index]);
        }

        area = Math.Abs(twiceArea) / 2;
    }

    /// <summary>The length of the rim in millimetres.</summary>
    public double Perimeter { get; }

    /// <summary>The area of the rim's polyline in square millimetres.</summary>
    public double Area => area;

    /// <summary>The mean of a function of the distance.</summary>
    /// <param name="potential">The function g of the distance in millimetres for which Δg is the function meant, finite at 0.</param>
    /// <returns>The mean.</returns>
    public double Mean(Func<double, double> potential)
    {
        var sum = 0.0;
        for (var first = 0; first < nodes.Count; first++)
        {
            var from = nodes[first];
            sum += potential(0) * ((from.StepX * from.StepX) + (from.StepY * from.StepY));
            for (var second = first + 1; second < nodes.Count; second++)
            {
                var to = nodes[second];
                double dx = to.X - from.X, dy = to.Y - from.Y;
                sum += 2 * potential(Math.Sqrt((dx * dx) + (dy * dy))) * ((from.StepX * to.StepX) + (from.StepY * to.StepY));
            }
        }

        return -sum / (area * area);
    }

    private void AddSide(double fromX, double fromY, double toX, double toY)
    {
        double stepX = toX - fromX, stepY = toY - fromY;
        var length = Math.Sqrt((stepX * stepX) + (stepY * stepY));
        var pieces = Math.Max(1, (int)Math.Ceiling(length * PiecesOfTheRim / Perimeter));

        // A short side of a many-sided rim needs its middle only; a long one three points to a piece (Gauss–Legendre).
        var isShort = length * PiecesOfTheRim <= Perimeter * 0.6;
        ReadOnlySpan<double> places = isShort ? [0.5] : [0.5 - (Math.Sqrt(0.6) / 2), 0.5, 0.5 + (Math.Sqrt(0.6) / 2)];
        ReadOnlySpan<double> weights = isShort ? [1] : [5.0 / 18, 8.0 / 18, 5.0 / 18];
        for (var piece = 0; piece < pieces; piece++)
        {
            for (var point = 0; point < places.Length; point++)
            {
                var along = (piece + places[point]) / pieces;
                nodes.Add((fromX + (along * stepX), fromY + (along * stepY), weights[point] * stepX / pieces, weights[point] * stepY / pieces));
            }
        }
    }
}
