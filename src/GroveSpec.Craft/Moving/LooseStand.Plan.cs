using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using GroveSpec.Craft.Composition;

namespace GroveSpec.Craft.Moving;

/// <content>What is amiss as seen from above. The definitions are those of <see cref="StandingTrunks"/>, <see cref="RodSearch"/>, <see cref="Composition.EvenGaps"/> and <see cref="Composition.Contacts"/>.</content>
public sealed partial class LooseStand
{
    private double reachSquare;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double SquareOf(int one, int other) => square[(one * Count) + other];

    /// <summary>The distances from one trunk to all, which are kept as trunks are shifted, since they are asked for far more often.</summary>
    private void MeasureFrom(int trunk)
    {
        for (var other = 0; other < Count; other++)
        {
            double dx = x[trunk] - x[other], dy = y[trunk] - y[other];
            square[(trunk * Count) + other] = square[(other * Count) + trunk] = (dx * dx) + (dy * dy);
        }
    }

    /// <summary>Finds out who is whose neighbour.</summary>
    private void Measure()
    {
        Array.Fill(nearest, double.PositiveInfinity);
        for (var one = 0; one < Count; one++)
        {
            var row = square.AsSpan(one * Count, Count);
            for (var other = 0; other < row.Length; other++)
            {
                nearest[one] = other == one ? nearest[one] : Math.Min(nearest[one], row[other]);
            }
        }

        reachSquare = ReachSquare();
        Array.Clear(near);
        Array.Clear(open);
        for (var one = 0; one < Count; one++)
        {
            for (var other = one + 1; other < Count; other++)
            {
                var between = square[(one * Count) + other];
                if (between <= reachSquare && !IsParted(one, other, between))
                {
                    near[one] |= 1UL << other;
                    near[other] |= 1UL << one;
                    if (!IsEntered(one, other))
                    {
                        open[one] |= 1UL << other;
                        open[other] |= 1UL << one;
                    }
                }
            }
        }
    }

    private double ReachSquare()
    {
        if (Count < StandingTrunks.ReachMattersFrom)
        {
            return double.PositiveInfinity;
        }

        Span<double> sorted = stackalloc double[MostTrunks];
        sorted = sorted[..Count];
        nearest.CopyTo(sorted);
        sorted.Sort();
        return 6.25 * sorted[(Count - 1) / 2] * (1 + 1e-14);
    }

    private bool AreNeighbours(int one, int other)
    {
        var between = SquareOf(one, other);
        return (Count < StandingTrunks.ReachMattersFrom || IsWithinReach(between)) && !IsParted(one, other, between);
    }

    /// <summary>Whether a gap is within 2.5 × the median of the gaps to the nearest, without sorting those: no more than half of them are shorter than the gap / 2.5.</summary>
    private bool IsWithinReach(double between)
    {
        var part = between / (6.25 * (1 + 1e-14));
        var close = 0;
        for (var one = 0; one < Count; one++)
        {
            // Of the trunk itself the distance is none, which is less than any part.
            close += CountBelow(square.AsSpan(one * Count, Count), part) > 1 ? 1 : 0;
        }

        return close <= (Count - 1) / 2;
    }

    private static int CountBelow(ReadOnlySpan<double> row, double part)
    {
        var (below, place) = (0, 0);
        if (Vector256.IsHardwareAccelerated)
        {
            var parts = Vector256.Create(part);
            for (; place <= row.Length - 4; place += 4)
            {
                below += BitOperations.PopCount(Vector256.LessThan(Vector256.Create(row[place..]), parts).ExtractMostSignificantBits());
            }
        }

        for (; place < row.Length; place++)
        {
            below += row[place] < part ? 1 : 0;
        }

        return below;
    }

    private bool IsOpenGap(int one, int other) => !IsEntered(one, other) && AreNeighbours(one, other);

    private bool IsParted(int from, int to, double between)
    {
        ReadOnlySpan<double> ofFrom = square.AsSpan(from * Count, Count), ofTo = square.AsSpan(to * Count, Count);
        double wayX = x[to] - x[from], wayY = y[to] - y[from];
        for (var trunk = 0; trunk < ofFrom.Length && trunk < ofTo.Length; trunk++)
        {
            if (ofFrom[trunk] < between && ofTo[trunk] < between && trunk != from && trunk != to)
            {
                double fromX = x[trunk] - x[from], fromY = y[trunk] - y[from], toX = x[trunk] - x[to], toY = y[trunk] - y[to];
                var twice = 2 * ((wayX * fromY) - (wayY * fromX));
                if ((fromX * wayX) + (fromY * wayY) > 0 && (toX * wayX) + (toY * wayY) < 0 && twice * twice <= diameter[trunk] * diameter[trunk] * between)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private bool IsEntered(int one, int other)
    {
        ReadOnlySpan<double> ofOne = square.AsSpan(one * Count, Count), ofOther = square.AsSpan(other * Count, Count);
        var between = ofOne[other];
        for (var trunk = 0; trunk < ofOne.Length && trunk < ofOther.Length; trunk++)
        {
            // Only one nearer to each than they are to each other can stand within the circle over their gap.
            if (ofOne[trunk] < between && ofOther[trunk] < between && trunk != one && trunk != other
                && ((x[trunk] - x[one]) * (x[trunk] - x[other])) + ((y[trunk] - y[one]) * (y[trunk] - y[other])) < 0)
            {
                return true;
            }
        }

        return false;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private bool Touch(int thinner, int thicker)
    {
        var reach = diameter[thicker] + (isGrownTogether ? 0 : diameter[thinner]);
        return 4 * SquareOf(thinner, thicker) <= reach * reach;
    }

    private bool Contacts()
    {
        for (var thinner = 0; thinner < Count && limits.IsOn(StandFaultKind.Touching); thinner++)
        {
            var most = diameter[thinner] + widest;
            if (4 * nearest[thinner] > most * most)
            {
                continue;
            }

            var (deepest, gap) = (-1, 0.0);
            for (var thicker = 0; thicker < Count; thicker++)
            {
                var isThinner = diameter[thinner] != diameter[thicker] ? diameter[thinner] < diameter[thicker] : thinner > thicker;
                if (thicker != thinner && isThinner && Touch(thinner, thicker))
                {
                    var between = Math.Sqrt(SquareOf(thinner, thicker)) - ((diameter[thinner] + diameter[thicker]) / 2);
                    (deepest, gap) = deepest < 0 || between < gap ? (thicker, between) : (deepest, gap);
                }
            }

            if (deepest >= 0)
            {
                var pair = (1UL << thinner) | (1UL << deepest);
                touching.Add(pair);
                if (!Add(StandFaultKind.Touching, pair, thinner, deepest))
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>Whether two lengths, given by their squares, are closer than a limit in percent of the longer.</summary>
    private static bool AreAlike(double one, double other, double percent, out double difference)
    {
        var (shorter, longer) = one <= other ? (one, other) : (other, one);
        var rest = 1 - (percent / 100);
        if (shorter > 0 && shorter > longer * rest * rest)
        {
            difference = 1 - Math.Sqrt(shorter / longer);
            return true;
        }

        difference = 1;
        return false;
    }

    private bool EvenGaps()
    {
        if (!limits.IsOn(StandFaultKind.EvenGaps))
        {
            return true;
        }

        alike.Clear();
        for (var trunk = 0; trunk < Count; trunk++)
        {
            if (MostAlike(trunk) is { } gap)
            {
                alike.Add(gap);
            }
        }

        foreach (var gap in alike)
        {
            var three = (1UL << gap.Trunk) | (1UL << gap.Near) | (1UL << gap.Far);
            if (!IsBeaten(gap, three) && !IsToldAsTouching(three))
            {
                even.Add(three);
                if (!Add(StandFaultKind.EvenGaps, three, gap.Trunk, gap.Near, gap.Far))
                {
                    return false;
                }
            }
        }

        return true;
    }

    private bool IsBeaten((int Trunk, int Near, int Far, double Difference) gap, ulong three)
    {
        foreach (var other in alike)
        {
            if (other.Trunk != gap.Trunk && three == ((1UL << other.Trunk) | (1UL << other.Near) | (1UL << other.Far))
                && (other.Difference < gap.Difference || (other.Difference == gap.Difference && other.Trunk < gap.Trunk)))
            {
                return true;
            }
        }

        return false;
    }

    private (int Trunk, int Near, int Far, double Difference)? MostAlike(int trunk)
    {
        (int Trunk, int Near, int Far, double Difference)? best = null;
        for (var rest = open[trunk]; rest != 0; rest &= rest - 1)
        {
            var one = BitOperations.TrailingZeroCount(rest);
            for (var others = rest & (rest - 1); others != 0; others &= others - 1)
            {
                var other = BitOperations.TrailingZeroCount(others);
                double toOne = square[(trunk * Count) + one], toOther = square[(trunk * Count) + other];
                if (AreAlike(toOne, toOther, limits[StandFaultKind.EvenGaps], out var difference) && (best is not { } known || difference < known.Difference))
                {
                    best = toOne <= toOther ? (trunk, one, other, difference) : (trunk, other, one, difference);
                }
            }
        }

        return best;
    }

    private bool IsToldAsTouching(ulong three)
    {
        foreach (var pair in touching)
        {
            if ((pair & ~three) == 0)
            {
                return true;
            }
        }

        return false;
    }

    private bool Rods()
    {
        for (var middle = 0; middle < Count && limits.IsOn(StandFaultKind.ThreeInLine); middle++)
        {
            var others = Count >= StandingTrunks.ReachMattersFrom ? near[middle] : ((Count == 64 ? 0 : 1UL << Count) - 1) & ~(1UL << middle);
            for (var rest = others; rest != 0; rest &= rest - 1)
            {
                var first = BitOperations.TrailingZeroCount(rest);
                for (var seconds = rest & (rest - 1); seconds != 0; seconds &= seconds - 1)
                {
                    var second = BitOperations.TrailingZeroCount(seconds);
                    var three = (1UL << middle) | (1UL << first) | (1UL << second);
                    if (IsMiddle(middle, first, second) && MayPass(first, middle, second) && PassesRod(first, middle, second) && !IsToldAsTouching(three)
                        && !Add(StandFaultKind.ThreeInLine, three, first, middle, second))
                    {
                        return false;
                    }
                }
            }
        }

        return true;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private bool IsMiddle(int middle, int first, int second)
    {
        double over = SquareOf(first, second), toFirst = SquareOf(first, middle), toSecond = SquareOf(second, middle);
        return toFirst > 0 && toSecond > 0
            && (over > toSecond || (over == toSecond && middle < first))
            && (over > toFirst || (over == toFirst && middle < second));
    }

    /// <summary>Leaves out what is farther off the longest side than any rod: the difference of diameters along one side and the sum along another come to at most three of the widest.</summary>
    private bool MayPass(int first, int middle, int second)
    {
        var twice = 2 * (((x[second] - x[first]) * (y[middle] - y[first])) - ((y[second] - y[first]) * (x[middle] - x[first])));
        var far = 3 * widest * limits[StandFaultKind.ThreeInLine];
        return twice * twice <= far * far * SquareOf(first, second) * (1 + 1e-9);
    }

    /// <summary>As <see cref="Rod.Passes"/>, both sides of the comparison squared; no rod passes a trunk of no known width.</summary>
    private bool PassesRod(int first, int middle, int second)
    {
        if (diameter[first] <= 0 || diameter[middle] <= 0 || diameter[second] <= 0)
        {
            return false;
        }

        double acrossX = x[second] - x[first], acrossY = y[second] - y[first], wayX = x[middle] - x[first], wayY = y[middle] - y[first];
        var twice = 2 * ((acrossX * wayY) - (acrossY * wayX));
        var largestSquare = Math.Max(WeightSquare(first, middle, second), Math.Max(WeightSquare(middle, second, first), WeightSquare(second, first, middle)));
        var limit = limits[StandFaultKind.ThreeInLine];
        return twice * twice <= limit * limit * largestSquare;
    }

    private double WeightSquare(int one, int middle, int other)
    {
        double difference = diameter[one] - diameter[other], both = diameter[one] + diameter[middle];
        var wide = (difference * (x[one] - x[middle])) - (both * (x[one] - x[other]));
        var high = (difference * (y[one] - y[middle])) - (both * (y[one] - y[other]));
        return (wide * wide) + (high * high);
    }
}
