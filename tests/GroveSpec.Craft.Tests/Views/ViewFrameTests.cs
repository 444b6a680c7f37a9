using GroveSpec.Craft.Views;
using GroveSpec.Model;
using GroveSpec.Model.Containers;
using GroveSpec.Model.Quantities;
using Xunit;
using static GroveSpec.Craft.Tests.Views.ViewPlantings;

namespace GroveSpec.Craft.Tests.Views;

public sealed class ViewFrameTests
{
    private static ViewFrame Frame(double from = 180) =>
        new(new Bearing(from), Length.FromMillimetres(1500), Length.FromMillimetres(300));

    private static SpacePoint At(double x, double y, double z) =>
        new(Length.FromMillimetres(x), Length.FromMillimetres(y), Length.FromMillimetres(z));

    [Fact]
    public void A_place_is_seen_where_a_pinhole_camera_puts_it()
    {
        // Reference value, computed independently: c = 1500, e = 300, (100, 200, 500) is seen at (88.235294, 476.470588).
        var seen = Frame().See(At(100, 200, 500))!.Value;

        Assert.Equal(88.235294, seen.Across.Millimetres, 6);
        Assert.Equal(476.470588, seen.Up.Millimetres, 6);
        Assert.Equal(1700, seen.Depth.Millimetres, 6);
    }

    [Fact]
    public void A_place_in_the_picture_plane_keeps_its_measures()
    {
        var seen = Frame().See(At(-70, 0, 410))!.Value;

        Assert.Equal((-70, 410), (seen.Across.Millimetres, seen.Up.Millimetres));
    }

    [Theory]
    [InlineData(180, 100, 200)]
    [InlineData(0, -100, -200)]
    [InlineData(90, -200, 100)]
    [InlineData(270, 200, -100)]
    public void Walking_round_the_planting_turns_it(double from, double x, double y)
    {
        // The same place relative to the viewer each time: 100 to the right and 200 beyond the origin.
        var seen = Frame(from).See(At(x, y, 500))!.Value;

        Assert.Equal(88.235294, seen.Across.Millimetres, 6);
        Assert.Equal(476.470588, seen.Up.Millimetres, 6);
    }

    [Theory]
    [InlineData(180, 0, -1500)]
    [InlineData(90, 1500, 0)]
    [InlineData(0, 0, 1500)]
    [InlineData(270, -1500, 0)]
    [InlineData(135, 1060.660172, -1060.660172)]
    public void The_eye_stands_at_its_bearing(double from, double x, double y)
    {
        Assert.Equal(x, Frame(from).Eye.X.Millimetres, 6);
        Assert.Equal(y, Frame(from).Eye.Y.Millimetres, 6);
    }

    [Fact]
    public void What_stands_beside_or_behind_the_eye_is_not_seen()
    {
        Assert.Null(Frame().See(At(100, -1500, 0)));
        Assert.Null(Frame().See(At(0, -4000, 0)));
        Assert.Null(Frame().See(At(0, -1498.5, 0)));
        Assert.NotNull(Frame().See(At(0, -1498.4, 0)));
        Assert.Null(Frame().Cover(PlanPoint.FromMillimetres(0, -1490), Length.FromMillimetres(9)));
    }

    [Fact]
    public void The_edges_of_a_trunk_are_where_the_sight_touches_its_bark()
    {
        var cover = Frame().Cover(PlanPoint.FromMillimetres(0, 0), Length.FromMillimetres(150))!.Value;

        // Right before the eye the angle to either edge is asin(r/d).
        Assert.Equal(1500 * Math.Tan(Math.Asin(0.1)), cover.Right.Millimetres, 5);
        Assert.Equal(-cover.Right.Millimetres, cover.Left.Millimetres, 6);
    }

    [Fact]
    public void Without_a_stated_viewpoint_the_viewer_stands_in_front_three_times_the_extent_away()
    {
        var wide = new Planting
        {
            Container = new Container.Oval(Length.FromMillimetres(600), Length.FromMillimetres(300)) { Depth = Length.FromMillimetres(40), Origin = Origin.Default },
            Trunks = [Trunk("A", 0, 0, 20, 420)],
        };
        var frame = ViewFrame.Of(wide.StateOn(null));

        Assert.Equal((180, 1800, 280), (frame.From.Degrees, frame.Distance.Millimetres, frame.EyeHeight.Millimetres));
        Assert.True(frame.IsDistanceAssumed && frame.IsEyeHeightAssumed);
    }

    [Fact]
    public void A_small_planting_is_still_seen_from_a_metre_away()
    {
        var frame = ViewFrame.Of(State(null, Trunk("A", 0, 0)));

        Assert.Equal((1000, 100), (frame.Distance.Millimetres, frame.EyeHeight.Millimetres));
    }

    [Fact]
    public void A_stated_viewpoint_is_kept()
    {
        var frame = ViewFrame.Of(State(Viewed(1100, 160, 200), Trunk("A", 0, 0)));

        Assert.Equal((200, 1100, 160), (frame.From.Degrees, frame.Distance.Millimetres, frame.EyeHeight.Millimetres));
        Assert.False(frame.IsDistanceAssumed || frame.IsEyeHeightAssumed);
    }

    [Fact]
    public void The_farthest_lengths_of_the_language_can_be_seen()
    {
        var far = Length.Largest;
        var frame = new ViewFrame(new Bearing(180), far, far);

        Assert.NotNull(frame.See(new SpacePoint(far, Length.Zero - far + (far * 0.0011), far)));
    }
}
