using GroveSpec.Checks;
using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class DefaultTakenTests
{
    [Fact]
    public void A_file_that_says_all_is_not_told() => Assert.Empty(Planted.Under("trunk A at 0, 0 mm").Found("default-taken"));

    [Fact]
    public void All_that_is_left_out_is_told_in_one_hint()
    {
        var finding = Planted.Of("planting \"P\"\ntrunk A at 0, 0 mm\n").Only("default-taken");
        Assert.Contains("habit, container and viewed", finding.Message, StringComparison.Ordinal);
        Assert.Equal(Severity.Hint, finding.Severity);
    }
}
