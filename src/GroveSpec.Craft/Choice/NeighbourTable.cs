using System.Numerics;
using GroveSpec.Craft.Composition;

namespace GroveSpec.Craft.Choice;

/// <summary>
/// Which trunks would be neighbours if only some of a stool stood: the same as <see cref="StandingTrunks"/> says of those, asked
/// of very many choices. A choice is a set of bits, bit n for the trunk at place n of <see cref="StandingTrunks.Trunks"/>.
/// </summary>
public sealed class NeighbourTable
{
    /// <summary>The most trunks there can be: a set has to fit into an integer.</summary>
    public const int MostTrunks = 32;

    private readonly int count;
    private readonly uint[] parting;
    private readonly uint[] entering;
    private readonly double[] gaps;
    private readonly int[] nearestFirst;

    // Gaps in the order of their lengths: the place of each, and for each the trunks that are within reach of each trunk where it is the median.
    private readonly int[] ranks;
    private readonly uint[] within;

    /// <summary>Looks at every gap once.</summary>
    /// <param name="trunks">The trunks, at most <see cref="MostTrunks"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are more.</exception>
    public NeighbourTable(StandingTrunks trunks)
    {
        ArgumentNullException.ThrowIfNull(trunks);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(trunks.Count, MostTrunks, nameof(trunks));
        count = trunks.Count;
        var squares = new double[count * count];
        (parting, entering, gaps, nearestFirst, ranks) = (new uint[count * count], new uint[count * count], new double[count * count], new int[count * count], new int[count * count]);
        for (var first = 0; first < count; first++)
        {
            var order = nearestFirst.AsSpan(first * count, count);
            for (var second = 0; second < count; second++)
            {
                order[second] = second;
                squares[(first * count) + second] = first == second ? double.PositiveInfinity : trunks.RoundedSquare(first, second);
                gaps[(first * count) + second] = Math.Sqrt(squares[(first * count) + second]) / Model.Quantities.Length.NanometresPerMillimetre;
                for (var third = 0; third < count; third++)
                {
                    if (third != first && third != second && first != second)
                    {
                        parting[(first * count) + second] |= trunks.Parts(third, first, second) ? 1u << third : 0;
                        entering[(first * count) + second] |= trunks.Enters(third, first, second) ? 1u << third : 0;
                    }
                }
            }

            squares.AsSpan(first * count, count).ToArray().AsSpan().Sort(order);
        }

        within = Within(squares);
    }

    /// <summary>The distance between two trunks.</summary>
    /// <param name="first">One trunk.</param>
    /// <param name="second">Another.</param>
    /// <returns>In millimetres, from centre to centre.</returns>
    public double GapInMillimetres(int first, int second) => gaps[(first * count) + second];

    /// <summary>Whether two trunks may be neighbours, whatever else comes to stand.</summary>
    /// <param name="first">One trunk.</param>
    /// <param name="second">Another.</param>
    /// <param name="kept">The trunks that stand in any case.</param>
    /// <returns>False when one of those parts them.</returns>
    public bool MayBeNeighbours(int first, int second, uint kept) => (parting[(first * count) + second] & kept) == 0;

    /// <summary>
    /// The neighbours that trunks are sure to be, whatever else of what may stand comes to stand. With nothing open, the kept
    /// and the possible being the same, these are the neighbours themselves.
    /// </summary>
    /// <param name="kept">The trunks that stand.</param>
    /// <param name="possible">Those and all that may stand besides.</param>
    /// <param name="reach">As <see cref="ReachOf"/> says of those.</param>
    /// <param name="neighbours">Takes the neighbours of each kept trunk at its place; others are left as they are.</param>
    /// <param name="open">Takes those of them to which the gap is sure to be open.</param>
    public void Fill(uint kept, uint possible, int reach, Span<uint> neighbours, Span<uint> open)
    {
        for (var rest = kept; rest != 0; rest &= rest - 1)
        {
            neighbours[BitOperations.TrailingZeroCount(rest)] = 0;
            open[BitOperations.TrailingZeroCount(rest)] = 0;
        }

        var reached = within.AsSpan(reach * count, count);
        for (var rest = kept; rest != 0; rest &= rest - 1)
        {
            var first = BitOperations.TrailingZeroCount(rest);
            for (var others = rest & (rest - 1) & reached[first]; others != 0; others &= others - 1)
            {
                var second = BitOperations.TrailingZeroCount(others);
                var place = (first * count) + second;
                if ((parting[place] & possible) == 0)
                {
                    neighbours[first] |= 1u << second;
                    neighbours[second] |= 1u << first;
                    if ((entering[place] & possible) == 0)
                    {
                        open[first] |= 1u << second;
                        open[second] |= 1u << first;
                    }
                }
            }
        }
    }

    /// <summary>
    /// How far neighbours are sure to reach. A distance to the nearest cannot be shorter in a part of the possible than in all of
    /// it, so the median of any part of a size is at least the value at that place among all.
    /// </summary>
    /// <param name="possible">All that may stand.</param>
    /// <param name="size">How many stand in the end.</param>
    /// <returns>The reach, as <see cref="Fill"/> takes it.</returns>
    public int ReachOf(uint possible, int size)
    {
        if (size < StandingTrunks.ReachMattersFrom || (possible & (possible - 1)) == 0)
        {
            return count * (count - 1) / 2;
        }

        // A bit for each end of each gap, in the order of their lengths: so there is nothing to sort.
        Span<ulong> nearest = stackalloc ulong[MostTrunks * (MostTrunks - 1) / 64 + 1];
        for (var rest = possible; rest != 0; rest &= rest - 1)
        {
            var trunk = BitOperations.TrailingZeroCount(rest);
            var others = possible & ~(1u << trunk);
            var place = trunk * count;
            while ((others >> nearestFirst[place] & 1) == 0)
            {
                place++;
            }

            var other = nearestFirst[place];
            var bit = (2 * ranks[(trunk * count) + other]) + (trunk < other ? 0 : 1);
            nearest[bit >> 6] |= 1ul << bit;
        }

        var before = Math.Min((size - 1) / 2, BitOperations.PopCount(possible) - 1);
        var word = 0;
        for (int found; (found = BitOperations.PopCount(nearest[word])) <= before; word++)
        {
            before -= found;
        }

        var bits = nearest[word];
        for (; before > 0; before--)
        {
            bits &= bits - 1;
        }

        return ((word << 6) + BitOperations.TrailingZeroCount(bits)) / 2;
    }

    /// <summary>Ranks the gaps, and tells for each the trunks within reach of each where it is the median; last, all that are within any reach.</summary>
    private uint[] Within(double[] squares)
    {
        (int First, int Second)[] pairs = [.. Enumerable.Range(0, count).SelectMany(first => Enumerable.Range(first + 1, count - first - 1).Select(second => (first, second))).OrderBy(pair => squares[(pair.first * count) + pair.second])];
        var reached = new uint[(pairs.Length + 1) * count];
        Array.Fill(reached, uint.MaxValue, pairs.Length * count, count);
        for (var rank = 0; rank < pairs.Length; rank++)
        {
            var (one, other) = pairs[rank];
            ranks[(one * count) + other] = ranks[(other * count) + one] = rank;
            var reach = 6.25 * squares[(one * count) + other];
            for (var first = 0; first < count; first++)
            {
                for (var second = 0; second < count; second++)
                {
                    reached[(rank * count) + first] |= first != second && StandingTrunks.IsWithin(squares[(first * count) + second], reach) ? 1u << second : 0;
                }
            }
        }

        return reached;
    }
}
