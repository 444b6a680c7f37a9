using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Composition;

/// <summary>Finds neighbours of the same size.</summary>
public static class Twins
{
    /// <summary>Groups of trunks in which each is a neighbour of another of its own size.</summary>
    /// <param name="trunks">The trunks.</param>
    /// <param name="size">The size that is compared, null where it is not known.</param>
    /// <param name="percent">The limit, in percent of the larger; sizes that differ by just that much are let be.</param>
    /// <returns>The groups, each with its trunks in their order and the smallest difference between two neighbours in it, in percent.</returns>
    public static ImmutableArray<(ImmutableArray<int> Trunks, double Difference)> Find(StandingTrunks trunks, Func<TrunkState, Length?> size, double percent)
    {
        var sizes = new Length?[trunks.Count];
        var parent = new int[trunks.Count];
        for (var index = 0; index < trunks.Count; index++)
        {
            sizes[index] = size(trunks.Trunks[index]);
            parent[index] = index;
        }

        var alike = new List<(int First, double Difference)>();
        foreach (var (first, second) in trunks.NeighbourPairs)
        {
            if (sizes[first] is { } one && sizes[second] is { } other && Likeness.IsCloserThan(one, other, percent))
            {
                alike.Add((first, Likeness.DifferenceInPercent(one, other)));
                parent[Root(parent, second)] = Root(parent, first);
            }
        }

        if (alike.Count == 0)
        {
            return [];
        }

        var closest = new double[trunks.Count];
        Array.Fill(closest, double.MaxValue);
        foreach (var (first, difference) in alike)
        {
            var root = Root(parent, first);
            closest[root] = Math.Min(difference, closest[root]);
        }

        // One that has no twin is a root of itself alone, whose difference was never set.
        var groups = new ImmutableArray<int>.Builder?[trunks.Count];
        var inOrder = new List<int>();
        for (var index = 0; index < trunks.Count; index++)
        {
            var root = Root(parent, index);
            if (closest[root] == double.MaxValue)
            {
                continue;
            }

            if (groups[root] is null)
            {
                groups[root] = ImmutableArray.CreateBuilder<int>(2);
                inOrder.Add(root);
            }

            groups[root]!.Add(index);
        }

        var found = ImmutableArray.CreateBuilder<(ImmutableArray<int>, double)>(inOrder.Count);
        foreach (var root in inOrder)
        {
            found.Add((groups[root]!.DrainToImmutable(), closest[root]));
        }

        return found.MoveToImmutable();
    }

    private static int Root(int[] parent, int index)
    {
        while (parent[index] != index)
        {
            parent[index] = parent[parent[index]];
            index = parent[index];
        }

        return index;
    }
}
