using System.Numerics;
using GroveSpec.Checks.Choosing;
using GroveSpec.Model.States;
using Xunit;

namespace GroveSpec.Checks.Tests.Choosing;

/// <summary>The score of a choice of trunks is what the checks find when only those stand, and the softer measures besides.</summary>
public sealed class ThinningScoreTests
{
    [Fact]
    public void What_the_score_counts_is_what_the_checks_find_when_only_those_trunks_stand()
    {
        var checks = new HashSet<string>(StringComparer.Ordinal);
        for (var seed = 0; seed < 250; seed++)
        {
            var random = new Random(1000 + seed);
            var context = ContextOf(Accepting(StoolSource.Of(seed, random.Next(2, 25)), random));
            var score = new ThinningScore(context);
            for (var tried = 0; tried < 24; tried++)
            {
                var kept = AnyChoice(random, context.Standing.Count);
                var found = Found(context, kept);
                checks.UnionWith(found.Select(finding => finding.Check.Name));
                Assert.Equal(Independent(context, score, kept), score.Of(kept, double.PositiveInfinity), 1e-9);
            }
        }

        // Every check of composition came up, so that none of them is counted by never being met.
        Assert.Equal(RuleList.All.Select(rule => rule.Description.Name).Order(StringComparer.Ordinal), checks.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void No_choice_scores_below_a_bound_that_holds_for_it()
    {
        for (var seed = 0; seed < 300; seed++)
        {
            var random = new Random(seed);
            var context = ContextOf(Accepting(StoolSource.Of(seed, random.Next(2, 25)), random));
            var score = new ThinningScore(context);
            for (var tried = 0; tried < 100; tried++)
            {
                var choice = AnyChoice(random, context.Standing.Count);
                var part = score.Parts.Single(one => (one.Required & ~choice) == 0 && (choice & ~one.Allowed) == 0);
                var kept = (choice & (uint)random.NextInt64(uint.MaxValue)) | part.Required;
                var possible = (choice | (uint)random.NextInt64(uint.MaxValue)) & part.Allowed;
                foreach (var (least, most) in new[] { (kept, possible), (kept, choice), (choice, possible), (choice, choice) })
                {
                    Assert.InRange(score.Bound(least, most, BitOperations.PopCount(choice), double.PositiveInfinity), 0, score.Of(choice, double.PositiveInfinity) + 1e-9);

                    // What is sure among the rest may be added to it.
                    var rest = choice & ~least;
                    var among = score.Among(Enumerable.Range(0, score.Parts.Count).Single(place => score.Parts[place] == part), rest, most | rest, BitOperations.PopCount(choice));
                    Assert.InRange(score.Bound(least, most, BitOperations.PopCount(choice), double.PositiveInfinity) + among, 0, score.Of(choice, double.PositiveInfinity) + 1e-9);
                }
            }
        }
    }

    [Fact]
    public void A_score_that_stops_early_is_over_what_was_enough()
    {
        for (var seed = 0; seed < 100; seed++)
        {
            var random = new Random(seed);
            var context = ContextOf(StoolSource.Of(seed, random.Next(2, 20)));
            var score = new ThinningScore(context);
            var kept = AnyChoice(random, context.Standing.Count);
            var exact = score.Of(kept, double.PositiveInfinity);
            var enough = exact * random.NextDouble() * 1.5;
            Assert.Equal(exact > enough, score.Of(kept, enough) > enough);
        }
    }

    /// <summary>The planting of a source.</summary>
    internal static CheckContext ContextOf(string source)
    {
        var assessment = Check.Of(source);
        Assert.DoesNotContain(assessment.Findings, finding => finding.Check.Name is "broken-check" or "not-understood" or "odd-tolerance");
        return assessment.ToContext();
    }

    /// <summary>The source with the first few findings of some choice accepted.</summary>
    private static string Accepting(string source, Random random)
    {
        if (random.Next(3) > 0)
        {
            return source;
        }

        var context = ContextOf(source);
        var found = Found(context, AnyChoice(random, context.Standing.Count)).Where(finding => !finding.Trunks.IsEmpty).Take(4);
        return source + string.Concat(found.Select(finding => $"accept {finding.Check.Name} {string.Join(' ', finding.Trunks)} because \"so\"\n"));
    }

    private static uint AnyChoice(Random random, int count)
    {
        uint kept;
        do
        {
            var share = random.NextDouble();
            kept = Enumerable.Range(0, count).Where(_ => random.NextDouble() < share).Aggregate(0u, (set, index) => set | (1u << index));
        }
        while (kept == 0);
        return kept;
    }

    private static List<Finding> Found(CheckContext context, uint kept) => [.. Checker.Composition(ThinnedContext.Of(context, kept), CancellationToken.None)];

    /// <summary>The score worked out another way: by the checks, and by the formulas of docs/thin.md over the trunks themselves.</summary>
    internal static double Independent(CheckContext context, ThinningScore score, uint kept)
    {
        var findings = Found(context, kept).Sum(finding => (1 + finding.Untold) * (finding.Severity switch { Severity.Error => 3.0, Severity.Warning => 1, _ => 0.5 }));
        var thinned = ThinnedContext.Of(context, kept);
        var standing = thinned.Standing;
        var gaps = standing.NeighbourPairs.Select(pair => Distance(standing.Trunks[pair.First], standing.Trunks[pair.Second])).ToList();
        var sizes = (Evenness([.. standing.Trunks.Where(trunk => trunk.Diameter is not null).Select(trunk => trunk.Diameter!.Value.Value.Millimetres)])
            + Evenness([.. standing.Trunks.Where(trunk => trunk.Height is not null).Select(trunk => trunk.Height!.Value.Value.Millimetres)])) / 2;
        return findings + (0.5 * Math.Max(0, Evenness(gaps) - 0.5)) + (0.5 * Math.Max(0, sizes - 0.5)) + (0.5 * score.Measures.Imbalance(kept)) + score.Aims.Loss(kept);
    }

    /// <summary>Not rounded to whole nanometres as a length is.</summary>
    private static double Distance(TrunkState one, TrunkState other) => Math.Sqrt(
        Math.Pow(one.Place!.Value.X.Millimetres - other.Place!.Value.X.Millimetres, 2) + Math.Pow(one.Place!.Value.Y.Millimetres - other.Place!.Value.Y.Millimetres, 2));

    private static double Evenness(List<double> values) => values.Sum() > 0 ? Math.Pow(values.Average(), 2) / values.Average(value => value * value) : 1;
}
