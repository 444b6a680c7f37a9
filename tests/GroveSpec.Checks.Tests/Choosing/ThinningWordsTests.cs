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

    private static ThinningSuggestion Chosen(string source, int keep, string[]? with = null, string[]? without = null) =>
        Thinning.Choose(Check.Of(source).ToContext(), new(keep, keep, [.. with ?? []], [.. without ?? []]), TestContext.Current.CancellationToken).Suggestions[0];
}
