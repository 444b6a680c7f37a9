using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class ContradictionTests
{
    [Fact]
    public void A_girth_that_disagrees_with_the_diameter_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm diameter 30 mm girth 60 mm");
        var finding = assessment.Only("contradiction");
        Assert.Equal("girth 60 mm", assessment.Underlined(finding));
        Assert.Contains("by its girth", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trunk_removed_before_it_is_planned_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm planned 2028 removed 2027-03");
        var finding = assessment.Only("contradiction");
        Assert.Equal("removed 2027-03", assessment.Underlined(finding));
        Assert.Contains("removed before it is planned", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trunk_removed_before_it_was_raised_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm raised 2020 removed 2014");
        var finding = assessment.Only("contradiction");
        Assert.Equal("removed 2014", assessment.Underlined(finding));
        Assert.Contains("before the year in which it was raised", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_last_frost_after_the_first_is_told_in_the_north()
    {
        var assessment = Planted.Under("site latitude 54 N, last frost 2 Nov, first frost 9 May");
        var finding = assessment.Only("contradiction");
        Assert.Equal("first frost 9 May", assessment.Underlined(finding));
        Assert.Contains("turn them round", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_last_frost_before_the_first_is_told_in_the_south()
    {
        var assessment = Planted.Under("site latitude 41 S, last frost 2 May, first frost 9 Nov");
        var finding = assessment.Only("contradiction");
        Assert.Equal("first frost 9 Nov", assessment.Underlined(finding));
        Assert.Contains("turn them round", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Frosts_turned_round_without_a_latitude_are_told()
    {
        var assessment = Planted.Under("site last frost 2 Nov, first frost 9 May");
        var finding = assessment.Only("contradiction");
        Assert.Equal("first frost 9 May", assessment.Underlined(finding));
        Assert.Contains("give the latitude", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_minus_sign_with_a_letter_is_told()
    {
        var assessment = Planted.Under("site latitude -66.6 S");
        var finding = assessment.Only("contradiction");
        Assert.Equal("latitude -66.6 S", assessment.Underlined(finding));
        Assert.Contains("write 66.6 S", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_aim_above_the_limit_of_its_role_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm role main\nrole main { aim diameter 30 mm by 2030 keep diameter under 22 mm }");
        var finding = assessment.Only("contradiction");
        Assert.Equal("aim diameter 30 mm by 2030", assessment.Underlined(finding));
        Assert.Contains("kept under 22 mm", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lean_beside_a_line_is_told()
    {
        var assessment = Planted.Under("trunk A lean 7 deg toward 90 deg line (0,0,0) (10,0,100) mm");
        var finding = assessment.Only("contradiction");
        Assert.Equal("lean 7 deg toward 90 deg", assessment.Underlined(finding));
        Assert.Contains("a lean and a line", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_girth_that_agrees_is_not_told() => Assert.Empty(Planted.Under("trunk A at 0, 0 mm diameter 28 mm girth 88 mm").Found("contradiction"));

    [Fact]
    public void Frosts_of_the_south_are_taken() => Assert.Empty(Planted.Under("site latitude -41.3, last frost 2 Oct, first frost 9 May").Found("contradiction"));

    [Fact]
    public void A_trunk_planned_and_later_removed_is_taken() => Assert.Empty(Planted.Under("trunk A at 0, 0 mm planned 2027 removed 2028").Found("contradiction"));
}
