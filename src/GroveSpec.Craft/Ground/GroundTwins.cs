using System.Numerics;
using GroveSpec.Craft.Composition;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Ground;

/// <summary>Neighbours of one size in a stand with a newcomer, as <see cref="Twins"/> finds them.</summary>
public sealed class GroundTwins
{
    private readonly GroundStand stand;
    private readonly ulong[] alike;
    private readonly ulong[] groups;
    private readonly int[] pairs;

    /// <summary>Lays out the tables.</summary>
    /// <param name="stand">The trunks.</param>
    /// <param name="sizes">The size of each, the newcomer's among them; null where it is not known.</param>
    /// <param name="percent">The limit in percent of the larger.</param>
    public GroundTwins(GroundStand stand, IReadOnlyList<Length?> sizes, double percent)
    {
        ArgumentNullException.ThrowIfNull(stand);
        ArgumentNullException.ThrowIfNull(sizes);
        this.stand = stand;
        (alike, groups) = (new ulong[stand.Count], new ulong[stand.Count]);
        for (var one = 0; one < stand.Count; one++)
        {
            for (var other = 0; other < stand.Count; other++)
            {
                alike[one] |= one != other && sizes[one] is { } size && sizes[other] is { } otherSize && Likeness.IsCloserThan(size, otherSize, percent) ? 1UL << other : 0;
            }
        }
        pairs = [.. Enumerable.Range(0, stand.OldPairs.Length).Where(pair => IsAlike(stand, pair))];
    }

    /// <summary>Whether the groups are those that are there without the newcomer; after <see cref="GroundStand.Connect"/>.</summary>
    public bool AreUnchanged
    {
        get
        {
            foreach (var pair in pairs)
            {
                if (stand.IsAlive[pair] != stand.IsAliveWithout[pair])
                {
                    return false;
                }
            }

            return (OfNewcomer & stand.OwnNeighbours) == 0;
        }
    }

    /// <summary>The trunks that are as large as the newcomer, neighbours or not, as a set.</summary>
    public ulong OfNewcomer => alike[stand.Newcomer];

    /// <summary>Finds the groups; after <see cref="GroundStand.Connect"/>.</summary>
    /// <param name="found">Takes the trunks of each, as a set; as long as there are trunks.</param>
    /// <returns>How many were found.</returns>
    public int Find(Span<ulong> found)
    {
        for (var trunk = 0; trunk < groups.Length; trunk++)
        {
            groups[trunk] = 1UL << trunk;
        }

        for (var trunk = 0; trunk < groups.Length; trunk++)
        {
            if (alike[trunk] == 0)
            {
                continue;
            }

            foreach (var other in stand.NeighboursOf(trunk))
            {
                if (other > trunk && (alike[trunk] >> other & 1) != 0 && (groups[trunk] >> other & 1) == 0)
                {
                    Join(groups[trunk] | groups[other]);
                }
            }
        }

        var count = 0;
        for (var trunk = 0; trunk < groups.Length; trunk++)
        {
            if (BitOperations.TrailingZeroCount(groups[trunk]) == trunk && BitOperations.PopCount(groups[trunk]) > 1)
            {
                found[count++] = groups[trunk];
            }
        }

        return count;
    }

    private bool IsAlike(GroundStand stand, int pair) => (alike[stand.OldPairs[pair].First] >> stand.OldPairs[pair].Second & 1) != 0;

    private void Join(ulong group)
    {
        for (var rest = group; rest != 0; rest &= rest - 1)
        {
            groups[BitOperations.TrailingZeroCount(rest)] = group;
        }
    }
}
