using GroveSpec.Checks.Nudging;
using GroveSpec.Checks.Tests.Choosing;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Checks.Tests.Nudging;

/// <summary>Where a score of findings or more stand at once, no search of this length finds the shortest moves of all; how far from them it may be is held here.</summary>
public sealed class ThicketNudgingTests
{
    private static readonly string[] OutOfReach = ["even-count", "wide-but-short", "thin-but-tall"];

    /// <summary>How many dense groups are held against the long search; fifty take a minute or more.</summary>
    private static readonly int Thickets = int.Parse(Environment.GetEnvironmentVariable("GROVESPEC_NUDGED_THICKETS") ?? "8", System.Globalization.CultureInfo.InvariantCulture);

    [Fact]
    public void Of_dense_groups_nearly_all_are_cleared_that_a_long_search_clears_and_on_the_mean_by_hardly_longer_ways()
    {
        var (compared, ratios, told) = (0, new List<double>(), new List<string>());
        for (var seed = 0; seed < Thickets; seed++)
        {
            var context = ThinningScoreTests.ContextOf(Thicket.Of(seed));
            var shortest = LongSearch.Shortest(context, 2, 150_000, seed);
            if (double.IsFinite(shortest))
            {
                compared++;
                var first = GroveSpec.Checks.Nudging.Nudging.Find(context, NudgeWish.Usual(UnitSystem.Metric), 1, null, TestContext.Current.CancellationToken).Suggestions[0];
                var isClear = first.Left.All(finding => OutOfReach.Contains(finding.Check.Name));
                told.Add($"seed {seed}: {first.Distance.Millimetres:F1} mm{(isClear ? "" : $" leaving {first.LeftCount}")}, {shortest:F1} mm are enough");
                if (isClear)
                {
                    ratios.Add(first.Distance.Millimetres / shortest);
                }
            }
        }

        var all = string.Join('\n', told);
        Assert.True(compared > Thickets / 2, $"{compared} of {Thickets} could be compared.");
        Assert.True(ratios.Count >= compared - Math.Max(1, compared / 10), $"{compared - ratios.Count} of {compared} are not cleared.\n{all}");
        Assert.True(ratios.Average() <= 1.15, $"On the mean {ratios.Average():F3} times as far.\n{all}");
    }
}
