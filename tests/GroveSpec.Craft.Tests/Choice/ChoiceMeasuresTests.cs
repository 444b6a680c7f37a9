using System.Collections.Immutable;
using System.Numerics;
using CsCheck;
using GroveSpec.Craft.Choice;
using GroveSpec.Craft.Composition;
using GroveSpec.Craft.Containers;
using GroveSpec.Model;
using GroveSpec.Model.Containers;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Craft.Tests.Choice;

public sealed class ChoiceMeasuresTests
{
    private static readonly StandingTrunks Trunks = TestStand.Of(
    [
        new(PlanPoint.FromMillimetres(0, 0), Length.FromMillimetres(10)),
        new(PlanPoint.FromMillimetres(30, 0), Length.FromMillimetres(10)),
        new(PlanPoint.FromMillimetres(0, 40), Length.FromMillimetres(30)),
    ]);

    [Fact]
    public void Gaps_of_three_four_and_five_are_even_by_a_hundred_and_forty_four_in_a_hundred_and_fifty()
    {
        // (3 + 4 + 5)² / (3 · (9 + 16 + 25)), worked out by hand.
        var (neighbours, measures) = Measure(null);
        Span<uint> near = stackalloc uint[3], open = stackalloc uint[3];
        neighbours.Fill(0b111, 0b111, 3, near, open);
        Assert.Equal(144.0 / 150, measures.GapEvenness(0b111, near), 1e-12);
    }

    [Theory]
    [InlineData(0b011u, 1)]
    [InlineData(0b101u, (1600.0 / 2000 + 1) / 2)]
    public void Sizes_that_are_alike_are_wholly_even_and_others_less(uint kept, double expected)
    {
        // (10 + 30)² / (2 · (100 + 900)), and heights that are not known count as even.
        Assert.Equal(expected, Measure(null).Measures.SizeEvenness(kept), 1e-12);
    }

    [Fact]
    public void The_weight_of_the_wood_goes_by_the_square_of_thickness_and_is_held_against_a_circle_as_large_as_the_container()
    {
        var measures = Measure(Round(200)).Measures;
        Assert.Equal(40 * 0.9, measures.CentreOfWood(0b101).Y.Millimetres, 1e-6);
        Assert.Equal(0.36, measures.Imbalance(0b101), 1e-6);
        Assert.Equal(0, measures.Imbalance(0b001), 1e-9);
    }

    [Fact]
    public void What_balance_and_sizes_keep_to_is_below_that_of_every_choice_that_is_still_open_and_for_thickness_that_of_one()
    {
        Gen.Select(Gen.Select(Gen.Int[-90, 90], Gen.Int[-60, 60], Gen.Int[-20, 60]).Array[3, 9], Gen.UInt, Gen.UInt, Gen.Bool).Sample((places, one, other, isInContainer) =>
        {
            var trunks = TestStand.Of([.. places.Select(place => new TrunkSection(PlanPoint.FromMillimetres(place.Item1, place.Item2), Length.FromMillimetres(Math.Max(0, place.Item3))))]);
            var measures = Measure(trunks, isInContainer ? Round(200) : null).Measures;
            var all = (1u << places.Length) - 1;
            var (kept, possible) = (one & other & all, (one | other) & all);
            for (var size = Math.Max(1, BitOperations.PopCount(kept)); size <= BitOperations.PopCount(possible); size++)
            {
                uint[] choices = [.. Enumerable.Range(1, (int)all).Select(choice => (uint)choice).Where(choice => BitOperations.PopCount(choice) == size && (kept & ~choice) == 0 && (choice & ~possible) == 0)];
                Assert.InRange(measures.LeastImbalance(kept, possible, size), 0, choices.Min(measures.Imbalance));
                var least = choices.Min(measures.SizeEvenness);
                Assert.InRange(measures.LeastSizeEvenness(kept, possible, size), least - 1e-6, least);
            }
        });
    }

    [Fact]
    public void Wood_on_one_side_cannot_be_balanced_by_less_wood_on_the_other()
    {
        // 3600 at 60 against 100 at -90, against a radius of 100: (3600 · 60 - 100 · 90) / 3700 / 100.
        var trunks = TestStand.Of(
        [
            new(PlanPoint.FromMillimetres(60, 0), Length.FromMillimetres(60)),
            new(PlanPoint.FromMillimetres(-90, 0), Length.FromMillimetres(10)),
            new(PlanPoint.FromMillimetres(90, 0), Length.FromMillimetres(10)),
        ]);
        var measures = Measure(trunks, Round(200)).Measures;
        Assert.Equal(((3600.0 * 60) - (100 * 90)) / 3700 / 100, measures.LeastImbalance(0b001, 0b111, 2), 1e-6);
        Assert.Equal(0, measures.LeastImbalance(0b000, 0b111, 2), 1e-9);
    }

    [Fact]
    public void Where_a_choice_is_balanced_to_its_last_digit_the_bound_does_not_stand_above_it_by_rounding()
    {
        // The set that a random run found: each order of the sum leaves another last digit.
        ImmutableArray<(int X, int Y, int Diameter)> places = [(-58, 21, 0), (16, 30, 0), (-63, -47, 0), (-78, -44, 39), (-20, -4, 0)];
        var measures = Measure(TestStand.Of([.. places.Select(place => new TrunkSection(PlanPoint.FromMillimetres(place.X, place.Y), Length.FromMillimetres(place.Diameter)))]), null).Measures;
        Assert.All(Enumerable.Range(1, 31), choice => Assert.All(Enumerable.Range(0, 32).Where(kept => (kept & ~choice) == 0), kept =>
            Assert.True(
                measures.LeastImbalance((uint)kept, 0b11111, BitOperations.PopCount((uint)choice)) <= measures.Imbalance((uint)choice),
                $"choice {choice} where {kept} stand in any case")));
    }

    private static ContainerOutline? Round(double diameter) =>
        ContainerOutline.Of(new Container.Round(Length.FromMillimetres(diameter)) { Depth = Length.FromMillimetres(40), Origin = Origin.Default });

    private static (NeighbourTable Neighbours, ChoiceMeasures Measures) Measure(ContainerOutline? outline) => Measure(Trunks, outline);

    private static (NeighbourTable Neighbours, ChoiceMeasures Measures) Measure(StandingTrunks trunks, ContainerOutline? outline)
    {
        var neighbours = new NeighbourTable(trunks);
        return (neighbours, new ChoiceMeasures(trunks, neighbours, outline));
    }
}
