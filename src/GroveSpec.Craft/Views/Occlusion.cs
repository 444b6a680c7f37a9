using System.Collections.Immutable;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Views;

/// <summary>How much of each trunk nearer ones cover.</summary>
public static class Occlusion
{
    /// <summary>
    /// The covered share of each interval: the part of its width that the intervals before it cover together. The measure is
    /// width in the picture, as it is drawn, not angle at the eye.
    /// </summary>
    /// <param name="nearestFirst">What the trunks cover of the picture, the nearest first.</param>
    /// <returns>
    /// A share for each, in the same order, from 0 to 1; an interval without width is covered wholly or not at all. Takes
    /// n·log n steps for n intervals.
    /// </returns>
    public static ImmutableArray<Proportion> HiddenShares(ImmutableArray<ViewInterval> nearestFirst)
    {
        var edges = new Length[nearestFirst.Length * 2];
        for (var index = 0; index < nearestFirst.Length; index++)
        {
            edges[2 * index] = nearestFirst[index].Left;
            edges[(2 * index) + 1] = nearestFirst[index].Right;
        }

        Array.Sort(edges);

        // Strip k lies between edges k and k + 1. next[k] leads to the first strip from k on that nothing covers yet,
        // so each strip is walked over once while open and skipped ever after.
        var next = new int[edges.Length + 1];
        for (var strip = 0; strip < next.Length; strip++)
        {
            next[strip] = strip;
        }

        var shares = ImmutableArray.CreateBuilder<Proportion>(nearestFirst.Length);
        foreach (var interval in nearestFirst)
        {
            var first = FirstAtLeast(edges, interval.Left);
            var end = FirstAtLeast(edges, interval.Right);
            if (interval.Width <= Length.Zero)
            {
                shares.Add(new Proportion(IsInsideCover(next, edges, interval.Left) ? 1 : 0));
                continue;
            }

            var open = Length.Zero;
            for (var strip = OpenFrom(next, first); strip < end; strip = OpenFrom(next, strip))
            {
                open += edges[strip + 1] - edges[strip];
                next[strip] = strip + 1;
            }

            shares.Add(new Proportion((interval.Width - open) / interval.Width));
        }

        return shares.DrainToImmutable();
    }

    /// <summary>
    /// The chance that two trunks thrown at random along a frontage overlap in a parallel view: 2s/a − (s/a)².
    /// </summary>
    /// <param name="halfWidths">s, the sum of their half widths.</param>
    /// <param name="frontage">a, the width over which their centres are spread evenly; above zero.</param>
    /// <returns>The chance, 1 when the half widths fill the frontage.</returns>
    public static Proportion ChanceOfOverlap(Length halfWidths, Length frontage)
    {
        var part = Math.Clamp(halfWidths / frontage, 0, 1);
        return new Proportion((2 * part) - (part * part));
    }

    /// <summary>How many pairs of trunks thrown at random along a frontage overlap, on average.</summary>
    /// <param name="trunks">How many trunks.</param>
    /// <param name="halfWidths">The sum of two half widths, as for a usual pair.</param>
    /// <param name="frontage">The width over which their centres are spread evenly; above zero.</param>
    /// <returns>The number of pairs, a bare number.</returns>
    public static double ExpectedOverlaps(int trunks, Length halfWidths, Length frontage) =>
        trunks * (trunks - 1.0) / 2 * ChanceOfOverlap(halfWidths, frontage).Share;

    private static bool IsInsideCover(int[] next, Length[] edges, Length place)
    {
        var strip = FirstAtLeast(edges, place);
        while (strip < edges.Length - 1 && edges[strip + 1] == place)
        {
            strip++;
        }

        return strip < edges.Length - 1 && OpenFrom(next, strip) != strip;
    }

    private static int OpenFrom(int[] next, int strip)
    {
        var open = strip;
        while (next[open] != open)
        {
            open = next[open];
        }

        while (next[strip] != open)
        {
            (next[strip], strip) = (open, next[strip]);
        }

        return open;
    }

    private static int FirstAtLeast(Length[] edges, Length value)
    {
        var (low, high) = (0, edges.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (edges[middle] < value)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }
}
