using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

public sealed class OffContainerTests
{
    [Fact]
    public void Bark_past_the_rim_is_an_error_with_how_far_it_reaches()
    {
        var found = Check.Expect("off-container", """
            trunk A at 294, 0 mm diameter 20 mm
            """, "A");
        Assert.Equal(Severity.Error, Assert.Single(found).Severity);
        Assert.Contains("The bark of A reaches 4 mm past the rim", found[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trunk_outside_is_told_so()
    {
        Assert.Contains("A stands outside the container, and its bark reaches 60 mm past the rim", Assert.Single(Check.Expect("off-container", "trunk A at 350, 0 mm diameter 20 mm", "A")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trunk_inside_is_let_be()
    {
        Check.Expect("off-container", """
            trunk A at 200, 0 mm diameter 20 mm
            """);
    }

    [Fact]
    public void Bark_that_just_meets_the_rim_is_let_be_and_a_nanometre_beyond_is_reported()
    {
        Check.Expect("off-container", """
            trunk A at 290, 0 mm diameter 20 mm
            """);
        Check.Expect("off-container", """
            trunk A at 290.000001, 0 mm diameter 20 mm
            """, "A");
    }

    [Fact]
    public void It_says_all_of_it_in_whole_sentences()
    {
        var source = """
            trunk A at 294, 0 mm diameter 20 mm
            """;
        Assert.Equal(
            "The bark of A reaches 4 mm past the rim. Move it inward by as much and room for its roots, or measure its place and thickness again.",
            Check.Message("off-container", source));
        Assert.Equal(
            "The bark of A reaches 0.16 in past the rim. Move it inward by as much and room for its roots, or measure its place and thickness again.",
            Check.Message("off-container", source, UnitSystem.Inch));
    }

    [Theory]
    [InlineData("round 400 x 40 mm", "190, 0 mm diameter 20 mm", "190.000001, 0 mm diameter 20 mm")]
    [InlineData("round 400 x 40 mm", "114, -152 mm diameter 20 mm", "114.000001, -152 mm diameter 20 mm")]
    [InlineData("oval 600 x 400 x 40 mm", "-290, 0 mm diameter 20 mm", "-290.000001, 0 mm diameter 20 mm")]
    [InlineData("oval 600 x 400 x 40 mm", "0, 190 mm diameter 20 mm", "0, 190.000001 mm diameter 20 mm")]
    [InlineData("oval 900 x 500 x 40 mm", "265, 188 mm diameter 26 mm", "265.000001, 188.000001 mm diameter 26 mm")]
    [InlineData("oval 500 x 900 x 40 mm", "-188, 265 mm diameter 26 mm", "-188.000001, 265.000001 mm diameter 26 mm")]
    public void In_a_round_or_an_oval_bark_that_just_meets_the_rim_is_let_be_and_a_nanometre_beyond_is_reported(string container, string just, string beyond)
    {
        var head = RimWalk.Head(container);
        Check.Expect("off-container", $"{head}trunk A at {just}");
        Check.Expect("off-container", $"{head}trunk A at {beyond}", "A");
        Check.Expect("near-rim", $"{head}trunk A at {beyond}");
    }

    [Theory]
    [MemberData(nameof(RimWalk.All), MemberType = typeof(RimWalk))]
    public void On_a_slab_it_is_reported_from_the_nanometre_on_at_which_the_bark_passes_the_rim(string slab, int fromX, int fromY, int stepX, int stepY)
    {
        var walk = new RimWalk(slab, fromX, fromY, stepX, stepY);
        var first = walk.FirstStep("off-container");
        Assert.InRange(walk.RoomAt(first - 1), -0.000001m, 0.00001m);
        Assert.InRange(walk.RoomAt(first), -0.00001m, 0.000000m);
        Check.Expect("off-container", walk.SourceAt(first), "A");
        Check.Expect("off-container", walk.SourceAt(first - 1));
    }

    [Fact]
    public void In_the_hollow_of_a_slab_a_trunk_stands_outside()
    {
        var head = RimWalk.Head(RimWalk.Hollow);
        Assert.Contains("A stands outside the container", Assert.Single(Check.Expect("off-container", head + "trunk A at 20, 110 mm diameter 20 mm", "A")).Message, StringComparison.Ordinal);
        Check.Expect("off-container", head + "trunk A at 20, 20 mm diameter 20 mm");
    }
}
