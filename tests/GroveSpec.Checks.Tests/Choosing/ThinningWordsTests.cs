using GroveSpec.Checks.Choosing;
using Xunit;

namespace GroveSpec.Checks.Tests.Choosing;

/// <summary>What is said of choices of trunks.</summary>
public sealed class ThinningWordsTests
{
    /// <summary>Two lead, and the thicker is not the first by name.</summary>
    private const string TwoLeads = """
        planting "Main of two leads"
        habit group
        container oval 600 x 400 x 40 mm
        viewed from 180 deg, at 1200 mm, eye 160 mm
        trunk stern at -68, -10 mm diameter 48 mm height 470 mm role lead
        trunk boom at -10, -91 mm diameter 36 mm height 400 mm role lead
        trunk spar at 111, 43 mm diameter 26 mm height 330 mm role crew
        trunk oar at 99, -65 mm diameter 19 mm height 270 mm role crew
        role lead { rank 1 }
        role crew { vigour push }

        """;

    [Fact]
    public void Of_several_that_play_the_main_role_the_thickest_that_stays_is_the_main_trunk()
    {
        var stand = Chosen(TwoLeads, 3, with: ["boom", "stern"]);
        Assert.Equal("stern", stand.Stand.Main);
        Assert.Contains("stern stays as the main trunk", stand.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_two_as_thick_the_higher_is_the_main_trunk() =>
        Assert.Equal("stern", Chosen(TwoLeads.Replace("diameter 36 mm", "diameter 48 mm", StringComparison.Ordinal), 3, with: ["boom", "stern"]).Stand.Main);

    [Fact]
    public void Where_the_main_trunk_goes_the_next_takes_its_place_and_both_are_named()
    {
        var stand = Chosen(TwoLeads, 3, without: ["stern"]);
        Assert.Equal("boom", stand.Stand.Main);
        Assert.Contains("boom becomes the main trunk in place of stern", stand.Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(new[] { "stern" }, "nobody is left in the role crew")]
    [InlineData(new[] { "spar" }, "nobody is left in the role lead")]
    public void A_role_that_nobody_plays_any_more_is_named_as_a_role(string[] with, string expected) =>
        Assert.Contains(expected, Chosen(TwoLeads, 1, with).Why, StringComparison.Ordinal);

    [Fact]
    public void Where_nothing_is_found_now_that_is_said_in_words()
    {
        var muted = string.Concat(Catalogue.All.Where(check => check.IsComposition && check.Name != "even-count").Select(check => $"mute {check.Name} because \"one at a time\"\n"));
        var three = TwoLeads.Replace("trunk oar", "# trunk oar", StringComparison.Ordinal) + muted;
        Assert.StartsWith("The checks of composition then find 1 (even-count), where now they find nothing; ", Chosen(three, 2).Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(300, 0, "the gap between neighbours is 200 mm")]
    [InlineData(301, 0, "gaps run from 200 mm to 201 mm")]
    public void Gaps_that_are_all_the_same_are_told_once(double x, double y, string expected) =>
        Assert.Contains(expected, Chosen(FormattableString.Invariant($"trunk A at -100, 0 mm diameter 30 mm\ntrunk B at 100, 0 mm diameter 20 mm\ntrunk C at {x}, {y} mm diameter 15 mm\ntrunk D at 0, 150 mm diameter 9 mm\n"), 3, without: ["D"]).Why, StringComparison.Ordinal);

    [Fact]
    public void An_accept_that_names_a_trunk_which_goes_is_told_and_no_other()
    {
        var source = TwoLeads + "accept three-in-line stern spar oar because \"they do\"\naccept even-gaps boom spar oar because \"it is a wall\"\n";
        var stand = Chosen(source, 3, without: ["stern"]).Stand;
        Assert.Equal(
            ["The file accepts three-in-line of stern, spar and oar, and with stern taken out that lets nothing stand any more: take that line out as well, or check hints at it (stale-accept)."],
            ThinningWords.Unneeded(Check.Of(source).Planting, stand));
        Assert.Empty(ThinningWords.Unneeded(Check.Of(TwoLeads).Planting, stand));
    }

    [Fact]
    public void Trunks_are_told_in_the_order_in_which_a_grower_counts()
    {
        var source = string.Concat(new[] { 1, 2, 10, 11 }.Select(number => FormattableString.Invariant($"trunk T{number} at {(number * 37) - 200}, {number * number % 31} mm diameter {5 + number} mm\n")));
        Assert.StartsWith("Keep T2, T10 and T11; take out T1.", ThinningWords.Order(Chosen(source, 3, without: ["T1"]).Stand), StringComparison.Ordinal);
    }

    private static ThinningSuggestion Chosen(string source, int keep, string[]? with = null, string[]? without = null) =>
        Thinning.Choose(Check.Of(source).ToContext(), new(keep, keep, [.. with ?? []], [.. without ?? []]), cancellation: TestContext.Current.CancellationToken).Suggestions[0];
}
