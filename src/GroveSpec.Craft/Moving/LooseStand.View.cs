using System.Numerics;
using GroveSpec.Craft.Composition;
using GroveSpec.Craft.Views;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Model.Views;

namespace GroveSpec.Craft.Moving;

/// <content>What is amiss as the viewer sees it. The definitions are those of <see cref="FrontView"/>, <see cref="ViewFrame"/> and <see cref="TopLine"/>.</content>
public sealed partial class LooseStand
{
    private readonly bool[] isMeasured;
    private readonly double[] tipX;
    private readonly double[] tipY;
    private readonly double[] tipZ;
    private readonly double[] firstTipX;
    private readonly double[] firstTipY;
    private readonly double[] firstTipZ;
    private readonly double[] across;
    private readonly double[] depth;
    private readonly double[] left;
    private readonly double[] right;
    private readonly double[] power;
    private readonly double[] topAcross;
    private readonly double[] topUp;
    private readonly int[] order;
    private readonly double turnRight;
    private readonly double turnBack;
    private readonly double? fixedDistance;
    private readonly double fixedReach;
    private readonly double tallest;
    private readonly double? eye;
    private readonly DepthOrder? depthOrder;
    private readonly double[] starts;
    private readonly double[] ends;
    private double distance;
    private double eyeHeight;
    private ulong hidden;
    private ulong seenCovers;
    private ulong seenTops;

    /// <summary>The number of trunks, rounded up to whole vectors of four.</summary>
    private int Padded => (Count + 3) / 4 * 4;

    /// <summary>All trunks, as a set.</summary>
    private ulong All => Count == MostTrunks ? ulong.MaxValue : (1UL << Count) - 1;

    private double[] PaddedWith(IEnumerable<double> values) => [.. values, .. Enumerable.Repeat(double.NaN, Padded - Count)];

    private static (double[] X, double[] Y, double[] Z) Tips(StandingTrunks standing)
    {
        var (tipX, tipY, tipZ) = (new double[standing.Count], new double[standing.Count], new double[standing.Count]);
        for (var trunk = 0; trunk < standing.Count; trunk++)
        {
            var tip = TrunkAxis.TipOf(standing.Trunks[trunk]);
            tipX[trunk] = tip?.X.Millimetres ?? double.NaN;
            tipY[trunk] = tip?.Y.Millimetres ?? double.NaN;
            tipZ[trunk] = tip?.Z.Millimetres ?? double.NaN;
        }

        return (tipX, tipY, tipZ);
    }

    private static double? ViewOf(PlantingState state, out double turnRight, out double turnBack, out double? fixedDistance, out double fixedReach, out double tallest)
    {
        var stated = state.Planting.Viewed;
        (turnRight, turnBack) = ViewFrame.Quarter(stated?.From ?? Bearing.Front);
        fixedDistance = stated?.Distance is { } given && given > Length.Zero ? given.Millimetres : null;
        fixedReach = ViewFrame.ReachMillimetres(state.Planting.Container);
        tallest = 0;
        foreach (var trunk in state.Standing)
        {
            tallest = Math.Max(tallest, ViewFrame.HeightMillimetres(trunk));
        }

        return stated?.EyeHeight?.Millimetres ?? (tallest > 0 ? tallest * 2 / 3 : null);
    }

    /// <summary>Sees all trunks afresh, since the eye may stand back from the farthest of them.</summary>
    private void See()
    {
        Aim();
        SeeCovers();
        for (var unseen = All & ~seenTops; unseen != 0; unseen &= unseen - 1)
        {
            SeeTop(BitOperations.TrailingZeroCount(unseen));
        }

        hidden = 0;
    }

    private void Aim()
    {
        if (fixedDistance is { } stated)
        {
            distance = stated;
        }
        else
        {
            var reach = fixedReach * fixedReach;
            for (var trunk = 0; trunk < Count; trunk++)
            {
                reach = Math.Max(reach, (x[trunk] * x[trunk]) + (y[trunk] * y[trunk]));
            }

            var away = Math.Max(ViewFrame.LeastDistance.Millimetres, ViewFrame.ExtentsAway * Math.Max(2 * Math.Sqrt(reach), tallest));
            if (away != distance)
            {
                (distance, seenCovers, seenTops) = (away, 0, 0);
            }
        }

        eyeHeight = eye ?? distance * 0.1;
    }

    private double DepthOf(int trunk) => (y[trunk] * turnRight) - (x[trunk] * turnBack) + distance;

    private bool IsSeen(int trunk, double far) => far - (diameter[trunk] / 2) > distance * ViewFrame.NearestShare;

    /// <summary>What is seen of a trunk is kept until it is shifted, or the eye steps back.</summary>
    private void SeeFoot(int trunk)
    {
        if ((seenCovers >> trunk & 1) != 0)
        {
            return;
        }

        seenCovers |= 1UL << trunk;
        var far = DepthOf(trunk);
        depth[trunk] = far;
        across[trunk] = IsSeen(trunk, far) ? ((x[trunk] * turnRight) + (y[trunk] * turnBack)) * distance / far : double.NaN;
        var (side, radius) = ((x[trunk] * turnRight) + (y[trunk] * turnBack), diameter[trunk] / 2);
        power[trunk] = (side * side) + (far * far) - (radius * radius);
        if (!isMeasured[trunk] || double.IsNaN(across[trunk]))
        {
            // No number is beside none, so that who is not seen, or has no known width, neither covers nor is covered.
            (left[trunk], right[trunk]) = (double.NaN, double.NaN);
            return;
        }

        var reach = radius * Math.Sqrt(power[trunk]);
        var share = distance / ((far - radius) * (far + radius));
        left[trunk] = ((side * far) - reach) * share;
        right[trunk] = ((side * far) + reach) * share;
    }

    private void SeeCovers()
    {
        for (var unseen = All & ~seenCovers; unseen != 0; unseen &= unseen - 1)
        {
            SeeFoot(BitOperations.TrailingZeroCount(unseen));
        }
    }

    private void SeeTop(int trunk)
    {
        if ((seenTops >> trunk & 1) != 0)
        {
            return;
        }

        seenTops |= 1UL << trunk;
        var far = (tipY[trunk] * turnRight) - (tipX[trunk] * turnBack) + distance;
        if (far > distance * ViewFrame.NearestShare && IsSeen(trunk, DepthOf(trunk)))
        {
            topAcross[trunk] = ((tipX[trunk] * turnRight) + (tipY[trunk] * turnBack)) * distance / far;
            topUp[trunk] = eyeHeight + ((tipZ[trunk] - eyeHeight) * distance / far);
        }
        else
        {
            topAcross[trunk] = double.NaN;
        }
    }

    private bool HoldsInView(in StandFault fault)
    {
        Aim();
        switch (fault.Kind)
        {
            case StandFaultKind.EvenGapsInView:
                SeeFoot(fault.First);
                SeeFoot(fault.Second);
                SeeFoot(fault.Third);
                return IsEvenInView(fault.First, fault.Second, fault.Third);
            case StandFaultKind.LevelTops:
                SeeTop(fault.First);
                SeeTop(fault.Second);
                SeeTop(fault.Third);
                return AreLevel(fault.First, fault.Second, fault.Third);
            case StandFaultKind.HiddenTrunk:
                SeeCovers();
                return IsHidden(fault.First);
            default:
                See();
                return IsReversed();
        }
    }

    /// <summary>Whether no other trunk is seen between three, by the middle of their feet or by their tops; to be asked after the three were seen.</summary>
    private bool FollowEachOther(bool byTops, in StandFault fault)
    {
        var places = byTops ? topAcross : across;
        double from = places[fault.First], to = places[fault.Third];
        for (var trunk = 0; trunk < Count; trunk++)
        {
            if ((fault.Trunks >> trunk & 1) != 0)
            {
                continue;
            }

            if (byTops)
            {
                SeeTop(trunk);
            }
            else
            {
                SeeFoot(trunk);
            }

            if (places[trunk] > from && places[trunk] < to)
            {
                return false;
            }
        }

        return true;
    }

    private bool IsEvenInView(int from, int middle, int to)
    {
        double one = across[middle] - across[from], other = across[to] - across[middle];
        var (shorter, longer) = one <= other ? (one, other) : (other, one);
        return shorter > 0 && 100 * (longer - shorter) < limits[StandFaultKind.EvenGapsInView] * longer * (1 - 1e-12);
    }

    private bool AreLevel(int from, int middle, int to)
    {
        double ux = topAcross[to] - topAcross[from], uy = topUp[to] - topUp[from], vx = topAcross[middle] - topAcross[from], vy = topUp[middle] - topUp[from];
        var lengthSquare = (ux * ux) + (uy * uy);
        return lengthSquare > 0 && topAcross[from] <= topAcross[middle] && topAcross[middle] <= topAcross[to]
            && 100 * Math.Abs((ux * vy) - (uy * vx)) <= limits[StandFaultKind.LevelTops] * lengthSquare;
    }

    private bool OfDepthAndCover()
    {
        if (IsReversed() && !Add(StandFaultKind.DepthReversed, 0, -1))
        {
            return false;
        }

        // Whom the trunk that was shifted last does not cover is hidden as among the others.
        var covered = limits.IsOn(StandFaultKind.HiddenTrunk) && Count > 0 ? Overlapping(lastShifted).Covered : 0;
        for (var trunk = 0; trunk < Count && limits.IsOn(StandFaultKind.HiddenTrunk); trunk++)
        {
            if (IsHiddenNow(trunk, covered))
            {
                hidden |= 1UL << trunk;
                if (!Add(StandFaultKind.HiddenTrunk, 1UL << trunk, trunk))
                {
                    return false;
                }
            }
        }

        return true;
    }

    private bool InViewRow()
    {
        if (limits.IsOn(StandFaultKind.EvenGapsInView))
        {
            var seen = SortBy(across);
            for (var place = 2; place < seen; place++)
            {
                int from = order[place - 2], middle = order[place - 1], to = order[place];
                var three = (1UL << from) | (1UL << middle) | (1UL << to);
                if (IsEvenInView(from, middle, to) && (three & hidden) == 0 && !even.Contains(three) && !IsToldAsTouching(three)
                    && !Add(StandFaultKind.EvenGapsInView, three, from, middle, to))
                {
                    return false;
                }
            }
        }

        if (limits.IsOn(StandFaultKind.LevelTops))
        {
            var seen = SortBy(topAcross);
            for (var place = 2; place < seen; place++)
            {
                int from = order[place - 2], middle = order[place - 1], to = order[place];
                if (AreLevel(from, middle, to) && !Add(StandFaultKind.LevelTops, (1UL << from) | (1UL << middle) | (1UL << to), from, middle, to))
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>Puts those that are seen in order from left to right; of equals the first comes first.</summary>
    private int SortBy(double[] places)
    {
        var count = 0;
        for (var trunk = 0; trunk < Count; trunk++)
        {
            if (double.IsNaN(places[trunk]))
            {
                continue;
            }

            var at = count++;
            for (; at > 0 && places[order[at - 1]] > places[trunk]; at--)
            {
                order[at] = order[at - 1];
            }

            order[at] = trunk;
        }

        return count;
    }
}
