using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class TwiceAcceptedTests
{
    [Fact]
    public void The_same_finding_accepted_twice_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm\ntrunk B at 90, 0 mm\naccept touching A B because \"one\"\naccept touching B A because \"two\"");
        var finding = assessment.Only("twice-accepted");
        Assert.Equal("accept touching B A because \"two\"", assessment.Underlined(finding));
        Assert.Contains("accepted already", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Different_trunks_are_different_findings() => Assert.Empty(Planted.Under("trunk A at 0, 0 mm\ntrunk B at 90, 0 mm\naccept near-rim A because \"one\"\naccept near-rim B because \"two\"").Found("twice-accepted"));
}
