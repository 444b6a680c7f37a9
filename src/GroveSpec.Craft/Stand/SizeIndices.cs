using System.Collections.Immutable;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Stand;

/// <summary>How sizes differ between neighbours.</summary>
public static class SizeIndices
{
    /// <summary>Size differentiation with the nearest neighbour (Füldner): the mean of 1 − smaller/larger.</summary>
    /// <param name="places">Where the stems stand.</param>
    /// <param name="sizes">Their sizes, of one kind, in the same order; none negative. Two of no size do not differ.</param>
    /// <returns>From 0, all alike, to 1; null for fewer than two stems.</returns>
    public static double? Differentiation(ImmutableArray<PlanPoint> places, ImmutableArray<Length> sizes) =>
        places.Length < 2 ? null : Differentiation(NearestOf(places), Millimetres(sizes));

    /// <summary>Dominance by neighbours (Hui): for each stem the share of its four nearest that are larger, so that 0 is the ruler among them and 1 the most overshadowed.</summary>
    /// <param name="places">Where the stems stand.</param>
    /// <param name="sizes">Their sizes, of one kind, in the same order.</param>
    /// <returns>0, ¼, ½, ¾ or 1 for each stem; empty for fewer than five stems. One as large is not larger.</returns>
    public static ImmutableArray<double> Dominance(ImmutableArray<PlanPoint> places, ImmutableArray<Length> sizes) =>
        places.Length <= NearestStems.Four ? [] : Dominance(NearestOf(places), Millimetres(sizes));

    /// <summary>As the public one, for inner loops.</summary>
    internal static double Differentiation(NearestStems nearest, ReadOnlySpan<double> sizes)
    {
        var sum = 0.0;
        for (var stem = 0; stem < nearest.Count; stem++)
        {
            var other = sizes[nearest.Of(stem)[0]];
            var larger = Math.Max(sizes[stem], other);
            sum += larger > 0 ? 1 - (Math.Min(sizes[stem], other) / larger) : 0;
        }

        return sum / nearest.Count;
    }

    /// <summary>As the public one, for inner loops.</summary>
    internal static ImmutableArray<double> Dominance(NearestStems nearest, ReadOnlySpan<double> sizes)
    {
        var shares = ImmutableArray.CreateBuilder<double>(nearest.Count);
        for (var stem = 0; stem < nearest.Count; stem++)
        {
            shares.Add((double)LargerNeighbours(nearest, sizes, stem) / NearestStems.Four);
        }

        return shares.MoveToImmutable();
    }

    /// <summary>The mean of the shares.</summary>
    internal static double MeanDominance(NearestStems nearest, ReadOnlySpan<double> sizes)
    {
        var larger = 0;
        for (var stem = 0; stem < nearest.Count; stem++)
        {
            larger += LargerNeighbours(nearest, sizes, stem);
        }

        return (double)larger / (NearestStems.Four * nearest.Count);
    }

    private static int LargerNeighbours(NearestStems nearest, ReadOnlySpan<double> sizes, int stem)
    {
        var larger = 0;
        foreach (var other in nearest.Of(stem))
        {
            larger += sizes[other] > sizes[stem] ? 1 : 0;
        }

        return larger;
    }

    private static NearestStems NearestOf(ImmutableArray<PlanPoint> places) =>
        new([.. places.Select(place => place.X.Millimetres)], [.. places.Select(place => place.Y.Millimetres)]);

    private static double[] Millimetres(ImmutableArray<Length> sizes) => [.. sizes.Select(size => size.Millimetres)];
}
