using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class NoPlaceTests
{
    [Fact]
    public void A_trunk_without_a_place_is_told()
    {
        var assessment = Planted.Under("trunk A diameter 5 mm height 90 mm");
        var finding = assessment.Only("no-place");
        Assert.Equal("A", assessment.Underlined(finding));
        Assert.Contains("tape readings to three trunks", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trunk_measured_from_one_known_place_is_free_on_a_circle()
    {
        var assessment = Planted.Under("trunk A diameter 5 mm height 90 mm\ntrunk B at 0, 0 mm diameter 5 mm height 90 mm\ntape A to B 60 mm");
        var finding = assessment.Only("no-place");
        Assert.Equal("A", assessment.Underlined(finding));
        Assert.Contains("free on a circle", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trunk_measured_from_two_known_places_has_two_left()
    {
        var assessment = Planted.Under("trunk A diameter 5 mm height 90 mm\ntrunk B at 0, 0 mm\ntrunk C at 90, 0 mm\ntape A to B 60 mm\ntape C to A 60 mm");
        var finding = assessment.Only("no-place");
        Assert.Equal("A", assessment.Underlined(finding));
        Assert.Contains("two places open", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_planned_trunk_without_a_place_is_told()
    {
        var assessment = Planted.Under("trunk A diameter 5 mm height 90 mm planned 2030");
        var finding = assessment.Only("no-place");
        Assert.Equal("A", assessment.Underlined(finding));
        Assert.Contains("It is not known where A stands", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gap_between_bark_is_not_counted_while_a_thickness_is_missing_and_that_is_said()
    {
        const string Known = "trunk B at 0, 0 mm diameter 8 mm\ntrunk C at 90, 0 mm diameter 8 mm\ntrunk D at 0, 80 mm\ntrunk A diameter 5 mm height 90 mm\n";
        var finding = Planted.Under(Known + "tape A to B 50 mm between bark\ntape A to C 60 mm between bark\ntape D to A 55 mm between bark").Only("no-place");
        Assert.Equal("It is not known where A stands: one tape reading to it between bark cannot be counted before the diameters of both trunks are known.", finding.Message);
        Assert.Equal(2, finding.Measured);
        Assert.StartsWith("It is not known where A stands: two tape readings", Planted.Under(Known + "tape A to B 50 mm between bark\ntape A to C 60 mm between bark").Only("no-place").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trunk_that_was_removed_needs_no_place() => Assert.Empty(Planted.Under("trunk A removed 2020").Found("no-place"));

    [Fact]
    public void Three_tape_readings_place_a_trunk() => Assert.Empty(Planted.Under("trunk A diameter 5 mm height 90 mm\ntrunk B at 0, 0 mm\ntrunk C at 90, 0 mm\ntrunk D at 0, 80 mm\ntape A to B 50 mm\ntape C to A 67.082 mm\ntape A to D 50 mm").Found("no-place"));

    [Fact]
    public void A_trunk_with_a_line_stands_where_its_line_begins() => Assert.Empty(Planted.Under("trunk A line (5,5,0) (5,5,90) mm").Found("no-place"));
}
