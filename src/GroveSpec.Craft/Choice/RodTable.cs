using System.Numerics;
using GroveSpec.Craft.Composition;

namespace GroveSpec.Craft.Choice;

/// <summary>Through which three of a stool one straight rod could pass, whichever of its trunks stand.</summary>
public sealed class RodTable
{
    private readonly int count;
    private readonly uint[] beyond;
    private readonly uint[] ends;
    private readonly uint middles;

    /// <summary>Looks at every three, as <see cref="RodSearch.Find"/> does under seven trunks; from seven on both ends must be neighbours of the middle besides.</summary>
    /// <param name="trunks">The trunks, at most <see cref="NeighbourTable.MostTrunks"/>.</param>
    /// <param name="limit">The largest closeness that counts, a bare ratio.</param>
    /// <param name="counts">Whether three trunks, as a set, are wanted.</param>
    public RodTable(StandingTrunks trunks, double limit, Func<uint, bool> counts)
    {
        ArgumentNullException.ThrowIfNull(trunks);
        ArgumentNullException.ThrowIfNull(counts);
        count = trunks.Count;
        (beyond, ends) = (new uint[count * count], new uint[count]);
        foreach (var (end, middle, otherEnd, _) in RodSearch.OfAll(trunks, limit))
        {
            if (counts((1u << end) | (1u << middle) | (1u << otherEnd)))
            {
                beyond[(middle * count) + Math.Min(end, otherEnd)] |= 1u << Math.Max(end, otherEnd);
                ends[middle] |= 1u << Math.Min(end, otherEnd);
                middles |= 1u << middle;
            }
        }
    }

    /// <summary>The other ends of rods through a middle from one of its ends, so that each rod is told of one of its ends alone.</summary>
    /// <param name="middle">The trunk in the middle.</param>
    /// <param name="end">A trunk at an end.</param>
    /// <returns>The trunks that come after that one, as a set.</returns>
    public uint Beyond(int middle, int end) => beyond[(middle * count) + end];

    /// <summary>How many rods there are.</summary>
    /// <param name="kept">The trunks that stand.</param>
    /// <param name="near">For each of them the trunks that may be the ends of a rod through it.</param>
    /// <returns>The number.</returns>
    public int Number(uint kept, ReadOnlySpan<uint> near)
    {
        var number = 0;
        for (var rest = kept & middles; rest != 0; rest &= rest - 1)
        {
            var middle = BitOperations.TrailingZeroCount(rest);
            for (var others = near[middle] & ends[middle]; others != 0; others &= others - 1)
            {
                number += BitOperations.PopCount(beyond[(middle * count) + BitOperations.TrailingZeroCount(others)] & near[middle]);
            }
        }

        return number;
    }
}
