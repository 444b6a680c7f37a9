using GroveSpec.Craft.Views;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Model.Trunks;
using Xunit;
using static GroveSpec.Craft.Tests.Views.ViewPlantings;

namespace GroveSpec.Craft.Tests.Views;

public sealed class TrunkAxisTests
{
    private static readonly Lean TenToTheRight = new(new Angle(10), new Bearing(90));

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static SpacePoint At(double x, double y, double z) => new(Mm(x), Mm(y), Mm(z));

    [Fact]
    public void A_length_along_a_leaning_trunk_gives_its_offset_and_height()
    {
        // Reference value, computed independently: lean 10°, length 400: offset 69.459271, height 393.923101.
        var tip = TrunkAxis.OfRun(PlanPoint.Origin, Mm(400), TenToTheRight).Tip;

        Assert.Equal(69.459271, tip.X.Millimetres, 6);
        Assert.Equal(0, tip.Y.Millimetres, 6);
        Assert.Equal(393.923101, tip.Z.Millimetres, 6);
    }

    [Fact]
    public void A_stated_height_is_upright_so_the_tip_lies_height_times_tangent_away()
    {
        var axis = TrunkAxis.Straight(PlanPoint.FromMillimetres(20, -30), Mm(393.923101), TenToTheRight);

        Assert.Equal(20 + 69.459271, axis.Tip.X.Millimetres, 5);
        Assert.Equal(-30, axis.Tip.Y.Millimetres, 6);
        Assert.Equal(400, axis.Run.Millimetres, 5);
    }

    [Fact]
    public void A_trunk_laid_all_but_level_stays_within_bounds()
    {
        var axis = TrunkAxis.Straight(PlanPoint.Origin, Length.Largest, new Lean(new Angle(89.9999999999), new Bearing(90)));

        Assert.Equal(1e9, axis.Tip.X.Millimetres, 3);
    }

    [Fact]
    public void A_run_starts_at_the_base_and_goes_through_its_places()
    {
        var axis = TrunkAxis.Through(PlanPoint.FromMillimetres(5, 0), [At(5, 0, 0), At(15, 0, 100), At(15, 0, 300)], null);

        Assert.Equal([At(5, 0, 0), At(15, 0, 100), At(15, 0, 300)], axis.Points);
        Assert.Equal(Math.Sqrt(10_100) + 200, axis.Run.Millimetres, 5);
    }

    [Fact]
    public void A_run_given_from_above_the_soil_is_led_down_to_the_base()
    {
        Assert.Equal(At(5, 0, 0), TrunkAxis.Through(PlanPoint.FromMillimetres(5, 0), [At(15, 0, 100)], null).Base);
    }

    [Fact]
    public void A_newer_height_draws_a_run_out_from_its_base()
    {
        var axis = TrunkAxis.Through(PlanPoint.FromMillimetres(10, 0), [At(10, 0, 0), At(30, 0, 100), At(30, 0, 200)], Mm(300));

        Assert.Equal([At(10, 0, 0), At(40, 0, 150), At(40, 0, 300)], axis.Points);
    }

    [Fact]
    public void A_run_that_never_leaves_the_soil_gives_an_upright_axis()
    {
        Assert.Equal([At(0, 0, 0), At(0, 0, 120)], TrunkAxis.Through(PlanPoint.Origin, [At(0, 0, 0), At(9, 9, -5)], Mm(120)).Points);
    }

    [Fact]
    public void A_share_of_the_way_is_measured_along_the_trunk()
    {
        var axis = TrunkAxis.Through(PlanPoint.Origin, [At(0, 0, 100), At(100, 0, 100)], null);

        Assert.Equal(At(0, 0, 50), axis.At(0.25));
        Assert.Equal(At(50, 0, 100), axis.At(0.75));
        Assert.Equal(axis.Base, axis.At(-1));
        Assert.Equal(axis.Tip, axis.At(7));
    }

    [Fact]
    public void There_is_no_axis_without_a_place_or_a_height()
    {
        var state = State(null, Trunk("A", 0, 0), Trunk("B", 0, 0, 20, 100) with { At = null }, Trunk("C", 0, 0, 20, 100));

        Assert.Equal([true, true, false], state.Trunks.Select(trunk => TrunkAxis.Of(trunk) is null));
    }

    [Fact]
    public void A_lean_is_taken_from_the_trunk()
    {
        var state = State(null, Trunk("A", 0, 0, 20, 100) with { Lean = new Stated<Lean>(new Lean(new Angle(45), new Bearing(0)), Origin.Default) });

        Assert.Equal(100, TrunkAxis.Of(state.Trunks[0])!.Tip.Y.Millimetres, 6);
    }

    [Fact]
    public void The_tip_at_another_place_is_that_of_the_axis_of_a_trunk_which_stands_there()
    {
        var lean = new Stated<Lean>(new Lean(new Angle(45), new Bearing(0)), Origin.Default);
        var state = State(
            null,
            Trunk("A", 0, 0, 20, 100),
            Trunk("B", 0, 0, 20, 100) with { Lean = lean },
            Trunk("C", 0, 0, 20),
            Trunk("D", 0, 0, 20) with { Lean = lean },
            Trunk("E", 0, 0, 20, 100) with { Line = [At(0, 0, 0), At(10, 20, 60)] },
            Trunk("F", 0, 0, 20) with { Line = [At(0, 0, 0), At(10, 20, 60)] });
        var place = new PlanPoint(Mm(40), Mm(-30));
        Assert.All(state.Trunks, trunk => Assert.Equal(TrunkAxis.Of(trunk with { Place = place })?.Tip, TrunkAxis.TipOf(trunk, place)));
    }

    [Fact]
    public void A_tip_is_told_without_an_axis_since_it_is_asked_for_at_each_place_of_the_ground()
    {
        TrunkState[] trunks = [.. State(null, Trunk("A", 0, 0, 20, 100), Trunk("B", 0, 0, 20)).Trunks];
        Assert.All(trunks, trunk => TrunkAxis.TipOf(trunk, PlanPoint.Origin));
        var before = GC.GetAllocatedBytesForCurrentThread();
        foreach (var trunk in trunks)
        {
            TrunkAxis.TipOf(trunk, PlanPoint.Origin);
        }

        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }
}
