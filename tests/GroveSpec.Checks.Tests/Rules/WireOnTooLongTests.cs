using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

/// <summary>Common practice: off within six to eight weeks of the thickening season, or when it is expected to bite.</summary>
public sealed class WireOnTooLongTests
{
    private const string Name = "wire-on-too-long";
    private const string Autumn = "task W wire on A from 2027-09-01 to 2027-09-10 with aluminium 5 mm, span 100 to 200 mm";

    [Fact]
    public void A_wire_that_nothing_takes_off_is_told_and_the_remedy_adds_looks_and_removal()
    {
        var source = Of(Autumn);
        var finding = CareSource.Hit(Name, source);
        Assert.Equal("W (wire) puts wire on A, and nothing takes it off. Add a task that takes it off 6 to 8 weeks after it.", finding.Message);
        Assert.Equal("add work that looks it over and takes it off 6 to 8 weeks after it", finding.Remedies[0].Title);
        var mended = CareSource.Mended(source, finding.Remedies[0]);
        Assert.Contains("span 100 to 200 mm\ntask W-look look-over of W every 2 weeks until W-off\ntask W-off unwire of W 6 to 8 weeks after W\n", mended, StringComparison.Ordinal);
        CareSource.Miss(Name, mended);
        CareSource.Miss("wire-unwatched", mended);
        Assert.DoesNotContain(Check.Of(mended).Findings, found => found.Severity == Severity.Error);
    }

    [Fact]
    public void Where_it_is_looked_over_already_only_the_removal_is_added()
    {
        var finding = CareSource.Hit(Name, Of(Autumn + "\ntask L look-over of W every 2 weeks until 2027-11-01"));
        Assert.Equal("add work that takes it off 6 to 8 weeks after it", finding.Remedies[0].Title);
        Assert.DoesNotContain("look-over", finding.Remedies[0].Edits[0].NewText, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("56 days after W", 0)]
    [InlineData("57 days after W", 1)]
    public void Eight_weeks_are_the_limit(string time, int count) =>
        Assert.Equal(count, Check.Findings(Name, Of($"{Autumn}\ntask U unwire of W 40 to {time}")).Length);

    [Fact]
    public void It_says_how_long_it_is_on_and_by_when_it_should_be_off()
    {
        var source = Of(Autumn + "\ntask U unwire of W 10 to 11 weeks after W");
        var finding = CareSource.Hit(Name, source);
        Assert.Equal(
            "W (wire) is on A from about 10 September 2027 until as late as 26 November 2027: 77 days in which the tree grows, and common practice takes it off within 56. Take it off by 5 November 2027, or sooner where it begins to mark the bark.",
            finding.Message);
        Assert.Equal(77, finding.Measured);
        Assert.Equal(56, finding.Limit);
        Assert.Equal("take it off 6 to 8 weeks after it", finding.Remedies[0].Title);
        CareSource.Miss(Name, CareSource.Mended(source, finding.Remedies[0]));
    }

    [Fact]
    public void Days_of_rest_do_not_count()
    {
        // At rest from 9 December 2027, awake on 16 March 2028: from 1 November to 1 April are 38 and 16 days of growth.
        CareSource.Miss(Name, Of("task W wire on A on 2027-11-01 with aluminium 5 mm, span 100 to 200 mm\ntask U unwire of W on 2028-04-01"));
        Assert.Equal(69, CareSource.Hit(Name, Of("task W wire on A on 2027-11-01 with aluminium 5 mm, span 100 to 200 mm\ntask U unwire of W on 2028-04-16")).Measured);
    }

    [Fact]
    public void In_full_growth_a_fast_tree_bites_sooner_and_the_remedy_keeps_to_it()
    {
        // From 2 to 5 mm a year, so 3.5 mm, of which a share of 0.21 makes the 0.75 mm at which a wire of 3 mm bites.
        const string June = "profile carpinus-betulus {\n  leaves deciduous from memory\n  growth fast from memory\n}\ntask W wire on A on 2027-06-01 with aluminium 3 mm, span 100 to 200 mm";
        var source = Of(June);
        var never = CareSource.Hit(Name, source);
        Assert.Matches("takes it off [0-9]+ to [0-9]+ days after it", never.Remedies[0].Title);
        CareSource.Miss(Name, CareSource.Mended(source, never.Remedies[0]));

        var late = Of(June + "\ntask U unwire of W 6 to 8 weeks after W");
        var finding = CareSource.Hit(Name, late);
        Assert.Contains("A is expected to have thickened into it by about ", finding.Message, StringComparison.Ordinal);
        Assert.InRange(finding.Limit!.Value, 15, 35);
        CareSource.Miss(Name, CareSource.Mended(late, finding.Remedies[0]));
    }

    [Fact]
    public void One_that_should_be_off_and_is_not_marked_so_is_on_until_today()
    {
        var source = Of(Autumn + " done 2027-09-05\ntask U unwire of W 6 to 8 weeks after W") + "measured 2027-11-20 {\n  A  diameter 31 mm\n}\n";
        var finding = CareSource.Hit(Name, source);
        Assert.StartsWith("W (wire) is on A since 5 September 2027 and not marked as taken off, by 20 November 2027: 76 days in which the tree grows", finding.Message, StringComparison.Ordinal);
        Assert.Contains("Look at it today, and take it off", finding.Message, StringComparison.Ordinal);
        CareSource.Miss(Name, source.Replace("after W\n", "after W done 2027-10-30\n", StringComparison.Ordinal));
    }

    [Fact]
    public void A_removal_with_no_last_day_is_told() =>
        Assert.EndsWith("and U takes it off with no last day. Say by when it is off.", CareSource.Hit(Name, Of(Autumn + "\ntask U unwire of W after W")).Message, StringComparison.Ordinal);

    [Fact]
    public void A_wire_without_a_date_is_asked_only_for_its_removal()
    {
        CareSource.Hit(Name, Of("task W wire on A with aluminium 5 mm"));
        CareSource.Miss(Name, Of("task W wire on A with aluminium 5 mm\ntask U unwire of W 6 to 8 weeks after W"));
    }

    [Fact]
    public void A_tolerance_moves_the_limit() =>
        CareSource.Miss(Name, Of(Autumn + "\ntask U unwire of W 10 to 11 weeks after W") + "tolerance wire-on-too-long 77 days\n");

    private static string Of(string tasks) => CareSource.Of("carpinus-betulus", tasks);
}
