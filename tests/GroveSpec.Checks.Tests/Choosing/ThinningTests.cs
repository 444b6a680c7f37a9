using System.Numerics;
using GroveSpec.Checks.Choosing;
using GroveSpec.Model.States;
using Xunit;

namespace GroveSpec.Checks.Tests.Choosing;

public sealed class ThinningTests
{
    [Fact]
    public void The_best_choice_is_the_best_of_all_on_a_thousand_stools_of_up_to_fourteen_trunks()
    {
        for (var seed = 0; seed < 1000; seed++)
        {
            var random = new Random(seed);
            var count = seed % 10 == 0 ? 14 : random.Next(3, 15);
            var context = ThinningScoreTests.ContextOf(StoolSource.Of(seed, count));
            var names = context.Standing.Trunks.Select(trunk => trunk.Name).ToArray();
            var unplaced = context.State.Trunks.Count(trunk => trunk is { Presence: Presence.Standing, Place: null });
            var least = random.Next(1, count);
            var most = random.Next(4) == 0 ? random.Next(least, count) : least;
            var with = random.Next(3) == 0 ? 1u << random.Next(count) : 0;
            var without = random.Next(3) == 0 ? (1u << random.Next(count)) & ~with : 0;
            var wish = new ThinningWish(least + unplaced, most + unplaced, Names(with, names), Names(without, names));
            var answer = Thinning.Choose(context, wish, cancellation: TestContext.Current.CancellationToken);
            var score = new ThinningScore(ThinnedContext.Of(context, trunk => wish.Without.Contains(trunk.Name)));
            var left = names.Where(name => !wish.Without.Contains(name)).ToArray();
            var scores = Enumerable.Range(1, (1 << count) - 1)
                .Select(kept => (uint)kept)
                .Where(kept => BitOperations.PopCount(kept) >= least && BitOperations.PopCount(kept) <= most && (with & ~kept) == 0 && (kept & without) == 0)
                .Select(kept => (Kept: kept, Score: score.Of(Set(names.Where((_, place) => (kept >> place & 1) != 0), left), double.PositiveInfinity)))
                .ToList();
            var leads = new List<uint>();
            foreach (var suggestion in answer.Suggestions)
            {
                var kept = Set(suggestion.Stand.Kept, names);
                Assert.Equal(scores.Where(one => !leads.Any(lead => Thinning.AreNear(lead, one.Kept))).Min(one => one.Score), suggestion.Stand.Parts.Score, 1e-8);
                Assert.Contains(scores, one => one.Kept == kept);
                Assert.DoesNotContain(leads, lead => Thinning.AreNear(lead, kept));
                leads.Add(kept);
            }

            Assert.True(leads.Count == Thinning.MostSuggestions || scores.All(one => leads.Any(lead => Thinning.AreNear(lead, one.Kept))));
        }
    }

    [Fact]
    public void The_best_choice_is_the_best_when_every_choice_is_judged_by_the_checks_themselves()
    {
        for (var seed = 0; seed < 60; seed++)
        {
            var count = 4 + (seed % 5);
            var context = ThinningScoreTests.ContextOf(StoolSource.Of(seed, count));
            var unplaced = context.State.Trunks.Count(trunk => trunk is { Presence: Presence.Standing, Place: null });
            var size = 2 + (seed % (count - 2));
            var score = new ThinningScore(context);
            var best = Enumerable.Range(1, (1 << count) - 1)
                .Select(kept => (uint)kept)
                .Where(kept => BitOperations.PopCount(kept) == size)
                .Min(kept => ThinningScoreTests.Independent(context, score, kept));
            var answer = Thinning.Choose(context, new ThinningWish(size + unplaced, size + unplaced, [], []), cancellation: TestContext.Current.CancellationToken);
            Assert.Equal(best, answer.Suggestions[0].Stand.Parts.Score, 1e-8);
        }
    }

    [Theory]
    [InlineData(5, 5)]
    [InlineData(12, 12)]
    [InlineData(17, 17)]
    [InlineData(1, 24)]
    public void The_suggestions_are_the_same_whether_the_work_is_done_at_once_or_one_after_another(int least, int most)
    {
        for (var seed = 0; seed < 8; seed++)
        {
            var context = ThinningScoreTests.ContextOf(StoolSource.Of(seed, 24));
            var wish = new ThinningWish(least, most, [], []);
            var alone = Thinning.Choose(context, wish, cancellation: TestContext.Current.CancellationToken);
            var atOnce = Thinning.Choose(context, wish, (count, work) => Parallel.For(0, count, work), TestContext.Current.CancellationToken);
            Assert.Equal(Told(alone), Told(atOnce));
        }

        static IEnumerable<string> Told(ThinningAnswer answer) => answer.Suggestions.Select(suggestion =>
            string.Join(" ", [.. suggestion.Stand.Kept, suggestion.Stand.Parts.ToString(), suggestion.Why, .. suggestion.NearlyAsGood.Select(variant => variant.ToString())]));
    }

    /// <summary>Measured when written: one step for 12, 45, 56, 49, 5 and 244 choices.</summary>
    [Theory]
    [InlineData(5, 5, 9)]
    [InlineData(5, 7, 33)]
    [InlineData(9, 9, 42)]
    [InlineData(12, 12, 36)]
    [InlineData(17, 17, 4)]
    [InlineData(1, 24, 180)]
    public void Of_twenty_four_trunks_few_of_all_choices_have_to_be_looked_at(int least, int most, int spared)
    {
        long all = 0, looked = 0;
        for (var seed = 0; seed < 5; seed++)
        {
            var context = ThinningScoreTests.ContextOf(StoolSource.Of(seed, 24));
            looked += Thinning.Choose(context, new ThinningWish(least, most, [], []), cancellation: TestContext.Current.CancellationToken).Steps;
            for (var size = least; size <= most; size++)
            {
                all += Thinning.MostSuggestions * Choices(24, size);
            }
        }

        Assert.InRange(looked, 1, all / spared);
    }

    private static long Choices(int of, int size) => Enumerable.Range(1, size).Aggregate(1L, (product, index) => product * (of - size + index) / index);

    private static uint Set(IEnumerable<string> kept, string[] names) => kept.Select(name => Array.IndexOf(names, name)).Where(place => place >= 0).Aggregate(0u, (set, place) => set | (1u << place));

    private static System.Collections.Immutable.ImmutableArray<string> Names(uint set, string[] names) => [.. names.Where((_, index) => (set >> index & 1) != 0)];
}
