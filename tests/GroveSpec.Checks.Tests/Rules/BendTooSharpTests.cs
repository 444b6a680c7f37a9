using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

/// <summary>The strain of a bent round bar is D / 2R, with R the bend's length over its angle.</summary>
public sealed class BendTooSharpTests
{
    private const string Name = "bend-too-sharp";
    private const string Limit = "profile carpinus-betulus {\n  bend-limit 1.5 % from memory\n}";

    // The trunk has 17.0512 mm where it is bent: by 12° (0.20944) over L the strain is 1.7856 mm / L, so that 1.5 % comes at 119.04 mm.
    [Theory]
    [InlineData("119 mm", 1)]
    [InlineData("119.1 mm", 0)]
    public void The_limit_of_the_profile_is_the_limit(string over, int count) =>
        Assert.Equal(count, Check.Findings(Name, Of($"bend 12 deg toward 90 deg over {over}")).Length);

    [Fact]
    public void It_says_what_was_measured_and_the_remedy_spreads_the_bend()
    {
        var source = Of("bend 24 deg toward 275 deg over 100 mm");
        var finding = CareSource.Hit(Name, source);
        Assert.Equal(
            "W (wire) bends A, 17 mm thick there, by 24 deg over 100 mm: the outer fibres are stretched by 3.57 %, past the 1.5 % that the profile of carpinus-betulus gives. Spread it over 239 mm or more, or go there in 3 passes, each held until it has set. Living wood differs from tree to tree, and no figure makes a bend safe.",
            finding.Message);
        Assert.Equal("spread the bend over 239 mm", finding.Remedies[0].Title);
        var mended = CareSource.Mended(source, finding.Remedies[0]);
        Assert.Contains("bend 24 deg toward 275 deg over 239 mm", mended, StringComparison.Ordinal);
        CareSource.Miss(Name, mended);
    }

    [Fact]
    public void A_bend_that_no_length_of_the_trunk_can_spread_is_bent_less()
    {
        var finding = CareSource.Hit(Name, Of("bend 90 deg toward 90 deg over 100 mm"));
        Assert.Contains("Even the whole trunk is too short to spread it, for that takes 893 mm: bend it less, or go there in 9 passes", finding.Message, StringComparison.Ordinal);
        Assert.StartsWith("let bend-too-sharp", Assert.Single(finding.Remedies).Title, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bend_without_a_length_is_spread_over_the_wired_part()
    {
        CareSource.Hit(Name, Of("bend 24 deg toward 90 deg"));
        CareSource.Miss(Name, Of("bend 9 deg toward 90 deg"));
    }

    [Fact]
    public void A_species_without_a_limit_is_not_judged() =>
        CareSource.Miss(Name, WireSource.Of("with aluminium 5.5 mm, span 100 to 200 mm, bend 90 deg toward 90 deg over 20 mm"));

    [Fact]
    public void No_bend_at_all_is_not_judged() => CareSource.Miss(Name, Of("bend 0 deg toward 90 deg over 100 mm"));

    private static string Of(string bend) => WireSource.Of($"with aluminium 5.5 mm, span 100 to 200 mm, {bend}", before: Limit);
}
