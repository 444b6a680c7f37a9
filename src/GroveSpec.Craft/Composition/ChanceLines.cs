using GroveSpec.Craft.Containers;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Composition;

/// <summary>
/// How many near-lines of three chance alone would give if as many trunks were scattered evenly over an outline.
/// </summary>
/// <remarks>
/// Two places at a distance L leave for a third, standing between them, a strip of L × its width, and each of the three may
/// be the middle one; so every count is the number of triples times a mean over L, the distance of two random places
/// (own derivation; that strips go with the mean of L and angles with the mean of L²: Behrend on the Sylvester problem).
/// Counts are nearly Poisson.
/// </remarks>
public static class ChanceLines
{
    /// <summary>The mean distance of two random places.</summary>
    /// <param name="outline">The outline.</param>
    /// <returns>The mean, zero for an outline without area.</returns>
    public static Length MeanDistance(ContainerOutline outline) =>
        outline.AreaInSquareMillimetres > 0 ? Length.FromMillimetres(new PairDistances(outline).Mean(distance => distance * distance * distance / 9)) : Length.Zero;

    /// <summary>The mean of the square of the distance of two random places, over the outline's area.</summary>
    /// <param name="outline">The outline.</param>
    /// <returns>A bare number, such as 1/3 for a square; zero for an outline without area.</returns>
    public static double MeanSquareOverArea(ContainerOutline outline)
    {
        if (!(outline.AreaInSquareMillimetres > 0))
        {
            return 0;
        }

        var pairs = new PairDistances(outline);
        return pairs.Mean(distance => distance * distance * distance * distance / 16) / pairs.Area;
    }

    /// <summary>Triples whose widest angle comes within a deviation of the straight one.</summary>
    /// <param name="trunks">How many trunks.</param>
    /// <param name="deviation">From 180 degrees.</param>
    /// <param name="outline">The outline.</param>
    /// <returns>The expected number: C(n,3) · ε · E[L²]/A, for small deviations.</returns>
    public static double WithinAngle(int trunks, Angle deviation, ContainerOutline outline) =>
        Triples(trunks) * deviation.Radians * MeanSquareOverArea(outline);

    /// <summary>Triples that fit into a strip.</summary>
    /// <param name="trunks">How many trunks.</param>
    /// <param name="width">The full width of the strip.</param>
    /// <param name="outline">The outline.</param>
    /// <returns>The expected number: C(n,3) · 6w · E[L]/A, for strips that are narrow in the outline; zero for an outline without area.</returns>
    public static double WithinStrip(int trunks, Length width, ContainerOutline outline) => outline.AreaInSquareMillimetres > 0
        ? Triples(trunks) * 6 * width.Millimetres * MeanDistance(outline).Millimetres / outline.AreaInSquareMillimetres
        : 0;

    /// <summary>
    /// Triples that one rod could pass, by the very criterion of <see cref="RodSearch"/>: the strip at the middle trunk is
    /// 2t(r + (1−λ)r′ + λr″) wide, so that a triple counts with 12·t·r̄·E[L]/A, r̄ the mean radius. From seven trunks on both
    /// gaps must be within the reach of neighbours, as it is in this planting, and no other trunk may stand on either.
    /// </summary>
    /// <param name="trunks">The trunks; those without a known diameter are left out.</param>
    /// <param name="limit">The largest closeness that counts, a bare ratio.</param>
    /// <param name="outline">The outline.</param>
    /// <returns>The expected number; zero for an outline without area.</returns>
    public static double OfRods(StandingTrunks trunks, double limit, ContainerOutline outline)
    {
        var count = 0;
        var radii = 0.0;
        foreach (var section in trunks.Sections)
        {
            if (section.Diameter > Length.Zero)
            {
                count++;
                radii += section.Diameter.Millimetres / 2;
            }
        }

        if (count < 3 || !(outline.AreaInSquareMillimetres > 0))
        {
            return 0;
        }

        var pairs = new PairDistances(outline);
        var mean = trunks.Count < StandingTrunks.ReachMattersFrom
            ? pairs.Mean(distance => distance * distance * distance / 9)
            : MeanOfNeighbours(pairs, trunks.Count, trunks.NeighbourReach.Millimetres, radii / trunks.Count);
        return Triples(count) * 12 * limit * (radii / count) * mean / pairs.Area;
    }

    private static double Triples(int trunks) => trunks * (trunks - 1.0) * (trunks - 2.0) / 6;

    /// <summary>The mean over two random places of the length of line between them on which a middle trunk would be neighbour to both.</summary>
    private static double MeanOfNeighbours(PairDistances pairs, int trunks, double reach, double radius)
    {
        if (reach <= 0)
        {
            return 0;
        }

        var potential = NeighbourPotential.Of(trunks, reach, radius, pairs.Area);

        // For gaps that are short against the rim the integral over the rim would need finer pieces than it has; there the
        // share of places whose partner at distance r falls inside, 1 − P·r/(π·A), is as good.
        return 2 * reach * 20 < pairs.Perimeter ? potential.MeanNearby(pairs.Perimeter) : pairs.Mean(potential.At);
    }
}
