using System.Collections.Immutable;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Composition;

/// <summary>Where a trunk would stand in line with two others.</summary>
/// <remarks>
/// A line that passes within t × radius of two centres can lie askew; at the centres it is t × radius off at most, between them
/// the limit runs straight from one to the other, and beyond an end it opens like the lines that cross from one side of one trunk to
/// the other side of the other. A third trunk is in line where its centre is within t × its own radius of such a line. The
/// slope of the lines against the axis is left out (its cosine is above 0.99 for trunks that do not touch).
/// </remarks>
public static class LineStrip
{
    /// <summary>The strip.</summary>
    /// <param name="one">One of the two others.</param>
    /// <param name="other">The other of them.</param>
    /// <param name="radius">The radius of the trunk that would stand there.</param>
    /// <param name="share">The limit t: the share of the radii that still counts as in line.</param>
    /// <param name="beyond">How far beyond both ends it is drawn out.</param>
    /// <returns>The corners of its outline in order; empty where the two others stand at one place.</returns>
    public static ImmutableArray<PlanPoint> Between(TrunkSection one, TrunkSection other, Length radius, double share, Length beyond)
    {
        var length = one.Centre.DistanceTo(other.Centre).Millimetres;
        if (length <= 0)
        {
            return [];
        }

        double alongX = (other.Centre.X - one.Centre.X).Millimetres / length, alongY = (other.Centre.Y - one.Centre.Y).Millimetres / length;
        double first = one.Diameter.Millimetres / 2 * share, second = other.Diameter.Millimetres / 2 * share, own = radius.Millimetres * share;
        var opening = beyond.Millimetres * (first + second) / length;
        (double Along, double Half)[] stations =
        [
            (-beyond.Millimetres, first + opening + own),
            (0, first + own),
            (length, second + own),
            (length + beyond.Millimetres, second + opening + own),
        ];
        var outline = ImmutableArray.CreateBuilder<PlanPoint>(8);
        foreach (var (along, half) in stations)
        {
            outline.Add(At(along, half));
        }

        foreach (var (along, half) in stations.Reverse())
        {
            outline.Add(At(along, -half));
        }

        return outline.MoveToImmutable();

        PlanPoint At(double along, double across) => PlanPoint.FromMillimetres(
            one.Centre.X.Millimetres + (alongX * along) - (alongY * across),
            one.Centre.Y.Millimetres + (alongY * along) + (alongX * across));
    }
}
