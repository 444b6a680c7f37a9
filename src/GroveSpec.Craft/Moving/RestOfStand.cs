using System.Runtime.InteropServices;
using GroveSpec.Craft.Composition;

namespace GroveSpec.Craft.Moving;

/// <summary>
/// What is known among all trunks of a stand but one, and stays so while only that one is shifted about, which is what a search
/// does most of the time. The arrays it is given are those of the stand, of an even number of places; beyond the last trunk
/// they hold no number.
/// </summary>
/// <param name="x">Places to the right, in millimetres.</param>
/// <param name="y">Places to the back.</param>
/// <param name="breadth">The squares of the diameters.</param>
/// <param name="count">How many trunks stand.</param>
/// <param name="without">The one that is left out.</param>
internal sealed class RestOfStand(double[] x, double[] y, double[] breadth, int count, int without)
{
    private readonly double[] knownX = [.. x.Select(_ => double.NaN)];
    private readonly double[] knownY = [.. x.Select(_ => double.NaN)];
    private readonly double[] square = new double[count * x.Length];
    private readonly ulong[] parted = new ulong[count];
    private readonly ulong[] entered = new ulong[count];
    private readonly ulong[] knownRods = new ulong[count * count];
    private readonly ulong[] passedRods = new ulong[count * count];
    private readonly ulong[] gapsKnown = new ulong[count];
    private readonly (int Trunk, int Near, int Far, double Difference)?[] gaps = new (int, int, int, double)?[count];
    private bool arePairsKnown;
    private double reach = double.NaN;
    private double seenFrom = double.NaN;
    private ulong knownCovers;
    private ulong hidden;

    /// <summary>For each trunk the square of the way to the nearest of the others; without a limit for the one that is left out and where there is no other.</summary>
    public double[] Nearest { get; } = [.. x.Select(_ => double.PositiveInfinity)];

    /// <summary>For each trunk its neighbours, as sets of bits, as far as the one left out parts none.</summary>
    public ulong[] Near { get; } = new ulong[count];

    /// <summary>Of those the ones across a gap that no other trunk enters.</summary>
    public ulong[] Open { get; } = new ulong[count];

    /// <summary>Forgets what was known if any of the others was shifted since.</summary>
    public void Update()
    {
        (knownX[without], knownY[without]) = (x[without], y[without]);
        if (AreSame(knownX, x) && AreSame(knownY, y))
        {
            return;
        }

        x.CopyTo(knownX, 0);
        y.CopyTo(knownY, 0);
        (arePairsKnown, reach, knownCovers) = (false, double.NaN, 0);
        Array.Clear(knownRods);
        Array.Clear(gapsKnown);
        Array.Fill(Nearest, double.PositiveInfinity);
        for (var trunk = 0; trunk < count; trunk++)
        {
            if (trunk != without)
            {
                var row = square.AsSpan(trunk * x.Length, x.Length);
                PlanPairs.Squares(x, y, x[trunk], y[trunk], row);
                Nearest[trunk] = PlanPairs.Least(row, trunk, without);
            }
        }
    }

    /// <summary>Finds out who is whose neighbour, so that <see cref="Near"/> and <see cref="Open"/> hold.</summary>
    /// <param name="most">The square of the farthest way to a neighbour.</param>
    public void FindNeighbours(double most)
    {
        if (reach == most)
        {
            return;
        }

        reach = most;
        if (!arePairsKnown)
        {
            arePairsKnown = true;
            FindPairs();
        }

        for (var one = 0; one < count; one++)
        {
            if (one != without)
            {
                Near[one] = PlanPairs.AtMost(square.AsSpan(one * x.Length, x.Length), most) & ~((1UL << one) | (1UL << without)) & ~parted[one];
                Open[one] = Near[one] & ~entered[one];
            }
        }
    }

    /// <summary>Whether a rod passes three trunks of the rest, worked out when it is asked for first.</summary>
    /// <param name="stand">The stand, which can tell.</param>
    /// <param name="middle">The middle one.</param>
    /// <param name="first">One of the outer ones.</param>
    /// <param name="seconds">The other outer ones of interest, as a set; all of higher numbers than the first.</param>
    /// <returns>Those of <paramref name="seconds"/> with which a rod passes.</returns>
    public ulong Rods(LooseStand stand, int middle, int first, ulong seconds)
    {
        var place = (middle * count) + first;
        var missing = seconds & ~knownRods[place];
        if (missing != 0)
        {
            passedRods[place] = (passedRods[place] & knownRods[place]) | stand.RodsThrough(middle, first, missing);
            knownRods[place] |= missing;
        }

        return passedRods[place] & seconds;
    }

    /// <summary>The two gaps of a trunk that are most alike, none of them to the one left out; worked out when they are asked for first.</summary>
    /// <param name="stand">The stand, which can tell.</param>
    /// <param name="trunk">The trunk.</param>
    /// <param name="across">The trunks across its gaps.</param>
    /// <returns>The gaps; null where no two are closer than the limit.</returns>
    public (int Trunk, int Near, int Far, double Difference)? MostAlike(LooseStand stand, int trunk, ulong across)
    {
        if (across == 0)
        {
            return null;
        }

        if (gapsKnown[trunk] != across)
        {
            gaps[trunk] = stand.MostAlike(trunk, across);
            gapsKnown[trunk] = across;
        }

        return gaps[trunk];
    }

    /// <summary>Whether a trunk that the one left out does not cover is hidden by the others, worked out when it is asked for first.</summary>
    /// <param name="stand">The stand, which can tell; the one left out must not cover the trunk now.</param>
    /// <param name="distance">How far away the eye is, in millimetres.</param>
    /// <param name="trunk">The trunk.</param>
    /// <returns>True when it counts as hidden.</returns>
    public bool IsHidden(LooseStand stand, double distance, int trunk)
    {
        if (distance != seenFrom)
        {
            (seenFrom, knownCovers) = (distance, 0);
        }

        var bit = 1UL << trunk;
        if ((knownCovers & bit) == 0)
        {
            knownCovers |= bit;
            hidden = (hidden & ~bit) | (stand.IsHidden(trunk) ? bit : 0);
        }

        return (hidden & bit) != 0;
    }

    /// <summary>Whether all numbers are the same to the last bit, so that no number is the same as none.</summary>
    private static bool AreSame(ReadOnlySpan<double> one, ReadOnlySpan<double> other) => MemoryMarshal.AsBytes(one).SequenceEqual(MemoryMarshal.AsBytes(other));

    private void FindPairs()
    {
        Array.Clear(parted);
        Array.Clear(entered);
        var others = ~(1UL << without);
        for (var one = 0; one < count; one++)
        {
            for (var other = one + 1; other < count; other++)
            {
                if (one != without && other != without)
                {
                    var between = PlanPairs.Between(x, y, breadth, one, other, square[(one * x.Length) + other]);
                    if ((between.Parting & others) != 0)
                    {
                        parted[one] |= 1UL << other;
                        parted[other] |= 1UL << one;
                    }

                    if ((between.Entering & others) != 0)
                    {
                        entered[one] |= 1UL << other;
                        entered[other] |= 1UL << one;
                    }
                }
            }
        }
    }
}
