using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

public sealed class EvenCountTests
{
    private static string Trunks(int count) => string.Join('\n', Enumerable.Range(0, count).Select(index => $"trunk T{index} at {(index * 50) - 230}, {index * index * 2} mm diameter {20 + index} mm"));

    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    [InlineData(8)]
    public void An_even_number_under_ten_is_a_hint(int count)
    {
        var finding = Assert.Single(Check.Findings("even-count", Trunks(count)));
        Assert.Equal(Severity.Hint, finding.Severity);
        Assert.Equal(count, finding.Measured);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(9)]
    [InlineData(10)]
    public void An_odd_number_and_ten_or_more_are_let_be(int count)
    {
        Assert.Empty(Check.Findings("even-count", Trunks(count)));
    }

    [Fact]
    public void A_removed_trunk_is_not_counted()
    {
        Assert.Empty(Check.Findings("even-count", Trunks(4) + " removed 2020-03-01"));
    }

    [Fact]
    public void It_says_all_of_it_in_whole_sentences()
    {
        var source = """
            trunk M at 12, 0 mm diameter 40 mm
            trunk A at -120, 60 mm diameter 20 mm
            """;
        Assert.Equal(
            "Two trunks stand here, an even number, which the eye splits into pairs: one more, or one fewer, would keep it moving.",
            Check.Message("even-count", source));
    }
}
