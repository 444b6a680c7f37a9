using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class EndsBeforeStartTests
{
    [Fact]
    public void A_span_that_ends_before_it_begins_is_told()
    {
        var assessment = Planted.Under("task T feed on all from 2027-06-01 to 2027-05-01");
        var finding = assessment.Only("ends-before-start");
        Assert.Equal("from 2027-06-01 to 2027-05-01", assessment.Underlined(finding));
        Assert.Contains("before it begins", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Stages_of_one_year_turned_round_are_told()
    {
        var assessment = Planted.Under("task P pinch on all from midsummer 2027 to leaf-out 2027");
        var finding = assessment.Only("ends-before-start");
        Assert.Equal("from midsummer 2027 to leaf-out 2027", assessment.Underlined(finding));
        Assert.Contains("before it begins", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void More_weeks_to_fewer_are_told()
    {
        var assessment = Planted.Under("task A repot on all in spring 2027\ntask B feed on all 8 to 6 weeks after A");
        var finding = assessment.Only("ends-before-start");
        Assert.Equal("8 to 6 weeks after A", assessment.Underlined(finding));
        Assert.Contains("runs backwards", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void After_a_time_and_before_an_earlier_one_is_told()
    {
        var assessment = Planted.Under("task T feed on all after 2027-06-01 before 2027-03-01");
        var finding = assessment.Only("ends-before-start");
        Assert.Equal("before 2027-03-01", assessment.Underlined(finding));
        Assert.Contains("over before it may begin", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wired_part_from_high_to_low_is_told()
    {
        var assessment = Planted.Under("task W wire on all in autumn 2026 with copper 2 mm, span 260 to 40 mm");
        var finding = assessment.Only("ends-before-start");
        Assert.Equal("span 260 to 40 mm", assessment.Underlined(finding));
        Assert.Contains("write the lower end first", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_span_of_one_day_is_taken() => Assert.Empty(Planted.Under("task T feed on all from 2027-06-01 to 2027-06-01").Found("ends-before-start"));

    [Fact]
    public void As_many_weeks_as_fewest_are_taken() => Assert.Empty(Planted.Under("task A repot on all in spring 2027\ntask B feed on all 6 to 6 weeks after A").Found("ends-before-start"));
}
