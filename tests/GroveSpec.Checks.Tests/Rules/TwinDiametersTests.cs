using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

public sealed class TwinDiametersTests
{
    [Fact]
    public void Neighbours_of_one_size_are_reported_with_both_sizes()
    {
        var found = Check.Expect("twin-diameters", """
            trunk A at 0, 0 mm diameter 20 mm
            trunk B at 80, 30 mm diameter 19.5 mm
            """, "A B");
        Assert.Contains("A and B are neighbours of one thickness", Assert.Single(found).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Neighbours_of_different_sizes_are_let_be()
    {
        Check.Expect("twin-diameters", """
            trunk A at 0, 0 mm diameter 20 mm
            trunk B at 80, 30 mm diameter 12 mm
            """);
    }

    [Fact]
    public void Sizes_that_differ_by_just_the_limit_are_let_be_and_a_nanometre_less_is_reported()
    {
        Check.Expect("twin-diameters", """
            trunk A at 0, 0 mm diameter 20 mm
            trunk B at 80, 30 mm diameter 18.4 mm
            """);
        Check.Expect("twin-diameters", """
            trunk A at 0, 0 mm diameter 20 mm
            trunk B at 80, 30 mm diameter 18.400001 mm
            """, "A B");
    }

    [Fact]
    public void A_trunk_between_two_alike_parts_them()
    {
        Check.Expect("twin-diameters", """
            trunk A at 0, 0 mm diameter 20 mm
            trunk B at 80, 30 mm diameter 20 mm
            trunk C at 40, 15 mm diameter 12 mm
            """);
    }

    [Fact]
    public void Several_alike_are_told_together()
    {
        Check.Expect("twin-diameters", """
            trunk A at 0, 0 mm diameter 20 mm
            trunk B at 80, 30 mm diameter 20 mm
            trunk C at 160, 0 mm diameter 20 mm
            """, "A B C");
    }

    [Fact]
    public void It_says_all_of_it_in_whole_sentences()
    {
        var source = """
            trunk A at 0, 0 mm diameter 20 mm
            trunk B at 80, 30 mm diameter 19.5 mm
            """;
        Assert.Equal(
            "A and B are neighbours of one thickness: 20 mm and 19.5 mm, 2.5 % apart. Let one thicken and hold the other back until they differ by 8 %, or let them stand with a reason.",
            Check.Message("twin-diameters", source));
        Assert.Equal(
            "A and B are neighbours of one thickness: 0.79 in and 0.77 in, 2.5 % apart. Let one thicken and hold the other back until they differ by 8 %, or let them stand with a reason.",
            Check.Message("twin-diameters", source, UnitSystem.Inch));
    }

    [Theory]
    [InlineData("19.96", "20 mm each, 0.2 % apart")]
    [InlineData("20", "20 mm each. Let")]
    public void Sizes_that_read_the_same_are_said_once(string other, string range)
    {
        Assert.Contains(range, Check.Message("twin-diameters", $"trunk A at 0, 0 mm diameter 20 mm\ntrunk B at 80, 30 mm diameter {other} mm"), StringComparison.Ordinal);
    }
}
