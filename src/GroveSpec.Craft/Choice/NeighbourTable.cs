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
    private readonly double[] squares;
    private readonly double[] gaps;
    private readonly int[] nearestFirst;

    /// <summary>Looks at every gap once.</summary>
    /// <param name="trunks">The trunks, at most <see cref="MostTrunks"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are more.</exception>
    public NeighbourTable(StandingTrunks trunks)
    {
        ArgumentNullException.ThrowIfNull(trunks);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(trunks.Count, MostTrunks, nameof(trunks));
        count = trunks.Count;
        (parting, entering, squares, gaps, nearestFirst) = (new uint[count * count], new uint[count * count], new double[count * count], new double[count * count], new int[count * count]);
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
    /// <param name="size">How many stand in the end.</param>
    /// <param name="neighbours">Takes the neighbours of each kept trunk at its place; others are left as they are.</param>
    /// <param name="open">Takes those of them to which the gap is sure to be open.</param>
    public void Fill(uint kept, uint possible, int size, Span<uint> neighbours, Span<uint> open)
    {
        var reach = size < StandingTrunks.ReachMattersFrom ? double.PositiveInfinity : 6.25 * LeastMedianSquare(possible, size);
        for (var rest = kept; rest != 0; rest &= rest - 1)
        {
            neighbours[BitOperations.TrailingZeroCount(rest)] = 0;
            open[BitOperations.TrailingZeroCount(rest)] = 0;
        }

        for (var rest = kept; rest != 0; rest &= rest - 1)
        {
            var first = BitOperations.TrailingZeroCount(rest);
            for (var others = rest & (rest - 1); others != 0; others &= others - 1)
            {
                var second = BitOperations.TrailingZeroCount(others);
                var place = (first * count) + second;
                if ((parting[place] & possible) == 0 && StandingTrunks.IsWithin(squares[place], reach))
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
    /// A distance to the nearest cannot be shorter in a part of the possible than in all of it, so the median of any part of a
    /// size is at least the value at that place among all.
    /// </summary>
    private double LeastMedianSquare(uint possible, int size)
    {
        Span<double> nearest = stackalloc double[MostTrunks];
        var found = 0;
        for (var rest = possible; rest != 0; rest &= rest - 1)
        {
            var trunk = BitOperations.TrailingZeroCount(rest);
            var place = trunk * count;
            var end = place + count;
            while (place < end && ((possible & ~(1u << trunk)) >> nearestFirst[place] & 1) == 0)
            {
                place++;
            }

            // Straight into its place among those found, since they are few.
            var square = place < end ? squares[(trunk * count) + nearestFirst[place]] : 0;
            var slot = found++;
            while (slot > 0 && nearest[slot - 1] > square)
            {
                nearest[slot] = nearest[slot - 1];
                slot--;
            }

            nearest[slot] = square;
        }

        return found == 0 ? 0 : nearest[Math.Min((size - 1) / 2, found - 1)];
    }
}
