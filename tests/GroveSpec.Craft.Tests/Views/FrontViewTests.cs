using GroveSpec.Craft.Views;
using GroveSpec.Model.States;
using Xunit;
using static GroveSpec.Craft.Tests.Views.ViewPlantings;

namespace GroveSpec.Craft.Tests.Views;

public sealed class FrontViewTests
{
    private static string Names(IEnumerable<SeenTrunk> trunks) => string.Concat(trunks.Select(trunk => trunk.Name));

    [Fact]
    public void Trunks_are_told_from_left_to_right()
    {
        var view = FrontView.Of(State(Viewed(), Trunk("A", 80, 0), Trunk("B", -60, 40), Trunk("C", 10, -50)));

        Assert.Equal("BCA", Names(view.Trunks));
        Assert.Equal(["B-C", "C-A"], view.Gaps.Select(gap => $"{gap.Left.Name}-{gap.Right.Name}"));
    }

    [Fact]
    public void From_the_back_left_and_right_change_places()
    {
        Assert.Equal("AB", Names(FrontView.Of(State(Viewed(from: 0), Trunk("A", 80, 0), Trunk("B", -60, 40))).Trunks));
    }

    [Fact]
    public void Gaps_are_measured_in_the_picture()
    {
        var gap = FrontView.Of(State(Viewed(), Trunk("A", -50, 0), Trunk("B", 50, 500))).Gaps.Single();

        // B stands 2000 from the eye, so it is drawn at three quarters.
        Assert.Equal(87.5, gap.Centres.Millimetres, 6);
        Assert.InRange(gap.Clear.Millimetres, 69.9, 70.1);
    }

    [Fact]
    public void The_nearest_trunk_has_rank_nought()
    {
        var view = FrontView.Of(State(Viewed(), Trunk("A", 0, 100), Trunk("B", 50, -100), Trunk("C", 90, 0)));

        Assert.Equal([("A", 2), ("B", 0), ("C", 1)], view.Trunks.Select(trunk => (trunk.Name, trunk.Nearness)));
    }

    [Fact]
    public void A_trunk_straight_behind_a_thicker_one_is_hidden_and_its_cover_named()
    {
        var view = FrontView.Of(State(Viewed(), Trunk("back", 0, 100, 20), Trunk("front", 0, -100, 40)));
        var back = view.Trunks.Single(trunk => trunk.Name == "back");

        Assert.Equal(1, back.Hidden!.Value.Share);
        Assert.Equal("front", Assert.Single(view.Covering(back)).Name);
        Assert.Equal(0, view.Trunks.Single(trunk => trunk.Name == "front").Hidden!.Value.Share);
    }

    [Fact]
    public void From_far_away_the_view_becomes_parallel()
    {
        // Reference value for a parallel view, computed independently: 0.85.
        var view = FrontView.Of(State(Viewed(900_000), Trunk("back", 50, 10, 20), Trunk("front", 58, -20, 30)));

        Assert.Equal(0.85, view.Trunks.Single(trunk => trunk.Name == "back").Hidden!.Value.Share, 3);
    }

    [Fact]
    public void A_trunk_of_unknown_diameter_hides_nothing_and_is_not_hidden()
    {
        var view = FrontView.Of(State(Viewed(), Trunk("A", 0, -100, diameter: null), Trunk("B", 0, 100)));

        Assert.Equal([("A", null), ("B", 0.0)], view.Trunks.Select(trunk => (trunk.Name, trunk.Hidden?.Share)));
    }

    [Fact]
    public void Trunks_at_or_behind_the_eye_are_set_apart()
    {
        var view = FrontView.Of(State(Viewed(200), Trunk("A", 0, 0), Trunk("B", 0, -200), Trunk("C", 0, -900), Trunk("D", 0, -195)));

        Assert.Equal("A", Names(view.Trunks));
        Assert.Equal(["B", "C", "D"], view.Unseen.Select(trunk => trunk.Name));
    }

    [Fact]
    public void Tops_are_seen_where_the_trunk_leans()
    {
        var view = FrontView.Of(State(Viewed(), Trunk("A", 0, 0, 20, 400), Trunk("B", 50, 0)));

        Assert.Equal((0, 400), (view.Trunks[0].Top!.Value.Across.Millimetres, view.Trunks[0].Top!.Value.Up.Millimetres));
        Assert.Null(view.Trunks[1].Top);
    }

    [Fact]
    public void Sampled_sight_rays_agree_with_the_exact_shares_on_ten_thousand_plantings()
    {
        const int Plantings = 10_000;
        const int Rays = 200;
        var worst = 0.0;
        for (var seed = 1; seed <= Plantings; seed++)
        {
            var random = new Random(seed);
            var trunks = Scattered(random, 2 + random.Next(9), 100 + (random.NextDouble() * 500));
            var viewed = Viewed(150 + (random.NextDouble() * 1500), from: random.NextDouble() * 360);
            var view = FrontView.Of(State(viewed, trunks));
            foreach (var trunk in view.Trunks)
            {
                var difference = Math.Abs(trunk.Hidden!.Value.Share - SampledShare(view, trunk, Rays));
                worst = Math.Max(worst, difference);

                // Each edge of a covered stretch is found by the rays to within one ray.
                Assert.True(difference <= 2.0 * trunks.Length / Rays, $"seed {seed}, trunk {trunk.Name}: differs by {difference}");
            }
        }

        Assert.True(worst > 0, "rays that agree without any difference were not sampled");
    }

    [Fact]
    public void Ten_thousand_trunks_on_a_circle_are_seen()
    {
        var trunks = Enumerable.Range(0, 10_000)
            .Select(index => Trunk($"T{index}", 400 * Math.Sin(index * Math.PI / 5000), 400 * Math.Cos(index * Math.PI / 5000), 0.2))
            .ToArray();
        var view = FrontView.Of(State(Viewed(), trunks));

        Assert.Equal(10_000, view.Trunks.Length);
        Assert.Equal(Enumerable.Range(0, 10_000), view.Trunks.Select(trunk => trunk.Nearness).Order());
        Assert.True(view.Trunks.Zip(view.Trunks.Skip(1)).All(pair => pair.First.Foot.Across <= pair.Second.Foot.Across));
    }

    [Fact]
    public void Trunks_at_one_point_keep_the_order_of_the_file()
    {
        var view = FrontView.Of(State(Viewed(), Trunk("B", 5, 5), Trunk("A", 5, 5), Trunk("C", 5, 5)));

        Assert.Equal([("B", 0, 0.0), ("A", 1, 1.0), ("C", 2, 1.0)], view.Trunks.Select(trunk => (trunk.Name, trunk.Nearness, trunk.Hidden!.Value.Share)));
    }

    /// <summary>
    /// The second way: rays from the eye, spread evenly over the trunk's width in the picture, each followed to the first
    /// circle it meets. Nothing of the first way is used but the eye's place and the trunk's edges.
    /// </summary>
    private static double SampledShare(FrontView view, SeenTrunk trunk, int rays)
    {
        var frame = view.Frame;
        var (eyeX, eyeY) = (frame.Eye.X.Millimetres, frame.Eye.Y.Millimetres);
        var distance = frame.Distance.Millimetres;
        var (aheadX, aheadY) = (-eyeX / distance, -eyeY / distance);
        var hidden = 0;
        for (var ray = 0; ray < rays; ray++)
        {
            var across = trunk.Cover.Left.Millimetres + (trunk.Cover.Width.Millimetres * (ray + 0.5) / rays);
            var (wayX, wayY) = ((aheadX * distance) + (aheadY * across), (aheadY * distance) - (aheadX * across));
            string? first = null;
            var nearest = double.PositiveInfinity;
            foreach (var other in view.Trunks)
            {
                if (Meets(other.Trunk, eyeX, eyeY, wayX, wayY) is { } time && time < nearest)
                {
                    (first, nearest) = (other.Name, time);
                }
            }

            hidden += first == trunk.Name || first is null ? 0 : 1;
        }

        return hidden / (double)rays;
    }

    private static double? Meets(TrunkState trunk, double eyeX, double eyeY, double wayX, double wayY)
    {
        var (x, y) = (trunk.Place!.Value.X.Millimetres - eyeX, trunk.Place.Value.Y.Millimetres - eyeY);
        var radius = trunk.Diameter!.Value.Value.Millimetres / 2;
        var (a, b) = ((wayX * wayX) + (wayY * wayY), (x * wayX) + (y * wayY));
        var root = (b * b) - (a * ((x * x) + (y * y) - (radius * radius)));
        return root < 0 || b < 0 ? null : (b - Math.Sqrt(root)) / a;
    }
}
