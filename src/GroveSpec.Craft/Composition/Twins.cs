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
    /// <returns>The groups, each with its trunks in the order of the file and the smallest difference between two neighbours in it, in percent.</returns>
    public static ImmutableArray<(ImmutableArray<int> Trunks, double Difference)> Find(StandingTrunks trunks, Func<TrunkState, Length?> size, double percent)
    {
        var sizes = new Length?[trunks.Count];
        var parent = new int[trunks.Count];
        for (var index = 0; index < trunks.Count; index++)
        {
            sizes[index] = size(trunks.Trunks[index]);
            parent[index] = index;
        }

        var closest = new Dictionary<int, double>();
        var alike = new List<(int First, int Second, double Difference)>();
        foreach (var (first, second) in trunks.NeighbourPairs())
        {
            if (sizes[first] is { } one && sizes[second] is { } other && Likeness.IsCloserThan(one, other, percent))
            {
                alike.Add((first, second, Likeness.DifferenceInPercent(one, other)));
                parent[Root(parent, second)] = Root(parent, first);
            }
        }

        var members = new SortedDictionary<int, SortedSet<int>>();
        foreach (var (first, second, difference) in alike)
        {
            var root = Root(parent, first);
            closest[root] = Math.Min(difference, closest.GetValueOrDefault(root, double.MaxValue));
            if (!members.TryGetValue(root, out var group))
            {
                members.Add(root, group = []);
            }

            group.Add(first);
            group.Add(second);
        }

        return [.. members.Select(group => (group.Value.ToImmutableArray(), closest[group.Key])).OrderBy(group => group.Item1[0])];
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
