using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class UnknownCheckTests
{
    [Fact]
    public void A_muted_check_that_is_not_there_is_told_with_the_near_one()
    {
        var assessment = Planted.Under("mute even-cuont because \"twins\"");
        var finding = assessment.Only("unknown-check");
        Assert.Equal("even-cuont", assessment.Underlined(finding));
        Assert.Contains("perhaps even-count is meant", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_accepted_check_that_is_not_there_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm\naccept beauty A because \"it is\"");
        var finding = assessment.Only("unknown-check");
        Assert.Equal("beauty", assessment.Underlined(finding));
        Assert.Contains("There is no check beauty", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_limit_for_a_check_that_is_not_there_is_told()
    {
        var assessment = Planted.Under("tolerance gaps 8 %");
        var finding = assessment.Only("unknown-check");
        Assert.Equal("gaps", assessment.Underlined(finding));
        Assert.Contains("There is no check gaps", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_check_that_is_there_is_not_told() => Assert.Empty(Planted.Under("mute even-count because \"twins\"").Found("unknown-check"));
}
