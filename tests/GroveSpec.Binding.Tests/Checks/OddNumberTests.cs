using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class OddNumberTests
{
    [Fact]
    public void A_decimal_comma_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm diameter 1,5 mm");
        Assert.NotEmpty(assessment.Found("odd-number"));
    }

    [Fact]
    public void An_exponent_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm diameter 1e9 mm");
        Assert.NotEmpty(assessment.Found("odd-number"));
    }

    [Fact]
    public void Other_digits_are_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm diameter \u0661\u0662 mm");
        Assert.NotEmpty(assessment.Found("odd-number"));
    }

    [Fact]
    public void A_decimal_point_is_not_told() => Assert.Empty(Planted.Under("trunk A at 0, 0 mm diameter 1.5 mm").Found("odd-number"));
}
