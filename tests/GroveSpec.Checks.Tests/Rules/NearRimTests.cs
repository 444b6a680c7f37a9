using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

public sealed class NearRimTests
{
    [Fact]
    public void Bark_close_to_the_rim_is_reported_with_the_room_that_is_left()
    {
        var found = Check.Expect("near-rim", """
            trunk A at 285, 0 mm diameter 20 mm
            """, "A");
        Assert.Contains("A leaves only 5 mm between its bark and the rim. Move it 5 mm or more inward", Assert.Single(found).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Bark_with_room_is_let_be()
    {
        Check.Expect("near-rim", """
            trunk A at 200, 0 mm diameter 20 mm
            """);
    }

    [Fact]
    public void Room_of_just_the_limit_is_let_be_and_a_nanometre_less_is_reported()
    {
        Check.Expect("near-rim", """
            trunk A at 280, 0 mm diameter 20 mm
            """);
        Check.Expect("near-rim", """
            trunk A at 280.000001, 0 mm diameter 20 mm
            """, "A");
    }

    [Fact]
    public void Bark_past_the_rim_is_told_by_off_container_alone()
    {
        Check.Expect("near-rim", """
            trunk A at 295, 0 mm diameter 20 mm
            """);
        Check.Expect("off-container", """
            trunk A at 295, 0 mm diameter 20 mm
            """, "A");
    }

    [Fact]
    public void It_says_all_of_it_in_whole_sentences()
    {
        var source = """
            trunk A at 285, 0 mm diameter 20 mm
            """;
        Assert.Equal(
            "A leaves only 5 mm between its bark and the rim. Move it 5 mm or more inward, or let it stand with a reason.",
            Check.Message("near-rim", source));
        Assert.Equal(
            "A leaves only 0.2 in between its bark and the rim. Move it 0.2 in or more inward, or let it stand with a reason.",
            Check.Message("near-rim", source, UnitSystem.Inch));
    }

    // A round rim of the radius 200, and 180² = 108² + 144². The oval's points are those where its normal has the slope
    // 12 to 5: x = 450 · 3/5, y = 250 · 4/5, and 26 mm inward are (10, 24) mm.
    [Theory]
    [InlineData("round 400 x 40 mm", "180, 0 mm diameter 20 mm", "180.000001, 0 mm diameter 20 mm")]
    [InlineData("round 400 x 40 mm", "-108, 144 mm diameter 20 mm", "-108.000001, 144 mm diameter 20 mm")]
    [InlineData("oval 600 x 400 x 40 mm", "280, 0 mm diameter 20 mm", "280.000001, 0 mm diameter 20 mm")]
    [InlineData("oval 600 x 400 x 40 mm", "0, -180 mm diameter 20 mm", "0, -180.000001 mm diameter 20 mm")]
    [InlineData("oval 900 x 500 x 40 mm", "260, 176 mm diameter 32 mm", "260.000001, 176.000001 mm diameter 32 mm")]
    [InlineData("oval 500 x 900 x 40 mm", "-176, -260 mm diameter 32 mm", "-176.000001, -260.000001 mm diameter 32 mm")]
    [InlineData("rectangle 600 x 400 x 40 mm", "-100, -180 mm diameter 20 mm", "-100, -180.000001 mm diameter 20 mm")]
    public void In_a_round_or_an_oval_room_of_just_the_limit_is_let_be_and_a_nanometre_less_is_reported(string container, string just, string less)
    {
        var head = RimWalk.Head(container);
        Check.Expect("near-rim", $"{head}trunk A at {just}");
        Check.Expect("near-rim", $"{head}trunk A at {less}", "A");
        Check.Expect("off-container", $"{head}trunk A at {less}");
    }

    [Theory]
    [MemberData(nameof(RimWalk.All), MemberType = typeof(RimWalk))]
    public void On_a_slab_it_is_reported_from_the_nanometre_on_at_which_the_room_falls_under_the_limit(string slab, int fromX, int fromY, int stepX, int stepY)
    {
        var walk = new RimWalk(slab, fromX, fromY, stepX, stepY);
        var first = walk.FirstStep("near-rim");
        Assert.InRange(walk.RoomAt(first - 1), 9.999999m, 10.00001m);
        Assert.InRange(walk.RoomAt(first), 9.99999m, 10.000000m);
        Check.Expect("near-rim", walk.SourceAt(first), "A");
        Check.Expect("near-rim", walk.SourceAt(first - 1));
    }
}
