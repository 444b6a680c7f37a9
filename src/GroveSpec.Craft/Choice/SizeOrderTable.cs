using System.Numerics;
using GroveSpec.Craft.Composition;

namespace GroveSpec.Craft.Choice;

/// <summary>Which trunks would be out of order by size if only some of a stool stood: what <see cref="SizeOrder.Find"/> finds among those.</summary>
public sealed class SizeOrderTable
{
    private readonly int count;
    private readonly uint anyWide;
    private readonly uint[] thinner;
    private readonly uint[] wider;
    private readonly uint[] counted;
    private readonly uint[] thicker;
    private readonly uint[] taller;

    /// <summary>Compares every two trunks; the parameters are those of <see cref="SizeOrder.Find"/>.</summary>
    /// <param name="trunks">The trunks, at most <see cref="NeighbourTable.MostTrunks"/>.</param>
    /// <param name="widePercent">The limit for a trunk that is wide but short.</param>
    /// <param name="thinPercent">The limit for a trunk that is tall but thin.</param>
    /// <param name="isMeantWide">Whether a trunk is meant to be wide but short.</param>
    /// <param name="isMeantThin">Whether a trunk is meant to be tall but thin.</param>
    public SizeOrderTable(StandingTrunks trunks, double widePercent, double thinPercent, Func<int, bool> isMeantWide, Func<int, bool> isMeantThin)
    {
        ArgumentNullException.ThrowIfNull(trunks);
        ArgumentNullException.ThrowIfNull(isMeantWide);
        ArgumentNullException.ThrowIfNull(isMeantThin);
        count = trunks.Count;
        (thinner, wider, thicker, taller) = (new uint[count], new uint[count], new uint[count], new uint[count]);
        counted = new uint[2 * count];
        for (var first = 0; first < count; first++)
        {
            for (var second = 0; second < count; second++)
            {
                if (first == second || !IsMeasured(trunks, first) || !IsMeasured(trunks, second))
                {
                    continue;
                }

                thicker[first] |= trunks.Trunks[second].Diameter!.Value.Value > trunks.Trunks[first].Diameter!.Value.Value ? 1u << second : 0;
                taller[first] |= trunks.Trunks[second].Height!.Value.Value > trunks.Trunks[first].Height!.Value.Value ? 1u << second : 0;
                counted[2 * first] |= SizeOrder.Break(trunks, first, second, widePercent) is not null ? 1u << second : 0;
                counted[(2 * first) + 1] |= SizeOrder.Break(trunks, first, second, thinPercent) is not null ? 1u << second : 0;
                if (SizeOrder.Break(trunks, first, second, Math.Min(widePercent, thinPercent)) is var (wide, thin) && wide == first && !isMeantWide(wide) && !isMeantThin(thin))
                {
                    thinner[wide] |= 1u << thin;
                    wider[thin] |= 1u << wide;
                    anyWide |= 1u << wide;
                }
            }
        }
    }

    /// <summary>The trunks out of order among those that stand.</summary>
    /// <param name="kept">The trunks that stand.</param>
    /// <returns>Those that are wide but short and those that are tall but thin, as sets.</returns>
    public (uint WideButShort, uint TallButThin) Find(uint kept)
    {
        if ((kept & anyWide) == 0)
        {
            return (0, 0);
        }

        Span<uint> partners = stackalloc uint[2 * NeighbourTable.MostTrunks];
        var open = 0u;
        for (var rest = kept; rest != 0; rest &= rest - 1)
        {
            var trunk = BitOperations.TrailingZeroCount(rest);
            partners[2 * trunk] = thinner[trunk] & kept;
            partners[(2 * trunk) + 1] = wider[trunk] & kept;
            open |= (partners[2 * trunk] | partners[(2 * trunk) + 1]) != 0 ? 1u << trunk : 0;
        }

        uint wideButShort = 0, tallButThin = 0;
        while (MostUrgent(kept, open, partners) is >= 0 and var side)
        {
            var (trunk, against) = (side / 2, partners[side]);
            if ((against & counted[side]) != 0)
            {
                wideButShort |= side % 2 == 0 ? 1u << trunk : 0;
                tallButThin |= side % 2 == 1 ? 1u << trunk : 0;
            }

            for (var rest = against; rest != 0; rest &= rest - 1)
            {
                partners[(2 * BitOperations.TrailingZeroCount(rest)) + (1 - (side % 2))] &= ~(1u << trunk);
            }

            partners[side] = 0;
        }

        return (wideButShort, tallButThin);
    }

    /// <summary>How many trunks are told at least: the most breaks of the order of which no two share a trunk that is too wide, nor one that is too thin.</summary>
    /// <param name="kept">The trunks that stand.</param>
    /// <returns>The number, by augmenting paths (Kuhn 1955, from memory).</returns>
    public int LeastTold(uint kept)
    {
        if ((kept & anyWide) == 0)
        {
            return 0;
        }

        Span<int> wideOf = stackalloc int[NeighbourTable.MostTrunks];
        wideOf.Fill(-1);
        var told = 0;
        var paired = 0u;
        for (var rest = kept & anyWide; rest != 0; rest &= rest - 1)
        {
            var wide = BitOperations.TrailingZeroCount(rest);
            if ((thinner[wide] & kept) != 0)
            {
                var open = kept;
                told += Pair(wide, ref open, ref paired, wideOf) ? 1 : 0;
            }
        }

        return told;
    }

    private bool Pair(int wide, ref uint open, ref uint paired, Span<int> wideOf)
    {
        if ((thinner[wide] & open & ~paired) is not 0 and var free)
        {
            var thin = BitOperations.TrailingZeroCount(free);
            paired |= 1u << thin;
            wideOf[thin] = wide;
            return true;
        }

        for (var rest = thinner[wide] & open; rest != 0; rest = thinner[wide] & open)
        {
            var thin = BitOperations.TrailingZeroCount(rest);
            open &= ~(1u << thin);
            if (Pair(wideOf[thin], ref open, ref paired, wideOf))
            {
                wideOf[thin] = wide;
                return true;
            }
        }

        return false;
    }

    private static bool IsMeasured(StandingTrunks trunks, int index) => trunks.Trunks[index] is { Diameter: not null, Height: not null };

    /// <summary>The side at odds with most others; of equals the one whose two ranks lie further apart, then the wide one, then the first.</summary>
    private int MostUrgent(uint kept, uint open, ReadOnlySpan<uint> partners)
    {
        int best = -1, most = 0, apart = 0;
        for (var isThin = 0; isThin < 2; isThin++)
        {
            for (var rest = open; rest != 0; rest &= rest - 1)
            {
                var trunk = BitOperations.TrailingZeroCount(rest);
                var number = BitOperations.PopCount(partners[(2 * trunk) + isThin]);
                if (number > 0 && number >= most)
                {
                    var ranks = Math.Abs(BitOperations.PopCount(thicker[trunk] & kept) - BitOperations.PopCount(taller[trunk] & kept));
                    if (number > most || ranks > apart)
                    {
                        (best, most, apart) = ((2 * trunk) + isThin, number, ranks);
                    }
                }
            }
        }

        return best;
    }
}
