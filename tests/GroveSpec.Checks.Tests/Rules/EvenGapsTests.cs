using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

public sealed class EvenGapsTests
{
    [Fact]
    public void Two_gaps_alike_are_reported_once_with_both_lengths()
    {
        var found = Check.Expect("even-gaps", """
            trunk M at 0, 0 mm diameter 20 mm
            trunk A at 97, 0 mm diameter 14 mm
            trunk B at 0, 100 mm diameter 10 mm
            """, "A B M");
        Assert.Contains("M stands as far from A as from B: 97 mm and 100 mm, 3 % apart", Assert.Single(found).Message, StringComparison.Ordinal);
        Assert.Contains("Bring A nearer to M by 5 mm or more", found[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Gaps_well_apart_are_let_be()
    {
        Check.Expect("even-gaps", """
            trunk M at 0, 0 mm diameter 20 mm
            trunk A at 70, 0 mm diameter 14 mm
            trunk B at 0, 100 mm diameter 10 mm
            """);
    }

    [Fact]
    public void Gaps_that_differ_by_just_the_limit_are_let_be_and_a_nanometre_less_is_reported()
    {
        Check.Expect("even-gaps", """
            trunk M at 0, 0 mm diameter 20 mm
            trunk A at 92, 0 mm diameter 14 mm
            trunk B at 0, 100 mm diameter 10 mm
            """);
        Check.Expect("even-gaps", """
            trunk M at 0, 0 mm diameter 20 mm
            trunk A at 92.000001, 0 mm diameter 14 mm
            trunk B at 0, 100 mm diameter 10 mm
            """, "A B M");
    }

    [Fact]
    public void Three_trunks_with_three_equal_gaps_are_one_finding()
    {
        Check.Expect("even-gaps", """
            trunk A at 0, 0 mm diameter 20 mm
            trunk B at 100, 0 mm diameter 14 mm
            trunk C at 50, 86.6 mm diameter 10 mm
            """, "A B C");
    }

    [Fact]
    public void It_says_all_of_it_in_whole_sentences()
    {
        var source = """
            trunk M at 0, 0 mm diameter 20 mm
            trunk A at 97, 0 mm diameter 14 mm
            trunk B at 0, 100 mm diameter 10 mm
            """;
        Assert.Equal(
            "M stands as far from A as from B: 97 mm and 100 mm, 3 % apart. Bring A nearer to M by 5 mm or more, or let the gaps stand with a reason.",
            Check.Message("even-gaps", source));
        Assert.Equal(
            "M stands as far from A as from B: 3.82 in and 3.94 in, 3 % apart. Bring A nearer to M by 0.2 in or more, or let the gaps stand with a reason.",
            Check.Message("even-gaps", source, UnitSystem.Inch));
    }

    [Theory]
    [InlineData("99.7", "100", "99.7 mm and 100 mm, 0.3 % apart", "3.93 in and 3.94 in, 0.3 % apart")]
    [InlineData("99.99", "100", "100 mm each, under 0.1 % apart", "3.937 in each, under 0.1 % apart")]
    [InlineData("100", "100", "100 mm each. Bring", "3.94 in each. Bring")]
    public void Gaps_that_differ_never_read_the_same_without_a_word_about_it(string one, string other, string millimetres, string inches)
    {
        var source = $"trunk M at 0, 0 mm diameter 20 mm\ntrunk A at {one}, 0 mm diameter 14 mm\ntrunk B at 0, {other} mm diameter 10 mm";
        Assert.Contains(millimetres, Check.Message("even-gaps", source), StringComparison.Ordinal);
        Assert.Contains(inches, Check.Message("even-gaps", source, UnitSystem.Inch), StringComparison.Ordinal);
    }
}
