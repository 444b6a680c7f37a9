using System.Numerics;

namespace GroveSpec.Craft.Choice;

/// <summary>How various one size would be, thickness or height, if only some of a stool stood. Evenness is that of <see cref="ChoiceMeasures"/>.</summary>
/// <param name="sizes">For each trunk its size in millimetres, null where it is not known: such a trunk counts for nothing.</param>
internal sealed class SizeVariety(double?[] sizes)
{
    private readonly int[] smallestFirst = [.. Enumerable.Range(0, sizes.Length).Where(trunk => sizes[trunk] is not null).OrderBy(trunk => sizes[trunk])];
    private readonly uint known = sizes.Select((size, trunk) => size is null ? 0 : 1u << trunk).Aggregate(0u, (set, trunk) => set | trunk);

    /// <summary>How even the sizes are.</summary>
    /// <param name="kept">The trunks that stand.</param>
    /// <returns>From above 0 to 1; 1 where nothing is known.</returns>
    public double Evenness(uint kept)
    {
        var (sum, squares) = Sums(kept);
        return squares > 0 ? sum * sum / (BitOperations.PopCount(kept & known) * squares) : 1;
    }

    /// <summary>
    /// What the evenness does not fall below, whatever else comes to stand. As a function of any one of the values evenness first
    /// rises and then falls, so it is least where each of those to come is as small or as large as can be: some of the smallest
    /// with some of the largest. Any number of them may be known that there can be.
    /// </summary>
    /// <param name="kept">The trunks that stand in any case.</param>
    /// <param name="possible">Those and all that may stand besides.</param>
    /// <param name="size">How many stand in the end.</param>
    /// <returns>The bound.</returns>
    public double Least(uint kept, uint possible, int size)
    {
        if ((possible & known) == 0)
        {
            return 1;
        }

        var (keptSum, keptSquares) = Sums(kept);
        var (keptKnown, open) = (BitOperations.PopCount(kept & known), possible & ~kept);
        Span<double> sums = stackalloc double[NeighbourTable.MostTrunks + 1], squares = stackalloc double[NeighbourTable.MostTrunks + 1];
        var last = 0;
        foreach (var trunk in (open & known) == 0 ? [] : smallestFirst)
        {
            if ((open >> trunk & 1) != 0)
            {
                var value = sizes[trunk].GetValueOrDefault();
                (sums[last + 1], squares[last + 1]) = (sums[last] + value, squares[last] + (value * value));
                last++;
            }
        }

        var (missing, found) = (size - BitOperations.PopCount(kept), 1.0);
        for (var more = Math.Max(0, missing - BitOperations.PopCount(open & ~known)); more <= Math.Min(missing, last); more++)
        {
            for (var small = 0; small <= more; small++)
            {
                var sum = keptSum + sums[small] + sums[last] - sums[last - more + small];
                var square = keptSquares + squares[small] + squares[last] - squares[last - more + small];
                found = square > 0 ? Math.Min(found, sum * sum / ((keptKnown + more) * square)) : found;
            }
        }

        // A hair less, since another order of the same sum may round another way.
        return found * (1 - 1e-9);
    }

    private (double Sum, double Squares) Sums(uint kept)
    {
        double sum = 0, squares = 0;
        for (var rest = kept & known; rest != 0; rest &= rest - 1)
        {
            var value = sizes[BitOperations.TrailingZeroCount(rest)].GetValueOrDefault();
            sum += value;
            squares += value * value;
        }

        return (sum, squares);
    }
}
