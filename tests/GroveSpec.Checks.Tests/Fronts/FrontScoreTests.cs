using System.Collections.Immutable;
using GroveSpec.Checks.Fronts;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Views;
using Xunit;

namespace GroveSpec.Checks.Tests.Fronts;

/// <summary>The score of a front is what the checks find from there, and between two critical bearings it does not change.</summary>
public sealed class FrontScoreTests
{
    [Fact]
    public void What_the_score_counts_is_what_the_checks_find_when_the_viewer_stands_there()
    {
        var checks = new HashSet<string>(StringComparer.Ordinal);
        for (var seed = 0; seed < 160; seed++)
        {
            var random = new Random(2000 + seed);
            var context = FrontSource.ContextOf(FrontSource.Of(seed, random.Next(2, 25)));
            var score = new FrontFindings(context);
            for (var tried = 0; tried < 24; tried++)
            {
                var from = tried % 3 == 0 ? new Bearing(random.Next(8) * 45) : FrontScore.BearingOf(random.Next(FrontScore.Steps));
                var found = Found(context, from);
                checks.UnionWith(found.Select(finding => finding.Check.Name));
                Assert.Equal(Weight(found), score.At(from), 1e-9);
            }
        }

        // Every check of the view came up, so that none of them is counted by never being met.
        Assert.Equal(FrontFindings.Names.Order(StringComparer.Ordinal), checks.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Between_two_critical_bearings_nothing_begins_and_nothing_ends()
    {
        for (var seed = 0; seed < 120; seed++)
        {
            var random = new Random(seed);
            var score = new FrontFindings(FrontSource.ContextOf(FrontSource.Of(seed, random.Next(2, 12))));
            var end = 0.0;
            foreach (var range in score.Critical(TestContext.Current.CancellationToken).Append(new(360, 360)))
            {
                if (range.From > end)
                {
                    var middle = score.At(new Bearing((end + range.From) / 2));
                    for (var tried = 0; tried < 12; tried++)
                    {
                        // The ends themselves as well, since a change would most likely be found there.
                        var share = tried switch { 0 => 1e-6, 1 => 1 - 1e-6, _ => random.NextDouble() };
                        var from = end + ((range.From - end) * share);
                        Assert.True(middle == score.At(new Bearing(from)), $"seed {seed}, at {from:R} of {end:R} to {range.From:R}");
                    }
                }

                end = Math.Max(end, range.To);
            }
        }
    }

    internal static ImmutableArray<Finding> Found(CheckContext context, Bearing from)
    {
        var viewed = (context.Planting.Viewed ?? new Viewpoint { Origin = Origin.Default }) with { From = from };
        var planting = context.Planting with { Viewed = viewed };
        var turned = new CheckContext(planting, context.State with { Planting = planting }, context.Origins, context.Units);
        return [.. Checker.Check(turned, []).Findings.Where(finding => FrontFindings.Names.Contains(finding.Check.Name))];
    }

    internal static double Weight(ImmutableArray<Finding> found) => found.Sum(finding => Checks.Choosing.ChoiceCheck.WeightOf(finding.Severity) * (1 + finding.Untold));
}
