using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

public sealed class TouchingTests
{
    [Fact]
    public void Trunks_that_stand_in_each_other_are_an_error()
    {
        var found = Check.Expect("touching", """
            trunk A at 0, 0 mm diameter 24 mm
            trunk B at 15, 0 mm diameter 16 mm
            """, "A B");
        Assert.Equal(Severity.Error, Assert.Single(found).Severity);
        Assert.Contains("their centres are 15 mm apart and their radii add up to 20 mm, so the bark would overlap by 5 mm", found[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Trunks_apart_are_let_be()
    {
        Check.Expect("touching", """
            trunk A at 0, 0 mm diameter 24 mm
            trunk B at 50, 0 mm diameter 16 mm
            """);
    }

    [Fact]
    public void Bark_that_just_meets_is_reported_and_a_nanometre_of_air_is_not()
    {
        Check.Expect("touching", """
            trunk A at 0, 0 mm diameter 24 mm
            trunk B at 20, 0 mm diameter 16 mm
            """, "A B");
        Check.Expect("touching", """
            trunk A at 0, 0 mm diameter 24 mm
            trunk B at 20.000001, 0 mm diameter 16 mm
            """);
    }

    [Fact]
    public void In_a_clump_bark_may_meet_but_no_centre_stand_within_another_trunk()
    {
        var clump = Check.Head.Replace("habit group", "habit clump", StringComparison.Ordinal);
        Check.Expect("touching", clump + "trunk A at 0, 0 mm diameter 24 mm\ntrunk B at 15, 0 mm diameter 16 mm");
        Check.Expect("touching", clump + "trunk A at 0, 0 mm diameter 24 mm\ntrunk B at 12, 0 mm diameter 16 mm", "A B");
    }

    [Fact]
    public void Trunks_at_one_place_are_told_so_and_no_line_or_gap_besides()
    {
        var source = "trunk A at 0, 0 mm diameter 24 mm\ntrunk B at 0, 0 mm diameter 16 mm\ntrunk C at 100, 0 mm diameter 10 mm";
        Assert.Contains("A stand at the very same place", Assert.Single(Check.Expect("touching", source, "A B")).Message, StringComparison.Ordinal);
        Check.Expect("three-in-line", source);
        Check.Expect("even-gaps", source);
    }

    [Fact]
    public void It_says_all_of_it_in_whole_sentences()
    {
        var source = """
            trunk A at 0, 0 mm diameter 24 mm
            trunk B at 15, 0 mm diameter 16 mm
            """;
        Assert.Equal(
            "B and A stand in each other: their centres are 15 mm apart and their radii add up to 20 mm, so the bark would overlap by 5 mm. Part them, or measure both again.",
            Check.Message("touching", source));
        Assert.Equal(
            "B and A stand in each other: their centres are 0.59 in apart and their radii add up to 0.79 in, so the bark would overlap by 0.2 in. Part them, or measure both again.",
            Check.Message("touching", source, UnitSystem.Inch));
    }
}
