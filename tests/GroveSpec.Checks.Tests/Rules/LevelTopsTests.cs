using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

public sealed class LevelTopsTests
{
    [Fact]
    public void Three_tops_on_one_line_are_reported()
    {
        var found = Check.Expect("level-tops", """
            trunk A at -100, 0 mm diameter 20 mm height 200 mm
            trunk B at 0, 0 mm diameter 20 mm height 203 mm
            trunk C at 100, 0 mm diameter 20 mm height 200 mm
            """, "A B C");
        Assert.Contains("the tops of A, B and C lie on one line: the top of B is only 3 mm off it, over 200 mm from A to C in the view. Let B rise by 3 mm or more", Assert.Single(found).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_that_slopes_counts_as_well()
    {
        Check.Expect("level-tops", """
            trunk A at -100, 0 mm diameter 20 mm height 150 mm
            trunk B at 0, 0 mm diameter 20 mm height 200 mm
            trunk C at 100, 0 mm diameter 20 mm height 250 mm
            """, "A B C");
    }

    [Fact]
    public void A_top_that_stands_out_is_let_be()
    {
        Check.Expect("level-tops", """
            trunk A at -100, 0 mm diameter 20 mm height 200 mm
            trunk B at 0, 0 mm diameter 20 mm height 260 mm
            trunk C at 100, 0 mm diameter 20 mm height 200 mm
            """);
    }

    [Fact]
    public void At_the_very_limit_it_is_reported_and_a_nanometre_beyond_it_is_not()
    {
        Check.Expect("level-tops", """
            trunk A at -100, 0 mm diameter 20 mm height 200 mm
            trunk B at 0, 0 mm diameter 20 mm height 206 mm
            trunk C at 100, 0 mm diameter 20 mm height 200 mm
            """, "A B C");
        Check.Expect("level-tops", """
            trunk A at -100, 0 mm diameter 20 mm height 200 mm
            trunk B at 0, 0 mm diameter 20 mm height 206.000001 mm
            trunk C at 100, 0 mm diameter 20 mm height 200 mm
            """);
    }

    [Fact]
    public void It_says_all_of_it_in_whole_sentences()
    {
        var source = """
            trunk A at -100, 0 mm diameter 20 mm height 200 mm
            trunk B at 0, 0 mm diameter 20 mm height 203 mm
            trunk C at 100, 0 mm diameter 20 mm height 200 mm
            """;
        Assert.Equal(
            "Seen from the front, the tops of A, B and C lie on one line: the top of B is only 3 mm off it, over 200 mm from A to C in the view. Let B rise by 3 mm or more, or let the tops stand with a reason.",
            Check.Message("level-tops", source));
        Assert.Equal(
            "Seen from the front, the tops of A, B and C lie on one line: the top of B is only 0.12 in off it, over 7.87 in from A to C in the view. Let B rise by 0.12 in or more, or let the tops stand with a reason.",
            Check.Message("level-tops", source, UnitSystem.Inch));
    }
}
