using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

/// <summary>Common practice: the first look within weeks, and again until it is off.</summary>
public sealed class WireUnwatchedTests
{
    private const string Name = "wire-unwatched";
    private const string Wire = "task W wire on A from 2027-09-01 to 2027-09-10 with aluminium 5 mm, span 100 to 200 mm\ntask U unwire of W 6 to 8 weeks after W\n";

    [Fact]
    public void A_wire_that_nobody_looks_at_is_told_and_the_remedy_adds_the_looks()
    {
        var source = Of(Wire);
        var finding = CareSource.Hit(Name, source);
        Assert.Equal("W (wire) is on A, and no task looks it over. Add one that does, every 2 weeks until it is off.", finding.Message);
        var mended = CareSource.Mended(source, finding.Remedies[0]);
        Assert.Contains("\ntask W-look look-over of W every 2 weeks until U\n", mended, StringComparison.Ordinal);
        CareSource.Miss(Name, mended);
        Assert.DoesNotContain(Check.Of(mended).Findings, found => found.Severity == Severity.Error);
    }

    [Fact]
    public void Without_a_removal_the_remedy_is_left_to_the_check_that_asks_for_it()
    {
        var source = Of(Wire.Split('\n')[0]);
        Assert.StartsWith("let ", Assert.Single(CareSource.Hit(Name, source).Remedies).Title, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("task L look-over of W every 4 weeks until U", 0)]
    [InlineData("task L look-over of W on 2027-10-08", 0)]
    // 10 September to 9 October are 29 days.
    [InlineData("task L look-over of W on 2027-10-09", 1)]
    // From 6 October it is on for another 30 days, until 5 November.
    [InlineData("task L look-over of W on 2027-10-06", 1)]
    [InlineData("task L look-over of W every 5 weeks until U", 1)]
    public void Four_weeks_of_growth_on_end_are_the_limit(string look, int count) =>
        Assert.Equal(count, Check.Findings(Name, Of(Wire + look)).Length);

    [Fact]
    public void It_says_for_how_long_nobody_looks()
    {
        var finding = CareSource.Hit(Name, Of(Wire + "task L look-over of W on 2027-10-12"));
        Assert.Equal("W (wire) is on A, and for 32 days of growth on end nobody looks at it; common practice looks within weeks. Look every 2 weeks, or at least every 28 days.", finding.Message);
        Assert.Equal("looks it over", Assert.Single(finding.Related).Message);
    }

    [Theory]
    [InlineData("task L look-over on all from 2027-09-05 every 2 weeks until 2027-12-01", 0)]
    [InlineData("task L look-over on A B from 2027-09-05 every 2 weeks until 2027-12-01", 0)]
    [InlineData("task L look-over on B from 2027-09-05 every 2 weeks until 2027-12-01", 1)]
    [InlineData("task L look-over on A from 2028-09-05 every 2 weeks until 2028-12-01", 1)]
    public void A_look_at_all_of_the_wired_trunks_while_it_is_on_counts(string look, int count) =>
        Assert.Equal(count, Check.Findings(Name, Of(Wire + look)).Length);

    [Fact]
    public void Looks_that_were_done_count()
    {
        var source = Of(Wire.Replace("200 mm\n", "200 mm done 2027-09-04\n", StringComparison.Ordinal) + "task L look-over of W every 2 weeks until U done 2027-09-20 done 2027-10-05");
        CareSource.Miss(Name, source);
    }

    [Fact]
    public void Of_a_wire_that_is_off_nothing_is_told() =>
        CareSource.Miss(Name, Of(Wire.Replace("200 mm\n", "200 mm done 2027-09-04\n", StringComparison.Ordinal).Replace("after W\n", "after W done 2027-10-25\n", StringComparison.Ordinal)));

    [Fact]
    public void A_tolerance_moves_the_limit() =>
        CareSource.Miss(Name, Of(Wire + "task L look-over of W on 2027-10-12") + "tolerance wire-unwatched 35 days\n");

    private static string Of(string tasks) => CareSource.Of("carpinus-betulus", tasks);
}
