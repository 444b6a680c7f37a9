using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class NoSizeTests
{
    [Fact]
    public void A_trunk_without_a_diameter_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm height 100 mm");
        var finding = assessment.Only("no-size");
        Assert.Equal("A", assessment.Underlined(finding));
        Assert.Contains("has no diameter", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Several_trunks_without_sizes_are_told_once()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm\ntrunk B at 50, 0 mm\ntrunk C at 90, 30 mm diameter 5 mm");
        var finding = assessment.Only("no-size");
        Assert.Equal("A", assessment.Underlined(finding));
        Assert.Contains("A, B and C lack", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trunk_measured_later_has_its_size() => Assert.Empty(Planted.Under("trunk A at 0, 0 mm height 100 mm\nmeasured 2026-01-01 {\n  A diameter 5 mm\n}").Found("no-size"));
}
