using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class OddUnitTests
{
    [Fact]
    public void A_unit_in_capitals_is_told_with_the_right_one()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm diameter 12 MM");
        var finding = assessment.Only("odd-unit");
        Assert.Equal("MM", assessment.Underlined(finding));
        Assert.Contains("is written mm here", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_unit_in_full_is_told_with_the_right_one()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm height 12 inches");
        var finding = assessment.Only("odd-unit");
        Assert.Equal("inches", assessment.Underlined(finding));
        Assert.Contains("is written in here", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Miles_are_told_with_the_units_there_are()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm girth 3 miles");
        var finding = assessment.Only("odd-unit");
        Assert.Equal("miles", assessment.Underlined(finding));
        Assert.Contains("mm, cm, m, in or ft", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_angle_in_millimetres_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm lean 7 mm toward 90 deg");
        var finding = assessment.Only("odd-unit");
        Assert.Equal("mm", assessment.Underlined(finding));
        Assert.Contains("an angle is written in deg", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_time_without_a_unit_is_told()
    {
        var assessment = Planted.Under("task A repot on all in spring 2027\ntask B feed on all 6 after A");
        var finding = assessment.Only("odd-unit");
        Assert.Equal("6", assessment.Underlined(finding));
        Assert.Contains("say 6 days", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_unit_of_length_is_taken() => Assert.Empty(Planted.Under("trunk A at 1 cm, 1 cm diameter 1 in height 1 ft crown 0.1 m").Found("odd-unit"));

    [Fact]
    public void A_bare_number_takes_the_usual_unit() => Assert.Empty(Planted.Under("trunk A at 1, 1 diameter 12 height 100 lean 7 toward 90").Found("odd-unit"));

    [Theory]
    [InlineData("diameter 12 MM", "diameter 12 mm")]
    [InlineData("height 3 Inches", "height 3 in")]
    [InlineData("height 3 feet", "height 3 ft")]
    public void The_remedy_writes_the_unit_that_is_meant(string written, string mended)
    {
        var assessment = Planted.Under($"trunk A at 0, 0 mm {written}");
        Assert.Contains(mended, assessment.Mended(assessment.Only("odd-unit")), StringComparison.Ordinal);
    }
}
