using CsCheck;
using GroveSpec.Craft.Containers;
using GroveSpec.Model;
using GroveSpec.Model.Containers;
using GroveSpec.Model.Quantities;
using NetTopologySuite.Geometries;
using Xunit;

namespace GroveSpec.Craft.Tests.Containers;

public sealed class ContainerOutlineTests
{
    private static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);

    public static Container Oval(double width, double breadth) => new Container.Oval(Mm(width), Mm(breadth)) { Depth = Mm(50), Origin = Origin.Default };

    public static Container Rectangle(double width, double breadth) => new Container.Rectangle(Mm(width), Mm(breadth)) { Depth = Mm(50), Origin = Origin.Default };

    public static Container Round(double across) => new Container.Round(Mm(across)) { Depth = Mm(50), Origin = Origin.Default };

    public static Container Slab(params (double X, double Y)[] corners) => new Container.Slab([.. corners.Select(corner => PlanPoint.FromMillimetres(corner.X, corner.Y))]) { Depth = Mm(20), Origin = Origin.Default };

    private static double Distance(Container container, double x, double y) => ContainerOutline.Of(container).SignedDistance(PlanPoint.FromMillimetres(x, y)).Millimetres;

    [Fact]
    public void Within_a_rectangle_the_nearest_side_counts_and_outside_the_nearest_corner()
    {
        Assert.Equal(20, Distance(Rectangle(400, 200), 30, -80));
        Assert.Equal(0, Distance(Rectangle(400, 200), 200, 0));
        Assert.Equal(-5, Distance(Rectangle(400, 200), 203, 104));
    }

    [Fact]
    public void Within_a_round_container_the_distance_is_the_radius_less_the_way_from_the_centre()
    {
        Assert.Equal(100, Distance(Round(200), 0, 0));
        Assert.Equal(50, Distance(Round(200), 30, 40));
        Assert.Equal(-25, Distance(Round(200), -75, 100));
    }

    [Fact]
    public void On_the_axes_of_an_oval_the_distance_is_known()
    {
        Assert.Equal(150, Distance(Oval(400, 300), 0, 0));
        Assert.Equal(20, Distance(Oval(400, 300), 180, 0), 6);
        Assert.Equal(-20, Distance(Oval(400, 300), -220, 0), 6);
        Assert.Equal(30, Distance(Oval(400, 300), 0, 120), 6);
        Assert.Equal(-30, Distance(Oval(300, 400), 180, 0), 6);

        // Near the centre of the long axis the nearest place is beside, not ahead: with half axes 200 and 100 at (60, 0),
        // x₀ = 60·200²/(200²−100²) = 80, and the distance √(20² + (100·√(1−0.16))²).
        Assert.Equal(Math.Sqrt(400 + 8400), Distance(Oval(400, 200), 60, 0), 6);
    }

    [Fact]
    public void The_distance_to_an_oval_agrees_with_the_nearest_of_many_points_of_its_rim()
    {
        Gen.Select(Gen.Int[20, 800], Gen.Int[20, 800], Gen.Int[-600, 600], Gen.Int[-600, 600]).Sample((width, breadth, x, y) =>
        {
            var nearest = double.MaxValue;
            for (var step = 0; step < 20_000; step++)
            {
                var (sine, cosine) = Math.SinCos(2 * Math.PI * step / 20_000);
                double dx = (width / 2.0 * cosine) - x, dy = (breadth / 2.0 * sine) - y;
                nearest = Math.Min(nearest, (dx * dx) + (dy * dy));
            }

            var isInside = (4.0 * x * x / width / width) + (4.0 * y * y / breadth / breadth) <= 1;
            return Math.Abs((isInside ? 1 : -1) * Math.Sqrt(nearest) - Distance(Oval(width, breadth), x, y)) < 0.15;
        }, iter: 60);
    }

    [Fact]
    public void A_slab_is_measured_on_the_smooth_curve_that_is_drawn()
    {
        // NetTopologySuite is the oracle for polygons.
        var outline = ContainerOutline.Of(Slab((-230, -90), (-120, -150), (90, -140), (240, -40), (180, 120), (-40, 150), (-210, 80)));
        var ring = outline.Points.Select(point => new Coordinate(point.X.Millimetres, point.Y.Millimetres)).ToList();
        ring.Add(ring[0]);
        var polygon = new GeometryFactory().CreatePolygon([.. ring]);
        Assert.Equal(polygon.Area, outline.AreaInSquareMillimetres, 6);
        Gen.Select(Gen.Int[-300, 300], Gen.Int[-300, 300]).Sample((x, y) =>
        {
            var point = polygon.Factory.CreatePoint(new Coordinate(x, y));
            var expected = polygon.Boundary.Distance(point) * (polygon.Contains(point) ? 1 : -1);
            return Math.Abs(expected - outline.SignedDistance(PlanPoint.FromMillimetres(x, y)).Millimetres) < 1e-5;
        });
    }

    [Fact]
    public void The_curve_of_a_slab_goes_through_every_corner_and_its_corners_may_be_given_either_way_round()
    {
        (double, double)[] corners = [(-230, -90), (-120, -150), (90, -140), (240, -40), (180, 120), (-40, 150), (-210, 80)];
        var outline = ContainerOutline.Of(Slab(corners));
        Assert.All(corners, corner => Assert.Contains(PlanPoint.FromMillimetres(corner.Item1, corner.Item2), outline.Points));
        var other = ContainerOutline.Of(Slab([.. corners.Reverse()]));
        Assert.Equal(outline.AreaInSquareMillimetres, other.AreaInSquareMillimetres, 6);
        Assert.Equal(outline.SignedDistance(PlanPoint.Origin).Millimetres, other.SignedDistance(PlanPoint.Origin).Millimetres, 5);
    }

    [Fact]
    public void A_slab_of_one_place_or_one_line_has_no_area_and_nothing_inside()
    {
        foreach (var slab in (Container[])[Slab((5, 5), (5, 5), (5, 5)), Slab((0, 0), (10, 10), (20, 20))])
        {
            var outline = ContainerOutline.Of(slab);
            Assert.Equal(0, outline.AreaInSquareMillimetres, 3);
            Assert.True(outline.SignedDistance(PlanPoint.FromMillimetres(-3, 8)) < Length.Zero);
        }
    }

    [Fact]
    public void The_reach_of_a_container_is_its_width_as_seen()
    {
        var (least, greatest) = ContainerOutline.Of(Oval(400, 300)).Reach(Bearing.Right);
        Assert.Equal((-200, 200), (least.Millimetres, greatest.Millimetres));
        (least, greatest) = ContainerOutline.Of(Rectangle(400, 300)).Reach(Bearing.Back);
        Assert.Equal((-150, 150), (least.Millimetres, greatest.Millimetres));
        (least, greatest) = ContainerOutline.Of(Slab((0, 0), (100, 0), (100, 80), (0, 80))).Reach(Bearing.Right);
        Assert.Equal(50, (least + greatest).Millimetres / 2, 6);
    }
}
