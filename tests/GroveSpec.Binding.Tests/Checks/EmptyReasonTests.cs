using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class EmptyReasonTests
{
    [Fact]
    public void An_accept_with_an_empty_reason_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm\naccept even-count A because \"  \"");
        var finding = assessment.Only("empty-reason");
        Assert.Equal("\"  \"", assessment.Underlined(finding));
        Assert.Contains("Say why", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mute_with_an_empty_reason_is_told()
    {
        var assessment = Planted.Under("mute even-count because \"\"");
        var finding = assessment.Only("empty-reason");
        Assert.Equal("\"\"", assessment.Underlined(finding));
        Assert.Contains("Say why", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_word_is_reason_enough() => Assert.Empty(Planted.Under("mute even-count because \"twins\"").Found("empty-reason"));
}
