using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class SimilarNamesTests
{
    [Fact]
    public void Names_that_differ_only_in_case_are_told()
    {
        var assessment = Planted.Under("trunk Ash at 0, 0 mm\ntrunk ash at 50, 0 mm");
        var finding = assessment.Only("similar-names");
        Assert.Equal("ash", assessment.Underlined(finding));
        Assert.Contains("differ only in capital and small letters", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Names_that_differ_in_a_letter_are_not_told() => Assert.Empty(Planted.Under("trunk Ash at 0, 0 mm\ntrunk Ask at 50, 0 mm").Found("similar-names"));
}
