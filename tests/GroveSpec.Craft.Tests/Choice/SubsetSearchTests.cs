using System.Numerics;
using GroveSpec.Craft.Choice;
using Xunit;

namespace GroveSpec.Craft.Tests.Choice;

public sealed class SubsetSearchTests
{
    [Fact]
    public void The_best_few_sets_are_the_best_of_all_whatever_is_fixed_and_however_the_work_is_done()
    {
        for (var seed = 0; seed < 300; seed++)
        {
            var random = new Random(seed);
            var score = new PairCosts(random, random.Next(2, 12));
            var all = (1u << score.Count) - 1;
            var fixedIn = (uint)random.Next((int)all) & (uint)random.Next((int)all) & (uint)random.Next((int)all);
            var allowed = all & (fixedIn | (uint)random.Next((int)all) | (uint)random.Next((int)all));
            var least = random.Next(1, score.Count + 1);
            var sizes = (Least: least, Most: random.Next(least, score.Count + 1));
            var number = random.Next(1, 5);
            var sets = Enumerable.Range(1, (int)all).Select(set => (uint)set)
                .Where(set => (fixedIn & ~set) == 0 && (set & ~allowed) == 0 && BitOperations.PopCount(set) >= sizes.Least && BitOperations.PopCount(set) <= sizes.Most)
                .ToList();
            var expected = Expected(sets, score, number);
            var guesses = sets.Where(_ => random.Next(4) == 0).Take(3).ToList();
            Assert.Equal(expected, new SubsetSearch([score], fixedIn, allowed, OneAfterAnother, TestContext.Current.CancellationToken).Find(sizes, number, AreNear, []));
            Assert.Equal(expected, new SubsetSearch([score], fixedIn, allowed, OneAfterAnother, TestContext.Current.CancellationToken).Find(sizes, number, AreNear, guesses));
            Assert.Equal(expected, new SubsetSearch([score, score, score], fixedIn, allowed, AtOnce, TestContext.Current.CancellationToken).Find(sizes, number, AreNear, guesses));
        }
    }

    [Fact]
    public void A_search_large_enough_to_be_split_finds_the_same_however_the_work_is_done()
    {
        for (var seed = 0; seed < 20; seed++)
        {
            var score = new PairCosts(new Random(seed), 16);
            var alone = new SubsetSearch([score], 0, 0xffff, OneAfterAnother, TestContext.Current.CancellationToken).Find((8, 9), 3, AreNear, []);
            Assert.Equal(3, alone.Length);
            Assert.Equal(alone, new SubsetSearch([score, score, score], 0, 0xffff, OneAfterAnother, TestContext.Current.CancellationToken).Find((8, 9), 3, AreNear, []));
            Assert.Equal(alone, new SubsetSearch([score, score, score], 0, 0xffff, AtOnce, TestContext.Current.CancellationToken).Find((8, 9), 3, AreNear, []));
        }
    }

    [Fact]
    public void Of_sets_that_are_all_alike_those_come_first_that_hold_the_first_things_and_none_is_looked_at_twice()
    {
        var search = new SubsetSearch([new PairCosts(null, 18)], 0, (1u << 18) - 1, OneAfterAnother, TestContext.Current.CancellationToken);
        Assert.Equal([(0b11_1111_1111u, 0.0), (0b1100_1111_1111u, 0.0), (0b11_0000_1111_1111u, 0.0)], search.Find((10, 10), 3, AreNear, []));
        Assert.InRange(search.Steps, 43_758, 3 * 43_758);
    }

    [Fact]
    public void A_search_can_be_ended()
    {
        using var ended = new CancellationTokenSource();
        ended.Cancel();
        Assert.Throws<OperationCanceledException>(() => new SubsetSearch([new PairCosts(new Random(1), 22)], 0, (1u << 22) - 1, OneAfterAnother, ended.Token).Find((11, 11), 1, AreNear, []));
    }

    private static bool AreNear(uint one, uint other) => BitOperations.PopCount(one & ~other) <= 1 && BitOperations.PopCount(other & ~one) <= 1;

    private static List<(uint Kept, double Score)> Expected(List<uint> sets, PairCosts score, int number)
    {
        var found = new List<(uint Kept, double Score)>();
        while (found.Count < number && sets.Where(set => !found.Any(one => AreNear(one.Kept, set))).OrderBy(score.Cost).ThenBy(Backwards).Select(set => (uint?)set).FirstOrDefault() is { } next)
        {
            found.Add((next, score.Cost(next)));
        }

        return found;

        // The set whose first thing the other lacks comes first: with the first thing as the highest bit, the higher number.
        static long Backwards(uint set) => -Enumerable.Range(0, 32).Sum(place => (set >> place & 1L) << (31 - place));
    }

    private static void OneAfterAnother(int count, Action<int> work)
    {
        for (var number = 0; number < count; number++)
        {
            work(number);
        }
    }

    private static void AtOnce(int count, Action<int> work) => Parallel.For(0, count, work);

    /// <summary>Whole costs for every thing and every two, so that there are many ties; or none at all.</summary>
    private sealed class PairCosts : ISubsetScore
    {
        private readonly int[] costs;

        public PairCosts(Random? random, int count)
        {
            Count = count;
            costs = [.. Enumerable.Range(0, count * count).Select(_ => random?.Next(4) ?? 0)];
            Parts = [(0, uint.MaxValue, Enumerable.Range(0, count).ToArray())];
        }

        public int Count { get; }

        public IReadOnlyList<(uint Required, uint Allowed, IReadOnlyList<int> Order)> Parts { get; }

        public double Cost(uint set)
        {
            var sum = 0;
            for (var first = 0; first < Count; first++)
            {
                for (var second = first; second < Count; second++)
                {
                    sum += (set >> first & set >> second & 1) != 0 ? costs[(first * Count) + second] : 0;
                }
            }

            return sum;
        }

        public double Of(uint kept, double enough) => Cost(kept);

        public double Bound(uint kept, uint possible, int size, double enough) => Cost(kept);

        public double Among(int part, uint some, uint possible, int size) => Cost(some);
    }
}
