using System.Collections.Immutable;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Composition;

/// <summary>Finds gaps between neighbours that are as long as each other.</summary>
/// <remarks>
/// Of a trunk, the gaps to its two nearest neighbours are compared, and any two gaps that run on through it within 45
/// degrees of straight, since those are the ones that an eye lays against each other. Of each trunk, and of each three
/// trunks, the one pair that is most alike is kept.
/// </remarks>
public static class EvenGaps
{
    /// <summary>All that are closer than a limit.</summary>
    /// <param name="trunks">The trunks.</param>
    /// <param name="percent">The limit, in percent of the longer gap; gaps that differ by just that much are let be.</param>
    /// <returns>The gaps, in the order of the file by the trunk they start from.</returns>
    public static ImmutableArray<EvenGap> Find(StandingTrunks trunks, double percent)
    {
        var found = new List<EvenGap>();
        var byThree = new Dictionary<(int, int, int), int>();
        for (var trunk = 0; trunk < trunks.Count; trunk++)
        {
            if (MostAlike(trunks, trunk, percent) is not { } gap)
            {
                continue;
            }

            var three = Sort(gap);
            if (!byThree.TryGetValue(three, out var known))
            {
                byThree.Add(three, found.Count);
                found.Add(gap);
            }
            else if (gap.Difference < found[known].Difference)
            {
                found[known] = gap;
            }
        }

        found.Sort((left, right) => left.Trunk.CompareTo(right.Trunk));
        return [.. found];
    }

    private static EvenGap? MostAlike(StandingTrunks trunks, int trunk, double percent)
    {
        EvenGap? best = null;
        var near = trunks.NeighboursOf(trunk);
        for (var first = 0; first < near.Length; first++)
        {
            for (var second = first + 1; second < near.Length; second++)
            {
                if ((first == 0 && second == 1) || RunsOn(trunks, trunk, near[first], near[second]))
                {
                    var gap = Compare(trunks, trunk, near[first], near[second], percent);
                    best = gap is { } candidate && !(best?.Difference <= candidate.Difference) ? candidate : best;
                }
            }
        }

        return best;
    }

    private static EvenGap? Compare(StandingTrunks trunks, int trunk, int near, int far, double percent)
    {
        Int128 shorter = trunks.Square(trunk, near), longer = trunks.Square(trunk, far);
        if (shorter == 0 || !Likeness.AreRootsCloserThan(shorter, longer, percent))
        {
            return null;
        }

        Length shortGap = new((long)Math.Round(Math.Sqrt((double)shorter))), longGap = new((long)Math.Round(Math.Sqrt((double)longer)));
        return new EvenGap(trunk, near, far, shortGap, longGap, Likeness.DifferenceInPercent(shortGap, longGap));
    }

    /// <summary>Whether the way from one to the other through the trunk turns by at most 45 degrees.</summary>
    private static bool RunsOn(StandingTrunks trunks, int trunk, int one, int other)
    {
        PlanPoint at = trunks.Sections[trunk].Centre, from = trunks.Sections[one].Centre, to = trunks.Sections[other].Centre;
        double ux = from.X.Nanometres - at.X.Nanometres, uy = from.Y.Nanometres - at.Y.Nanometres;
        double vx = to.X.Nanometres - at.X.Nanometres, vy = to.Y.Nanometres - at.Y.Nanometres;
        var along = (ux * vx) + (uy * vy);
        return along < 0 && 2 * along * along >= ((ux * ux) + (uy * uy)) * ((vx * vx) + (vy * vy));
    }

    private static (int, int, int) Sort(EvenGap gap)
    {
        Span<int> three = [gap.Trunk, gap.Near, gap.Far];
        three.Sort();
        return (three[0], three[1], three[2]);
    }
}
