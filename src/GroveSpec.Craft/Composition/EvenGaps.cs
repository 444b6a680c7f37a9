using System.Collections.Immutable;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Composition;

/// <summary>Finds gaps between neighbours that are as long as each other.</summary>
/// <remarks>
/// Of a trunk, any two of its open gaps are compared, since those lie next to each other round it and an eye lays them
/// against each other. Of each trunk, and of each three trunks, the one pair that is most alike is kept.
/// </remarks>
public static class EvenGaps
{
    /// <summary>All that are closer than a limit.</summary>
    /// <param name="trunks">The trunks.</param>
    /// <param name="percent">The limit, in percent of the longer gap; gaps that differ by just that much are let be.</param>
    /// <returns>The gaps, in the order of the trunks they start from.</returns>
    public static ImmutableArray<EvenGap> Find(StandingTrunks trunks, double percent)
    {
        // The same three can only be found once more from each of the other two, which spares a table of all threes.
        var gaps = new List<EvenGap>(trunks.Count);
        var placeBehind = new int[trunks.Count];
        for (var trunk = 0; trunk < trunks.Count; trunk++)
        {
            if (MostAlike(trunks, trunk, percent) is { } gap)
            {
                gaps.Add(gap);
                placeBehind[trunk] = gaps.Count;
            }
        }

        var found = ImmutableArray.CreateBuilder<EvenGap>(gaps.Count);
        foreach (var gap in gaps)
        {
            if (!IsBeaten(gap, gaps, placeBehind))
            {
                found.Add(gap);
            }
        }

        return found.DrainToImmutable();
    }

    /// <summary>Whether one of the other two trunks of a gap has found the same three more alike.</summary>
    /// <param name="gap">The gap.</param>
    /// <param name="gaps">The gap of each trunk that has one.</param>
    /// <param name="placeBehind">For each trunk the place of its gap among those, counted from 1; 0 where it has none.</param>
    internal static bool IsBeaten(EvenGap gap, IReadOnlyList<EvenGap> gaps, ReadOnlySpan<int> placeBehind) =>
        IsBeatenBy(gap, gap.Near, gaps, placeBehind) || IsBeatenBy(gap, gap.Far, gaps, placeBehind);

    private static bool IsBeatenBy(EvenGap gap, int other, IReadOnlyList<EvenGap> gaps, ReadOnlySpan<int> placeBehind) => placeBehind[other] is > 0 and var place
        && IsOfSameThree(gap, gaps[place - 1])
        && (gaps[place - 1].Difference < gap.Difference || (gaps[place - 1].Difference == gap.Difference && other < gap.Trunk));

    private static bool IsOfSameThree(EvenGap one, EvenGap other) => Sort(one) == Sort(other);

    private static EvenGap? MostAlike(StandingTrunks trunks, int trunk, double percent)
    {
        EvenGap? best = null;
        var near = trunks.NeighboursOf(trunk);
        var isOpen = trunks.OpenGapsOf(trunk);
        for (var first = 0; first < near.Length; first++)
        {
            for (var second = first + 1; second < near.Length; second++)
            {
                if (isOpen[first] && isOpen[second])
                {
                    var gap = Compare(trunks, trunk, near[first], near[second], percent);
                    best = gap is { } candidate && (best is not { } known || IsMoreAlike(candidate, known)) ? candidate : best;
                }
            }
        }

        return best;
    }

    /// <summary>Whether a gap comes before another of the same trunk. Of gaps as much alike as each other the trunks that come first decide, not where they stand.</summary>
    internal static bool IsMoreAlike(EvenGap candidate, EvenGap known) =>
        candidate.Difference != known.Difference ? candidate.Difference < known.Difference : Sort(candidate).CompareTo(Sort(known)) < 0;

    /// <summary>Two gaps of a trunk, whether or not they are open; null when they are not closer than the limit.</summary>
    internal static EvenGap? Compare(StandingTrunks trunks, int trunk, int near, int far, double percent) =>
        Compare(trunk, near, far, trunks.Square(trunk, near), trunks.Square(trunk, far), percent);

    /// <summary>As above, of the squares of both gaps in square nanometres.</summary>
    internal static EvenGap? Compare(int trunk, int near, int far, Int128 shorter, Int128 longer, double percent)
    {
        if (shorter == 0 || !Likeness.AreRootsCloserThan(shorter, longer, percent))
        {
            return null;
        }

        (near, far) = shorter == longer && far < near ? (far, near) : (near, far);
        Length shortGap = new((long)Math.Round(Math.Sqrt((double)shorter))), longGap = new((long)Math.Round(Math.Sqrt((double)longer)));
        return new EvenGap(trunk, near, far, shortGap, longGap, Likeness.DifferenceInPercent(shortGap, longGap));
    }

    /// <summary>The three trunks of a gap in their order.</summary>
    internal static (int First, int Second, int Third) Sort(EvenGap gap)
    {
        Span<int> three = [gap.Trunk, gap.Near, gap.Far];
        three.Sort();
        return (three[0], three[1], three[2]);
    }
}
