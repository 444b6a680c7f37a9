using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class NoSuchDateTests
{
    [Fact]
    public void The_thirtieth_of_February_is_told_with_the_last_day_of_the_month()
    {
        var assessment = Planted.Under("measured 2027-02-30 {\n}");
        var finding = assessment.Only("no-such-date");
        Assert.Equal("2027-02-30", assessment.Underlined(finding));
        Assert.Contains("February 2027 ends on the 28th", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_twenty_ninth_of_February_is_told_in_a_common_year()
    {
        var assessment = Planted.Under("seen leaf-out 2027-02-29");
        var finding = assessment.Only("no-such-date");
        Assert.Equal("2027-02-29", assessment.Underlined(finding));
        Assert.Contains("ends on the 28th", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_thirteenth_month_is_told()
    {
        var assessment = Planted.Under("seen leaf-out 2027-13-01");
        var finding = assessment.Only("no-such-date");
        Assert.Equal("2027-13-01", assessment.Underlined(finding));
        Assert.Contains("twelve months", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_thirty_first_of_a_short_month_is_told_for_a_frost()
    {
        var assessment = Planted.Under("site last frost 31 April");
        var finding = assessment.Only("no-such-date");
        Assert.Equal("31 April", assessment.Underlined(finding));
        Assert.Contains("April has 30 days", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stage_without_a_year_is_told()
    {
        var assessment = Planted.Under("task T repot on all after leaf-out");
        var finding = assessment.Only("no-such-date");
        Assert.Equal("leaf-out", assessment.Underlined(finding));
        Assert.Contains("say in which", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_twenty_ninth_of_February_is_taken_in_a_leap_year() => Assert.Empty(Planted.Under("seen leaf-out 2028-02-29").Found("no-such-date"));

    [Fact]
    public void The_twenty_ninth_of_February_is_taken_as_a_frost_of_every_year() => Assert.Empty(Planted.Under("site last frost 29 February, first frost 9 Nov").Found("no-such-date"));

    [Fact]
    public void The_last_day_of_each_month_is_taken() => Assert.Empty(Planted.Under("seen leaf-out 2027-04-30\nseen leaf-fall 2027-12-31").Found("no-such-date"));

    [Fact]
    public void A_stage_takes_the_year_of_the_end_of_its_span() => Assert.Empty(Planted.Under("task P pinch on all from harden-off to midsummer 2027").Found("no-such-date"));

    [Fact]
    public void The_remedy_writes_the_last_day_of_the_month()
    {
        var assessment = Planted.Under("seen leaf-out 2027-02-30");
        Assert.Contains("seen leaf-out 2027-02-28", assessment.Mended(assessment.Only("no-such-date")), StringComparison.Ordinal);
    }
}
