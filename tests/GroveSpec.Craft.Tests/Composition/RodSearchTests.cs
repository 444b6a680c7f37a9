using GroveSpec.Craft.Composition;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Craft.Tests.Composition;

public sealed class RodSearchTests
{
    private static (int, int, int)[] Find(params (double X, double Y)[] places) =>
        [.. RodSearch.Find(TestStand.OfPlaces(places), 0.5).Select(rod => (rod.End, rod.Middle, rod.OtherEnd))];

    [Fact]
    public void Under_seven_trunks_every_triple_counts_once()
    {
        Assert.Equal([(0, 1, 2), (0, 1, 3), (0, 2, 3), (1, 2, 3)], Find((0, 0), (60, 1), (120, 0), (180, 1)).Order());
    }

    [Fact]
    public void From_seven_trunks_on_only_neighbours_count()
    {
        (double, double)[] row = [(0, 0), (60, 1), (120, 0), (180, 1)];
        Assert.Equal([(0, 1, 2), (1, 2, 3)], Find([.. row, (20, 70), (95, 90), (165, 75)]).Where(rod => rod.Item1 < 4 && rod.Item2 < 4 && rod.Item3 < 4).Order());
    }

    [Fact]
    public void Two_trunks_at_one_place_make_no_line_with_a_third()
    {
        Assert.Empty(Find((0, 0), (0, 0), (100, 30)));
    }

    [Fact]
    public void A_trunk_of_unknown_thickness_makes_no_line()
    {
        var trunks = TestStand.Of(
        [
            new(PlanPoint.FromMillimetres(0, 0), Length.FromMillimetres(20)),
            new(PlanPoint.FromMillimetres(50, 0), Length.Zero),
            new(PlanPoint.FromMillimetres(100, 0), Length.FromMillimetres(20)),
        ]);
        Assert.Empty(RodSearch.Find(trunks, 0.5));
    }
}
