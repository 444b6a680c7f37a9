using CsCheck;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Syntax.Tests;

public sealed class WordDistanceTests
{
    private const int Far = int.MaxValue;

    [Theory]
    [InlineData("", "", 0)]
    [InlineData("girth", "girth", 0)]
    [InlineData("girt", "girth", 1)]
    [InlineData("girthh", "girth", 1)]
    [InlineData("gurth", "girth", 1)]
    [InlineData("grith", "girth", 1)]
    [InlineData("Girth", "girth", 1)]
    [InlineData("", "girth", 5)]
    [InlineData("ca", "abc", 3)] // Not 2: no letter is touched twice.
    [InlineData("kitten", "sitting", 3)] // The example everyone gives, from memory.
    public void Each_letter_put_in_left_out_changed_or_swapped_counts_once(string left, string right, int distance)
    {
        Assert.Equal(distance, WordDistance.Between(left, right, Far));
        Assert.Equal(distance, WordDistance.Between(right, left, Far));
    }

    [Fact]
    public void Words_longer_than_any_that_is_written_are_compared_too() =>
        Assert.Equal(2, WordDistance.Between(new string('a', 300) + "bc", "d" + new string('a', 299) + "cb", Far));

    [Fact]
    public void It_is_what_the_definition_says_and_from_enough_on_it_is_enough() =>
        Gen.Select(Word, Word, Gen.Int[1, 6]).Sample((left, right, enough) =>
        {
            var distance = ByDefinition(left, right);
            Assert.Equal(distance, WordDistance.Between(left, right, Far));
            Assert.Equal(Math.Min(distance, enough), WordDistance.Between(left, right, enough));
        });

    private static Gen<string> Word { get; } = Gen.String[Gen.Char["abc"], 0, 7];

    private static int ByDefinition(string left, string right)
    {
        if (left.Length == 0 || right.Length == 0)
        {
            return left.Length + right.Length;
        }

        var least = Math.Min(
            Math.Min(ByDefinition(left[..^1], right), ByDefinition(left, right[..^1])) + 1,
            ByDefinition(left[..^1], right[..^1]) + (left[^1] == right[^1] ? 0 : 1));
        return left.Length > 1 && right.Length > 1 && left[^1] == right[^2] && left[^2] == right[^1]
            ? Math.Min(least, ByDefinition(left[..^2], right[..^2]) + 1)
            : least;
    }
}
