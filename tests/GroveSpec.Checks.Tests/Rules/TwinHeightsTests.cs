using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

public sealed class TwinHeightsTests
{
    [Fact]
    public void Neighbours_of_one_size_are_reported_with_both_sizes()
    {
        var found = Check.Expect("twin-heights", """
            trunk A at 0, 0 mm height 200 mm
            trunk B at 80, 30 mm height 196 mm
            """, "A B");
        Assert.Contains("A and B are neighbours of one height", Assert.Single(found).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Neighbours_of_different_sizes_are_let_be()
    {
        Check.Expect("twin-heights", """
            trunk A at 0, 0 mm height 200 mm
            trunk B at 80, 30 mm height 120 mm
            """);
    }

    [Fact]
    public void Sizes_that_differ_by_just_the_limit_are_let_be_and_a_nanometre_less_is_reported()
    {
        Check.Expect("twin-heights", """
            trunk A at 0, 0 mm height 200 mm
            trunk B at 80, 30 mm height 184 mm
            """);
        Check.Expect("twin-heights", """
            trunk A at 0, 0 mm height 200 mm
            trunk B at 80, 30 mm height 184.000001 mm
            """, "A B");
    }

    [Fact]
    public void A_trunk_between_two_alike_parts_them()
    {
        Check.Expect("twin-heights", """
            trunk A at 0, 0 mm height 200 mm
            trunk B at 80, 30 mm height 200 mm
            trunk C at 40, 15 mm height 120 mm
            """);
    }

    [Fact]
    public void Several_alike_are_told_together()
    {
        Check.Expect("twin-heights", """
            trunk A at 0, 0 mm height 200 mm
            trunk B at 80, 30 mm height 200 mm
            trunk C at 160, 0 mm height 200 mm
            """, "A B C");
    }

    [Fact]
    public void It_says_all_of_it_in_whole_sentences()
    {
        var source = """
            trunk A at 0, 0 mm height 200 mm
            trunk B at 80, 30 mm height 196 mm
            """;
        Assert.Equal(
            "A and B are neighbours of one height: 200 mm and 196 mm, 2 % apart. Cut one back or let another run up until they differ by 8 %, or let them stand with a reason.",
            Check.Message("twin-heights", source));
        Assert.Equal(
            "A and B are neighbours of one height: 7.87 in and 7.72 in, 2 % apart. Cut one back or let another run up until they differ by 8 %, or let them stand with a reason.",
            Check.Message("twin-heights", source, UnitSystem.Inch));
    }
}
