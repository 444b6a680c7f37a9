using System.Numerics;
using GroveSpec.Craft.Composition;

namespace GroveSpec.Craft.Choice;

/// <summary>Which even gaps there would be if only some of a stool stood: what <see cref="EvenGaps.Find"/> finds among those.</summary>
public sealed class EvenGapTable
{
    private const short None = short.MaxValue;

    private readonly (int Trunk, uint Ends, uint Three, EvenGap Gap)[][] mostAlikeFirst;
    private readonly int count;

    // For each trunk and two others the place of their gaps among those that are alike, or none.
    private readonly short[] places;
    private readonly uint[] ends;

    /// <summary>Compares the gaps of every trunk two by two.</summary>
    /// <param name="trunks">The trunks, at most <see cref="NeighbourTable.MostTrunks"/>.</param>
    /// <param name="percent">The limit, as for <see cref="EvenGaps.Find"/>.</param>
    public EvenGapTable(StandingTrunks trunks, double percent)
    {
        ArgumentNullException.ThrowIfNull(trunks);
        count = trunks.Count;
        mostAlikeFirst = new (int, uint, uint, EvenGap)[count][];
        (places, ends) = (new short[count * count * count], new uint[count]);
        Array.Fill(places, None);
        for (var trunk = 0; trunk < trunks.Count; trunk++)
        {
            var gaps = new List<EvenGap>();
            for (var first = 0; first < trunks.Count; first++)
            {
                for (var second = first + 1; second < trunks.Count; second++)
                {
                    if (first != trunk && second != trunk && Compare(trunks, trunk, first, second, percent) is { } gap)
                    {
                        gaps.Add(gap);
                    }
                }
            }

            gaps.Sort((one, other) => EvenGaps.IsMoreAlike(one, other) ? -1 : EvenGaps.IsMoreAlike(other, one) ? 1 : 0);
            mostAlikeFirst[trunk] = [.. gaps.Select(gap => (gap.Trunk, (1u << gap.Near) | (1u << gap.Far), (1u << gap.Trunk) | (1u << gap.Near) | (1u << gap.Far), gap))];
            for (var place = 0; place < gaps.Count; place++)
            {
                places[Index(trunk, gaps[place].Near, gaps[place].Far)] = places[Index(trunk, gaps[place].Far, gaps[place].Near)] = (short)place;
                ends[trunk] |= mostAlikeFirst[trunk][place].Ends;
            }
        }
    }

    /// <summary>The gaps at a trunk that are alike, whether or not they would be open, the most alike first.</summary>
    /// <param name="trunk">The trunk.</param>
    /// <returns>The trunks at both ends and all three, as sets.</returns>
    public ReadOnlySpan<(int Trunk, uint Ends, uint Three, EvenGap Gap)> Of(int trunk) => mostAlikeFirst[trunk];

    /// <summary>The most alike of the gaps at a trunk that are open.</summary>
    /// <param name="trunk">The trunk.</param>
    /// <param name="open">The trunks to which its gaps are open.</param>
    /// <returns>Its place in <see cref="Of"/>; below zero where none are alike.</returns>
    public int FirstOpen(int trunk, uint open)
    {
        var best = None;
        for (var rest = open & ends[trunk]; rest != 0; rest &= rest - 1)
        {
            var row = places.AsSpan(Index(trunk, BitOperations.TrailingZeroCount(rest), 0), count);
            for (var others = rest & (rest - 1); others != 0; others &= others - 1)
            {
                best = Math.Min(best, row[BitOperations.TrailingZeroCount(others)]);
            }
        }

        return best == None ? -1 : best;
    }

    /// <summary>The even gaps among the trunks that stand.</summary>
    /// <param name="kept">The trunks that stand.</param>
    /// <param name="open">For each of them the neighbours to which the gap is open.</param>
    /// <param name="threes">Takes the three trunks of each even gap, as sets; room for as many as stand.</param>
    /// <returns>How many there are.</returns>
    public int Find(uint kept, ReadOnlySpan<uint> open, Span<uint> threes)
    {
        Span<int> first = stackalloc int[NeighbourTable.MostTrunks];
        for (var rest = kept; rest != 0; rest &= rest - 1)
        {
            var trunk = BitOperations.TrailingZeroCount(rest);
            first[trunk] = FirstOpen(trunk, open[trunk]);
        }

        var found = 0;
        for (var rest = kept; rest != 0; rest &= rest - 1)
        {
            var trunk = BitOperations.TrailingZeroCount(rest);
            if (first[trunk] >= 0 && !IsBeaten(trunk, first))
            {
                threes[found++] = mostAlikeFirst[trunk][first[trunk]].Three;
            }
        }

        return found;
    }

    /// <summary>Whether one of the two others has the same three, and more alike.</summary>
    private bool IsBeaten(int trunk, ReadOnlySpan<int> first)
    {
        var (_, ends, three, gap) = mostAlikeFirst[trunk][first[trunk]];
        for (var rest = ends; rest != 0; rest &= rest - 1)
        {
            var other = BitOperations.TrailingZeroCount(rest);
            if (first[other] >= 0 && mostAlikeFirst[other][first[other]] is var rival && rival.Three == three
                && (rival.Gap.Difference < gap.Difference || (rival.Gap.Difference == gap.Difference && other < trunk)))
            {
                return true;
            }
        }

        return false;
    }

    private int Index(int trunk, int one, int other) => (((trunk * count) + one) * count) + other;

    private static EvenGap? Compare(StandingTrunks trunks, int trunk, int first, int second, double percent)
    {
        // The nearer comes first, as among neighbours; of equals the one that comes first.
        var isFirstNearer = trunks.Square(trunk, first) <= trunks.Square(trunk, second);
        return EvenGaps.Compare(trunks, trunk, isFirstNearer ? first : second, isFirstNearer ? second : first, percent);
    }
}
