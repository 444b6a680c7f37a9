using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class OutOfRangeTests
{
    [Fact]
    public void A_diameter_of_zero_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm diameter 0 mm");
        var finding = assessment.Only("out-of-range");
        Assert.Equal("0 mm", assessment.Underlined(finding));
        Assert.Contains("must be above zero", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_negative_height_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm height -5 mm");
        var finding = assessment.Only("out-of-range");
        Assert.Equal("-5 mm", assessment.Underlined(finding));
        Assert.Contains("must be above zero", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lean_of_ninety_degrees_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm lean 90 deg toward 0 deg");
        var finding = assessment.Only("out-of-range");
        Assert.Equal("90 deg", assessment.Underlined(finding));
        Assert.Contains("not including 90 deg", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lean_of_four_hundred_degrees_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm lean 400 deg toward 0 deg");
        var finding = assessment.Only("out-of-range");
        Assert.Equal("400 deg", assessment.Underlined(finding));
        Assert.Contains("400 deg", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_latitude_beyond_the_pole_is_told()
    {
        var assessment = Planted.Under("site latitude 91 N");
        var finding = assessment.Only("out-of-range");
        Assert.Equal("91", assessment.Underlined(finding));
        Assert.Contains("-90 up to 90", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_zone_of_fourteen_is_told()
    {
        var assessment = Planted.Under("site zone 14a");
        var finding = assessment.Only("out-of-range");
        Assert.Equal("14a", assessment.Underlined(finding));
        Assert.Contains("from 1 to 13", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_beyond_a_kilometre_is_told()
    {
        var assessment = Planted.Under("trunk A at 1000000000000, 0 mm");
        var finding = assessment.Only("out-of-range");
        Assert.Equal("1000000000000", assessment.Underlined(finding));
        Assert.Contains("beyond the 1 km", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_year_zero_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm raised 0000");
        var finding = assessment.Only("out-of-range");
        Assert.Equal("0000", assessment.Underlined(finding));
        Assert.Contains("years run from 1 to 9998", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_year_99999_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm planned 99999");
        var finding = assessment.Only("out-of-range");
        Assert.Equal("99999", assessment.Underlined(finding));
        Assert.Contains("years run from 1 to 9998", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_zero_days_is_told()
    {
        var assessment = Planted.Under("task T feed on all every 0 days");
        var finding = assessment.Only("out-of-range");
        Assert.Equal("0 days", assessment.Underlined(finding));
        Assert.Contains("from 1 to", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tape_of_zero_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm\ntrunk B at 9, 0 mm\ntape A to B 0 mm");
        var finding = assessment.Only("out-of-range");
        Assert.Equal("0 mm", assessment.Underlined(finding));
        Assert.Contains("must be above zero", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tape_from_a_trunk_to_itself_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm\ntape A to A 5 mm");
        var finding = assessment.Only("out-of-range");
        Assert.Equal("A", assessment.Underlined(finding));
        Assert.Contains("to itself", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Eleven_monthly_means_are_told()
    {
        var assessment = Planted.Under("site means 1 2 3 4 5 6 7 8 9 10 11 C");
        var finding = assessment.Only("out-of-range");
        Assert.Equal("means 1 2 3 4 5 6 7 8 9 10 11 C", assessment.Underlined(finding));
        Assert.Contains("a year has twelve", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_repeat_until_the_year_9999_is_told()
    {
        var assessment = Planted.Under("task T feed on all every 1 day until 9999");
        var finding = assessment.Only("out-of-range");
        Assert.Equal("9999", assessment.Underlined(finding));
        Assert.Contains("years run from 1 to 9998", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_poles_are_places() => Assert.Empty(Planted.Under("site latitude 90 N").Found("out-of-range"));

    [Fact]
    public void A_lean_just_under_ninety_degrees_is_taken() => Assert.Empty(Planted.Under("trunk A at 0, 0 mm lean 89.999 deg toward 0 deg").Found("out-of-range"));

    [Fact]
    public void A_place_a_kilometre_away_is_taken() => Assert.Empty(Planted.Under("trunk A at 1000, -1000 m").Found("out-of-range"));

    [Fact]
    public void A_frost_in_the_tropics_is_taken() => Assert.Empty(Planted.Under("site latitude 0, last frost 2 May, first frost 9 Nov").Found("out-of-range"));

    [Fact]
    public void The_last_year_is_taken() => Assert.Empty(Planted.Under("task T feed on all every 1 day until 9998").Found("out-of-range"));
}
