using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

public sealed class EvenGapsInViewTests
{
    // A stands 150 mm behind the picture plane of an eye 1500 mm off: it is seen at -110 · 1500/1650 = -100 mm.
    [Fact]
    public void Gaps_alike_in_the_view_are_reported_though_they_differ_from_above()
    {
        var found = Check.Expect("even-gaps-in-view", """
            trunk A at -110, 150 mm diameter 20 mm
            trunk M at 0, 0 mm diameter 14 mm
            trunk B at 97, 0 mm diameter 10 mm
            """, "A B M");
        Assert.Contains("gaps of 100 mm and 97 mm in the view, 3 % apart", Assert.Single(found).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Gaps_well_apart_in_the_view_are_let_be()
    {
        Check.Expect("even-gaps-in-view", """
            trunk A at -110, 150 mm diameter 20 mm
            trunk M at 0, 0 mm diameter 14 mm
            trunk B at 70, 0 mm diameter 10 mm
            """);
    }

    [Fact]
    public void Gaps_that_differ_by_just_the_limit_are_let_be_and_a_nanometre_less_is_reported()
    {
        Check.Expect("even-gaps-in-view", """
            trunk A at -110, 150 mm diameter 20 mm
            trunk M at 0, 0 mm diameter 14 mm
            trunk B at 92, 0 mm diameter 10 mm
            """);
        Check.Expect("even-gaps-in-view", """
            trunk A at -110, 150 mm diameter 20 mm
            trunk M at 0, 0 mm diameter 14 mm
            trunk B at 92.000001, 0 mm diameter 10 mm
            """, "A B M");
    }

    [Fact]
    public void Gaps_that_are_even_from_above_as_well_are_told_by_even_gaps_alone()
    {
        Check.Expect("even-gaps-in-view", """
            trunk A at -100, 0 mm diameter 20 mm
            trunk M at 0, 0 mm diameter 14 mm
            trunk B at 100, 0 mm diameter 10 mm
            """);
        Check.Expect("even-gaps", """
            trunk A at -100, 0 mm diameter 20 mm
            trunk M at 0, 0 mm diameter 14 mm
            trunk B at 100, 0 mm diameter 10 mm
            """, "A B M");
    }

    [Fact]
    public void It_says_all_of_it_in_whole_sentences()
    {
        var source = """
            trunk A at -110, 150 mm diameter 20 mm
            trunk M at 0, 0 mm diameter 14 mm
            trunk B at 97, 0 mm diameter 10 mm
            """;
        Assert.Equal(
            "Seen from the front, M stands midway between A and B: gaps of 100 mm and 97 mm in the view, 3 % apart. Move M to the viewer's right by 3 mm or more, or let the gaps stand with a reason.",
            Check.Message("even-gaps-in-view", source));
        Assert.Equal(
            "Seen from the front, M stands midway between A and B: gaps of 3.94 in and 3.82 in in the view, 3 % apart. Move M to the viewer's right by 0.12 in or more, or let the gaps stand with a reason.",
            Check.Message("even-gaps-in-view", source, UnitSystem.Inch));
    }
}
