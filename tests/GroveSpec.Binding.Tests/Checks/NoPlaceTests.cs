using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class NoPlaceTests
{
    [Fact]
    public void A_trunk_without_a_place_is_told()
    {
        var assessment = Planted.Under("trunk A diameter 5 mm height 90 mm");
        var finding = assessment.Only("no-place");
        Assert.Equal("A", assessment.Underlined(finding));
        Assert.Contains("It is not known where A stands", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_planned_trunk_without_a_place_is_told()
    {
        var assessment = Planted.Under("trunk A diameter 5 mm height 90 mm planned 2030");
        var finding = assessment.Only("no-place");
        Assert.Equal("A", assessment.Underlined(finding));
        Assert.Contains("It is not known where A stands", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trunk_that_was_removed_needs_no_place() => Assert.Empty(Planted.Under("trunk A removed 2020").Found("no-place"));

    [Fact]
    public void A_trunk_with_a_line_stands_where_its_line_begins() => Assert.Empty(Planted.Under("trunk A line (5,5,0) (5,5,90) mm").Found("no-place"));
}
