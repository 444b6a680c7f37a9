using System.Numerics;
using GroveSpec.Craft.Composition;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Choice;

/// <summary>Which neighbours of one size there would be if only some of a stool stood: what <see cref="Twins.Find"/> finds among those.</summary>
public sealed class TwinTable
{
    private readonly uint[] alike;
    private readonly uint any;

    /// <summary>Compares every two trunks.</summary>
    /// <param name="trunks">The trunks, at most <see cref="NeighbourTable.MostTrunks"/>.</param>
    /// <param name="size">The size that is compared, null where it is not known.</param>
    /// <param name="percent">The limit, as for <see cref="Twins.Find"/>.</param>
    public TwinTable(StandingTrunks trunks, Func<TrunkState, Length?> size, double percent)
    {
        ArgumentNullException.ThrowIfNull(trunks);
        ArgumentNullException.ThrowIfNull(size);
        alike = new uint[trunks.Count];
        for (var first = 0; first < trunks.Count; first++)
        {
            for (var second = 0; second < trunks.Count; second++)
            {
                if (first != second && size(trunks.Trunks[first]) is { } one && size(trunks.Trunks[second]) is { } other && Likeness.IsCloserThan(one, other, percent))
                {
                    alike[first] |= 1u << second;
                    any |= 1u << first;
                }
            }
        }
    }

    /// <summary>The groups of neighbours of one size among those that stand.</summary>
    /// <param name="kept">The trunks that stand.</param>
    /// <param name="neighbours">For each of them its neighbours.</param>
    /// <param name="groups">Takes each group, as a set; room for half as many as stand.</param>
    /// <returns>How many there are.</returns>
    public int Find(uint kept, ReadOnlySpan<uint> neighbours, Span<uint> groups)
    {
        var found = 0;
        var seen = 0u;
        for (var rest = kept & any; rest != 0; rest &= rest - 1)
        {
            var first = BitOperations.TrailingZeroCount(rest);
            if ((seen >> first & 1) != 0 || (alike[first] & neighbours[first]) == 0)
            {
                continue;
            }

            var group = 1u << first;
            for (var fresh = group; fresh != 0;)
            {
                var trunk = BitOperations.TrailingZeroCount(fresh);
                fresh &= fresh - 1;
                var more = alike[trunk] & neighbours[trunk] & ~group;
                group |= more;
                fresh |= more;
            }

            seen |= group;
            groups[found++] = group;
        }

        return found;
    }

    /// <summary>How many groups of neighbours of one size there are at least, whatever else of what may stand comes to stand.</summary>
    /// <param name="kept">The trunks that stand in any case.</param>
    /// <param name="possible">Those and all that may stand besides.</param>
    /// <param name="neighbours">For each of those kept the neighbours it is sure to have.</param>
    /// <param name="table">Which trunks may be neighbours.</param>
    /// <returns>The number: groups that may grow together count as one.</returns>
    public int LeastGroups(uint kept, uint possible, ReadOnlySpan<uint> neighbours, NeighbourTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        var found = 0;
        var seen = 0u;
        for (var rest = kept & any; rest != 0; rest &= rest - 1)
        {
            var first = BitOperations.TrailingZeroCount(rest);
            if ((seen >> first & 1) != 0 || (alike[first] & neighbours[first]) == 0)
            {
                continue;
            }

            found++;
            seen |= 1u << first;
            for (var fresh = 1u << first; fresh != 0;)
            {
                var trunk = BitOperations.TrailingZeroCount(fresh);
                fresh &= fresh - 1;
                for (var others = alike[trunk] & possible & ~seen; others != 0; others &= others - 1)
                {
                    var other = BitOperations.TrailingZeroCount(others);
                    if (table.MayBeNeighbours(trunk, other, kept))
                    {
                        seen |= 1u << other;
                        fresh |= 1u << other;
                    }
                }
            }
        }

        return found;
    }
}
