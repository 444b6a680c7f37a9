using System.Collections.Immutable;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Stand;

/// <summary>What foresters measure of a stand as a whole, by the plainest definitions and without correction for its edge.</summary>
public static class StandMeasures
{
    /// <summary>
    /// The mean over all stems of the distance from each to the nearest other one, centre to centre
    /// (the observed mean of Clark and Evans 1954, Ecology 35:445–453; from memory).
    /// </summary>
    /// <param name="places">Where the stems stand.</param>
    /// <returns>The mean; null for fewer than two stems, of which none has a neighbour.</returns>
    public static Length? MeanNearestDistance(ImmutableArray<PlanPoint> places)
    {
        if (places.Length < 2)
        {
            return null;
        }

        // Going out both ways along x from each stem, the search ends where x alone is farther than the best so far.
        var ordered = places.Sort(static (left, right) => left.X.CompareTo(right.X));
        double sumMillimetres = 0;
        for (var i = 0; i < ordered.Length; i++)
        {
            var best = double.PositiveInfinity;
            for (var j = i + 1; j < ordered.Length && Nearer(ordered[i], ordered[j], ref best); j++)
            {
            }

            for (var j = i - 1; j >= 0 && Nearer(ordered[i], ordered[j], ref best); j--)
            {
            }

            sumMillimetres += Math.Sqrt(best);
        }

        return Length.FromMillimetres(sumMillimetres / ordered.Length);
    }

    /// <summary>The mean of diameters.</summary>
    /// <param name="diameters">The diameters of the stems that have one.</param>
    /// <returns>The mean; null where there are none.</returns>
    public static Length? MeanDiameter(ImmutableArray<Length> diameters)
    {
        if (diameters.IsEmpty)
        {
            return null;
        }

        double sumMillimetres = 0;
        foreach (var diameter in diameters)
        {
            sumMillimetres += diameter.Millimetres;
        }

        return Length.FromMillimetres(sumMillimetres / diameters.Length);
    }

    private static bool Nearer(PlanPoint from, PlanPoint to, ref double bestSquareMillimetres)
    {
        var x = (to.X - from.X).Millimetres;
        if (x * x >= bestSquareMillimetres)
        {
            return false;
        }

        var y = (to.Y - from.Y).Millimetres;
        bestSquareMillimetres = Math.Min(bestSquareMillimetres, (x * x) + (y * y));
        return true;
    }
}
