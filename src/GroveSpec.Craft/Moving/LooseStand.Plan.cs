using System.Numerics;
using System.Runtime.CompilerServices;
using GroveSpec.Craft.Composition;

namespace GroveSpec.Craft.Moving;

/// <content>What is amiss as seen from above. The definitions are those of <see cref="StandingTrunks"/>, <see cref="RodSearch"/>, <see cref="Composition.EvenGaps"/> and <see cref="Composition.Contacts"/>.</content>
public sealed partial class LooseStand
{
    private double reachSquare;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double SquareOf(int one, int other)
    {
        double dx = x[one] - x[other], dy = y[one] - y[other];
        return (dx * dx) + (dy * dy);
    }

    /// <summary>The ways to the nearest: what holds among the others, and the ways to the trunk that was shifted last.</summary>
    private void MeasureNearest()
    {
        if (rest is not null || Count == 0)
        {
            return;
        }

        rest = rests[lastShifted] ??= new(x, y, breadth, Count, lastShifted);
        rest.Update();
        PlanPairs.Squares(x, y, x[lastShifted], y[lastShifted], ways);
        ways[lastShifted] = double.PositiveInfinity;
        nearest[lastShifted] = PlanPairs.Nearer(rest.Nearest, ways, nearest);
    }

    /// <summary>Finds out who is whose neighbour: as among the others, but for what the trunk that was shifted last parts, and its own neighbours.</summary>
    private void MeasureNeighbours()
    {
        if (rest is null)
        {
            return;
        }

        reachSquare = ReachSquare();
        rest.FindNeighbours(reachSquare);
        rest.Near.CopyTo(near, 0);
        rest.Open.CopyTo(open, 0);
        (near[lastShifted], open[lastShifted]) = (0, 0);
        for (var one = 0; one < Count; one++)
        {
            // What is farther than any neighbour parts none.
            if (one == lastShifted || ways[one] > reachSquare)
            {
                continue;
            }

            Part(one);
            var (parting, entering) = PlanPairs.Between(x, y, breadth, Math.Min(one, lastShifted), Math.Max(one, lastShifted), ways[one]);
            if (parting == 0)
            {
                near[one] |= 1UL << lastShifted;
                near[lastShifted] |= 1UL << one;
                if (entering == 0)
                {
                    open[one] |= 1UL << lastShifted;
                    open[lastShifted] |= 1UL << one;
                }
            }
        }
    }

    /// <summary>Parts one trunk from those behind the one that was shifted last.</summary>
    private void Part(int one)
    {
        var (parted, entered) = PlanPairs.Beyond(x, y, breadth[lastShifted], one, lastShifted);
        for (var others = (parted | entered) & near[one]; others != 0; others &= others - 1)
        {
            var other = BitOperations.TrailingZeroCount(others);
            var isParted = (parted >> other & 1) != 0;
            near[one] &= isParted ? ~(1UL << other) : ulong.MaxValue;
            near[other] &= isParted ? ~(1UL << one) : ulong.MaxValue;
            open[one] &= ~(1UL << other);
            open[other] &= ~(1UL << one);
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
        for (var trunk = 0; trunk < Count; trunk++)
        {
            // So few are sorted sooner by putting each in its place than by what sorts many.
            var place = trunk;
            for (; place > 0 && sorted[place - 1] > nearest[trunk]; place--)
            {
                sorted[place] = sorted[place - 1];
            }

            sorted[place] = nearest[trunk];
        }

        return 6.25 * sorted[(Count - 1) / 2] * (1 + 1e-14);
    }

    private bool AreNeighbours(int one, int other)
    {
        var between = SquareOf(one, other);
        return IsWithinReach(between) && PlanPairs.Between(x, y, breadth, one, other, between).Parting == 0;
    }

    private bool IsOpenGap(int one, int other)
    {
        var between = SquareOf(one, other);
        return IsWithinReach(between) && PlanPairs.Between(x, y, breadth, one, other, between) is (0, 0);
    }

    /// <summary>Whether a gap is within 2.5 × the median of the gaps to the nearest, without sorting those: no more than half of them are shorter than the gap / 2.5.</summary>
    private bool IsWithinReach(double between)
    {
        if (Count < StandingTrunks.ReachMattersFrom)
        {
            return true;
        }

        MeasureNearest();
        return BitOperations.PopCount(PlanPairs.Below(nearest, between / (6.25 * (1 + 1e-14)))) <= (Count - 1) / 2;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private bool Touch(int thinner, int thicker)
    {
        var reach = (diameter[thicker] + (isGrownTogether ? 0 : diameter[thinner])) * touchingReach;
        return 4 * SquareOf(thinner, thicker) <= reach * reach;
    }

    private bool Contacts()
    {
        for (var thinner = 0; thinner < Count && limits.IsOn(StandFaultKind.Touching); thinner++)
        {
            var most = (diameter[thinner] + widest) * touchingReach;
            if (4 * nearest[thinner] > most * most)
            {
                continue;
            }

            var (deepest, gap) = (-1, 0.0);
            for (var others = thicker[thinner]; others != 0; others &= others - 1)
            {
                var other = BitOperations.TrailingZeroCount(others);
                if (Touch(thinner, other))
                {
                    var between = Math.Sqrt(SquareOf(thinner, other)) - ((diameter[thinner] + diameter[other]) / 2);
                    (deepest, gap) = deepest < 0 || between < gap ? (other, between) : (deepest, gap);
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

    /// <summary>For each trunk those that count as thicker; of equally thick ones that is the first.</summary>
    private ulong[] Thicker()
    {
        var found = new ulong[Count];
        for (var thinner = 0; thinner < Count; thinner++)
        {
            for (var other = 0; other < Count; other++)
            {
                var isThicker = diameter[thinner] != diameter[other] ? diameter[thinner] < diameter[other] : thinner > other;
                found[thinner] |= isThicker ? 1UL << other : 0;
            }
        }

        return found;
    }

    /// <summary>Whether two gaps, given by their squares, are closer than the limit in percent of the longer.</summary>
    private bool AreAlike(double one, double other, out double difference)
    {
        var (shorter, longer) = one <= other ? (one, other) : (other, one);
        if (shorter > 0 && shorter > longer * unlikeGap * unlikeGap)
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
            if (MostAlikeNow(trunk) is { } gap)
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

    /// <summary>As <see cref="MostAlike"/>; where the trunk that was shifted last has no part in it, as it was among the others.</summary>
    private (int Trunk, int Near, int Far, double Difference)? MostAlikeNow(int trunk) => trunk == lastShifted || (open[trunk] >> lastShifted & 1) != 0 || rest is null
        ? MostAlike(trunk, open[trunk])
        : rest.MostAlike(this, trunk, open[trunk]);

    /// <summary>The two gaps of a trunk that are most alike.</summary>
    /// <param name="trunk">The trunk.</param>
    /// <param name="across">The trunks across its gaps.</param>
    /// <returns>The trunk, those across the shorter and the longer gap, and the difference as a share of the longer; null where no two gaps are closer than the limit.</returns>
    internal (int Trunk, int Near, int Far, double Difference)? MostAlike(int trunk, ulong across)
    {
        Span<(int Trunk, double Square)> gaps = stackalloc (int, double)[MostTrunks];
        var count = 0;
        for (var others = across; others != 0; others &= others - 1)
        {
            var other = BitOperations.TrailingZeroCount(others);
            gaps[count++] = (other, SquareOf(trunk, other));
        }

        (int Trunk, int Near, int Far, double Difference)? best = null;
        for (var one = 0; one < count; one++)
        {
            for (var other = one + 1; other < count; other++)
            {
                if (AreAlike(gaps[one].Square, gaps[other].Square, out var difference) && (best is not { } known || difference < known.Difference))
                {
                    best = gaps[one].Square <= gaps[other].Square ? (trunk, gaps[one].Trunk, gaps[other].Trunk, difference) : (trunk, gaps[other].Trunk, gaps[one].Trunk, difference);
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
            var others = Count >= StandingTrunks.ReachMattersFrom ? near[middle] : All & ~(1UL << middle);
            for (; others != 0; others &= others - 1)
            {
                var first = BitOperations.TrailingZeroCount(others);
                for (var seconds = RodsOf(middle, first, others & (others - 1)); seconds != 0; seconds &= seconds - 1)
                {
                    var second = BitOperations.TrailingZeroCount(seconds);
                    var three = (1UL << middle) | (1UL << first) | (1UL << second);
                    if (!IsToldAsTouching(three) && !Add(StandFaultKind.ThreeInLine, three, first, middle, second))
                    {
                        return false;
                    }
                }
            }
        }

        return true;
    }

    /// <summary>Those of some trunks to which a rod leads from another past a middle one; what is about the trunk that was shifted last is looked at afresh.</summary>
    private ulong RodsOf(int middle, int first, ulong seconds)
    {
        if (seconds == 0 || middle == lastShifted || first == lastShifted || rest is null)
        {
            return RodsThrough(middle, first, seconds);
        }

        var moved = seconds & (1UL << lastShifted);
        return rest.Rods(this, middle, first, seconds & ~moved) | RodsThrough(middle, first, moved);
    }

    /// <summary>Those of some trunks to which a rod leads from another past a middle one.</summary>
    /// <param name="middle">The middle one.</param>
    /// <param name="first">The other.</param>
    /// <param name="seconds">The trunks, as a set of bits.</param>
    /// <returns>The same or a smaller set.</returns>
    internal ulong RodsThrough(int middle, int first, ulong seconds)
    {
        var rods = 0UL;
        for (; seconds != 0; seconds &= seconds - 1)
        {
            var second = BitOperations.TrailingZeroCount(seconds);
            rods |= IsMiddle(middle, first, second) && MayPass(first, middle, second) && PassesRod(first, middle, second) ? 1UL << second : 0;
        }

        return rods;
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
