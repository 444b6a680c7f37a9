using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

public sealed class ThreeInLineTests
{
    [Fact]
    public void A_rod_through_three_trunks_is_reported_once_with_its_offset_and_what_to_do()
    {
        var found = Check.Expect("three-in-line", """
            trunk A at -100, 0 mm diameter 20 mm
            trunk B at 0, 4 mm diameter 20 mm
            trunk C at 100, 0 mm diameter 20 mm
            """, "A B C");
        var finding = Assert.Single(found);
        Assert.Contains("A, B and C stand in line: B stands only 4 mm off the straight line from A to C", finding.Message, StringComparison.Ordinal);
        Assert.Contains("within 20 % of each trunk's radius", finding.Message, StringComparison.Ordinal);
        Assert.Contains("Move B by 7 mm or more square to the line, to the back", finding.Message, StringComparison.Ordinal);
        Assert.Contains("with 3 trunks in this container", finding.Message, StringComparison.Ordinal);
        Assert.Equal(0.2, finding.Measured!.Value, 9);
        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Equal(2, finding.Related.Length);
    }

    [Fact]
    public void A_triangle_is_no_line()
    {
        Check.Expect("three-in-line", """
            trunk A at -100, 0 mm diameter 20 mm
            trunk B at 0, 60 mm diameter 20 mm
            trunk C at 100, 0 mm diameter 20 mm
            """);
    }

    [Fact]
    public void At_the_very_limit_it_is_reported_and_a_nanometre_beyond_it_is_not()
    {
        Check.Expect("three-in-line", """
            trunk A at -100, 0 mm diameter 20 mm
            trunk B at 0, 10 mm diameter 20 mm
            trunk C at 100, 0 mm diameter 20 mm
            """, "A B C");
        Check.Expect("three-in-line", """
            trunk A at -100, 0 mm diameter 20 mm
            trunk B at 0, 10.000001 mm diameter 20 mm
            trunk C at 100, 0 mm diameter 20 mm
            """);
    }

    [Fact]
    public void The_limit_can_be_set_for_a_file()
    {
        Check.Expect("three-in-line", """
            trunk A at -100, 0 mm diameter 20 mm
            trunk B at 0, 10 mm diameter 20 mm
            trunk C at 100, 0 mm diameter 20 mm
            tolerance three-in-line 0.4
            """);
        Check.Expect("three-in-line", """
            trunk A at -100, 0 mm diameter 20 mm
            trunk B at 0, 8 mm diameter 20 mm
            trunk C at 100, 0 mm diameter 20 mm
            tolerance three-in-line 0.4
            """, "A B C");
    }

    [Fact]
    public void Trunks_that_are_planned_or_removed_make_no_line()
    {
        Check.Expect("three-in-line", """
            trunk A at -100, 0 mm diameter 20 mm
            trunk B at 0, 2 mm diameter 20 mm
            trunk C at 100, 0 mm diameter 20 mm planned spring 2028
            """);
        Check.Expect("three-in-line", """
            trunk A at -100, 0 mm diameter 20 mm
            trunk B at 0, 2 mm diameter 20 mm
            trunk D at 0, 150 mm diameter 20 mm
            trunk C at 100, 0 mm diameter 20 mm removed 2020-03-01
            """);
    }

    [Fact]
    public void In_a_clump_nobody_is_told_to_move_a_trunk()
    {
        var source = Check.Head.Replace("habit group", "habit clump", StringComparison.Ordinal) + """
            trunk A at -100, 0 mm diameter 20 mm
            trunk B at 0, 2 mm diameter 20 mm
            trunk C at 100, 0 mm diameter 20 mm
            """;
        Assert.Contains("Their bases cannot be moved", Assert.Single(Check.Findings("three-in-line", source)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Inches_are_spoken_where_inches_are_asked_for()
    {
        var found = Check.Of("""
            trunk A at -100, 0 mm diameter 20 mm
            trunk B at 0, 4 mm diameter 20 mm
            trunk C at 100, 0 mm diameter 20 mm
            """, Model.Quantities.UnitSystem.Inch).Findings;
        Assert.Contains(found, finding => finding.Check.Name == "three-in-line" && finding.Message.Contains("0.16 in off", StringComparison.Ordinal));
    }

    [Fact]
    public void It_says_all_of_it_in_whole_sentences()
    {
        var source = """
            trunk A at -100, 0 mm diameter 20 mm
            trunk B at 0, 4 mm diameter 20 mm
            trunk C at 100, 0 mm diameter 20 mm
            """;
        Assert.Equal(
            "A, B and C stand in line: B stands only 4 mm off the straight line from A to C, so that one rod would pass within 20 % of each trunk's radius of its centre. Move B by 7 mm or more square to the line, to the back, or let the line stand with a reason. Chance alone would give about 0.1 such lines with 3 trunks in this container.",
            Check.Message("three-in-line", source));
        Assert.Equal(
            "A, B and C stand in line: B stands only 0.16 in off the straight line from A to C, so that one rod would pass within 20 % of each trunk's radius of its centre. Move B by 0.28 in or more square to the line, to the back, or let the line stand with a reason. Chance alone would give about 0.1 such lines with 3 trunks in this container.",
            Check.Message("three-in-line", source, UnitSystem.Inch));
    }
}
