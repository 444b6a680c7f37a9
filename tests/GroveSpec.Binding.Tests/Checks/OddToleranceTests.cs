using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class OddToleranceTests
{
    [Theory]
    [InlineData("even-gaps 0 %", "takes a limit from")]
    [InlineData("even-gaps -8 %", "takes a limit from")]
    [InlineData("even-gaps 1000000000 %", "takes a limit from")]
    [InlineData("even-gaps 8 deg", "takes a limit in percent")]
    [InlineData("even-gaps 8 mm", "takes a limit in percent")]
    [InlineData("even-count 3", "has no limit")]
    public void A_limit_that_the_check_cannot_use_is_told_and_its_own_is_used(string written, string said)
    {
        var finding = Planted.Under($"tolerance {written}\n").Only("odd-tolerance");
        Assert.Contains(said, finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("even-gaps 5 %")]
    [InlineData("even-gaps 5")]
    [InlineData("three-in-line 0.4")]
    [InlineData("three-in-line 40 %")]
    public void A_limit_in_its_unit_and_range_is_taken(string written) => Assert.Empty(Planted.Under($"tolerance {written}\n").Found("odd-tolerance"));

    [Fact]
    public void A_limit_in_another_unit_of_length_is_millimetres() =>
        Assert.Equal(25.4, Planted.Under("tolerance near-rim 1 in\n").Planting.Tolerances[0].Amount, 12);
}
