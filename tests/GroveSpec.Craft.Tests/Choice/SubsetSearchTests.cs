using System.Numerics;
using GroveSpec.Craft.Choice;
using Xunit;

namespace GroveSpec.Craft.Tests.Choice;

public sealed class SubsetSearchTests
{
    [Fact]
    public void The_best_set_is_the_best_of_all_whatever_is_fixed_and_whatever_does_not_count()
    {
        for (var seed = 0; seed < 300; seed++)
        {
            var random = new Random(seed);
            var score = new PairCosts(random, random.Next(2, 12));
            var all = (1u << score.Count) - 1;
            var fixedIn = (uint)random.Next((int)all) & (uint)random.Next((int)all) & (uint)random.Next((int)all);
            var allowed = all & (fixedIn | (uint)random.Next((int)all) | (uint)random.Next((int)all));
            var least = random.Next(1, score.Count + 1);
            var most = random.Next(least, score.Count + 1);
            var odd = random.Next(3) == 0;
            var sets = Enumerable.Range(1, (int)all).Select(set => (uint)set)
                .Where(set => (fixedIn & ~set) == 0 && (set & ~allowed) == 0 && BitOperations.PopCount(set) >= least && BitOperations.PopCount(set) <= most && IsWanted(set))
                .ToList();
            var found = new SubsetSearch(score, fixedIn, allowed, TestContext.Current.CancellationToken).Find((least, most), IsWanted, 0);
            Assert.Equal(sets.Count > 0, found is not null);
            if (found is var (kept, cost))
            {
                Assert.Contains(kept, sets);
                Assert.Equal(sets.Min(score.Cost), cost, 1e-9);
                Assert.Equal(found, new SubsetSearch(score, fixedIn, allowed, TestContext.Current.CancellationToken).Find((least, most), IsWanted, sets[random.Next(sets.Count)]));
            }

            bool IsWanted(uint set) => !odd || set % 3 != 0;
        }
    }

    [Fact]
    public void A_search_can_be_ended()
    {
        using var ended = new CancellationTokenSource();
        ended.Cancel();
        Assert.Throws<OperationCanceledException>(() => new SubsetSearch(new PairCosts(new Random(1), 22), 0, (1u << 22) - 1, ended.Token).Find((11, 11), _ => false, 0));
    }

    /// <summary>Whole costs for every thing and every two, so that there are many ties.</summary>
    private sealed class PairCosts : ISubsetScore
    {
        private readonly int[] costs;

        public PairCosts(Random random, int count)
        {
            Count = count;
            costs = [.. Enumerable.Range(0, count * count).Select(_ => random.Next(4))];
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
