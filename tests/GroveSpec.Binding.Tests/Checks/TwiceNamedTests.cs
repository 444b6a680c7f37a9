using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class TwiceNamedTests
{
    [Fact]
    public void The_second_trunk_of_a_name_is_left_out()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm\ntrunk A at 50, 0 mm");
        var finding = assessment.Only("twice-named");
        Assert.Equal("A", assessment.Underlined(finding));
        Assert.Contains("There is a trunk A already", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_second_role_of_a_name_is_left_out()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm role main\nrole main { rank 1 }\nrole main { rank 2 }");
        var finding = assessment.Only("twice-named");
        Assert.Equal("main", assessment.Underlined(finding));
        Assert.Contains("There is a role main already", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_second_task_of_a_name_is_left_out()
    {
        var assessment = Planted.Under("task T repot on all in spring 2027\ntask T feed on all in spring 2028");
        var finding = assessment.Only("twice-named");
        Assert.Equal("T", assessment.Underlined(finding));
        Assert.Contains("There is a task T already", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_letters_stored_in_another_way_are_the_same_name()
    {
        var assessment = Planted.Under("trunk \u00E9 at 0, 0 mm\ntrunk e\u0301 at 50, 0 mm");
        var finding = assessment.Only("twice-named");
        Assert.Equal("e\u0301", assessment.Underlined(finding));
        Assert.Contains("accents stored in another way", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trunk_a_role_and_a_task_may_share_a_name() => Assert.Empty(Planted.Under("trunk A at 0, 0 mm role A\nrole A { rank 1 }\ntask A repot on all in spring 2027").Found("twice-named"));

    [Fact]
    public void The_first_holds_and_is_the_related_place()
    {
        var assessment = Planted.Under("trunk A at 1, 0 mm\ntrunk A at 50, 0 mm\n");
        Assert.Equal(1, Assert.Single(assessment.Planting.Trunks).At!.Value.Value.X.Millimetres);
        var related = Assert.Single(assessment.Only("twice-named").Related);
        Assert.True(related.Place.Span < assessment.Only("twice-named").Place.Span);
    }

    [Theory]
    [InlineData("trunk A at 0, 0 mm\ntrunk A at 50, 0 mm\ntrunk A2 at 90, 0 mm", "call it A3")]
    [InlineData("trunk T1 at 0, 0 mm\ntrunk T1 at 50, 0 mm\ntrunk T2 at 90, 0 mm", "call it T3")]
    [InlineData("role main { rank 1 }\nrole main { rank 2 }\ntrunk A at 0, 0 mm role main", "call it main2")]
    [InlineData("task W1 repot on all in spring 2027\ntask W1 feed on all in spring 2028\ntask W2 feed on all in spring 2029", "call it W3")]
    [InlineData("trunk \u00E9 at 0, 0 mm\ntrunk e\u0301 at 50, 0 mm\ntrunk \u00E92 at 90, 0 mm", "call it e\u03013")]
    public void The_second_is_offered_the_next_name_that_is_free(string text, string title)
    {
        var assessment = Planted.Under(text);
        var finding = assessment.Only("twice-named");
        Assert.Equal(title, Assert.Single(finding.Remedies).Title);
        Assert.Empty(Planted.Of(assessment.Mended(finding)).Found("twice-named"));
    }

    [Fact]
    public void Several_of_one_name_are_offered_names_of_their_own()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm\ntrunk A at 50, 0 mm\ntrunk A at 90, 0 mm\ntrunk A at 130, 9 mm");
        Assert.Equal(["call it A2", "call it A3", "call it A4"], assessment.Found("twice-named").Select(finding => finding.Remedies[0].Title));
    }
}
