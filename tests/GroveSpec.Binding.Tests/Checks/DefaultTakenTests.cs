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

    [Theory]
    [InlineData("planting \"P\"\ntrunk A at 0, 0 mm\n", "planting \"P\"\nhabit group\nviewed from 180 deg\ntrunk A at 0, 0 mm\n")]
    [InlineData("planting \"P\"  # the first\nhabit clump\ntrunk A at 0, 0 mm\n", "planting \"P\"  # the first\nviewed from 180 deg\nhabit clump\ntrunk A at 0, 0 mm\n")]
    [InlineData("planting \"P\"\nhabit clump\ntrunk A at 0, 0 mm\n", "planting \"P\"\nviewed from 180 deg\nhabit clump\ntrunk A at 0, 0 mm\n")]
    public void What_is_taken_can_be_written_down_and_changes_nothing_else(string text, string expected)
    {
        var before = Planted.Of(text);
        var after = before.Mended(before.Only("default-taken"));
        Assert.Equal(expected, after);
        var found = Planted.Of(after);
        Assert.Contains("Nothing is said with container,", found.Only("default-taken").Message, StringComparison.Ordinal);
        Assert.DoesNotContain(found.Findings, finding => finding.Severity == Severity.Error);
    }

    [Fact]
    public void Open_ground_has_no_statement_so_nothing_is_offered_for_it() =>
        Assert.Empty(Planted.Of("planting \"P\"\nhabit group\nviewed from 180 deg\ntrunk A at 0, 0 mm\n").Only("default-taken").Remedies);
}
