using Xunit;

namespace GroveSpec.Checks.Tests;

/// <summary>Who counts as a neighbour, as the checks that ask for neighbours show it.</summary>
public sealed class NeighbourReachTests
{
    // Of eight trunks six have their nearest 40 mm off, so that the median is 40 and the reach 100 mm. E, F and G stand in
    // line, F as far from G as, but for 3 mm, from H, and F and G are equally thick and high.
    private static string Stand(string x) => $"""
        trunk A at 0, 0 mm diameter 40 mm height 400 mm
        trunk B at 40, 0 mm diameter 34 mm height 340 mm
        trunk C at 40, 40 mm diameter 29 mm height 290 mm
        trunk D at 80, 40 mm diameter 25 mm height 250 mm
        trunk E at 80, 80 mm diameter 16 mm height 160 mm
        trunk F at 120, 80 mm diameter 20 mm height 200 mm
        trunk G at {x}, 80 mm diameter 20 mm height 200 mm
        trunk H at 120, 177 mm diameter 13 mm height 130 mm
        """;

    [Theory]
    [InlineData("three-in-line", "E F G")]
    [InlineData("even-gaps", "F G H")]
    [InlineData("twin-diameters", "F G")]
    [InlineData("twin-heights", "F G")]
    public void From_seven_trunks_on_a_gap_of_two_and_a_half_times_the_median_counts_and_a_nanometre_more_does_not(string check, string trunks)
    {
        Assert.Contains(trunks, Told(check, Stand("220")));
        Assert.DoesNotContain(trunks, Told(check, Stand("220.000001")));
    }

    [Theory]
    [InlineData("three-in-line", "E F G")]
    [InlineData("even-gaps", "F G H")]
    [InlineData("twin-diameters", "F G")]
    [InlineData("twin-heights", "F G")]
    public void With_six_trunks_the_same_gap_may_be_of_any_length(string check, string trunks)
    {
        // Without A and B six are left.
        var six = string.Join('\n', Stand("220.000001").Split('\n').Skip(2));
        Assert.Contains(trunks, Told(check, six));
    }

    [Fact]
    public void With_the_seventh_trunk_a_line_over_a_trunk_between_no_longer_counts()
    {
        const string row = """
            trunk A at 0, 0 mm diameter 20 mm
            trunk B at 60, 1 mm diameter 20 mm
            trunk C at 120, 0 mm diameter 20 mm
            trunk D at 180, 1 mm diameter 20 mm
            trunk E at 20, 70 mm diameter 20 mm
            trunk F at 95, 90 mm diameter 20 mm

            """;
        Check.Expect("three-in-line", row, "A B C", "A B D", "A C D", "B C D");
        Check.Expect("three-in-line", row + "trunk G at 165, 75 mm diameter 20 mm", "A B C", "B C D");

        // One that is planned, or removed, is none of the seven.
        Check.Expect("three-in-line", row + "trunk G at 165, 75 mm diameter 20 mm planned spring 2040", "A B C", "A B D", "A C D", "B C D");
    }

    private static IEnumerable<string> Told(string check, string source) =>
        Check.Findings(check, "planting \"Reach\"\nhabit group\nspecies larix-kaempferi\nviewed from 180 deg, at 1500 mm, eye 200 mm\n" + source).Select(finding => string.Join(' ', finding.Trunks));
}
