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
        var round = new Container.Round(Length.FromMillimetres(200)) { Depth = Length.FromMillimetres(40), Origin = Origin.Default };
        var measures = Measure(ContainerOutline.Of(round)).Measures;
        Assert.Equal(40 * 0.9, measures.CentreOfWood(0b101).Y.Millimetres, 1e-6);
        Assert.Equal(0.36, measures.Imbalance(0b101), 1e-6);
        Assert.Equal(0, measures.Imbalance(0b001), 1e-9);
    }

    private static (NeighbourTable Neighbours, ChoiceMeasures Measures) Measure(ContainerOutline? outline)
    {
        var neighbours = new NeighbourTable(Trunks);
        return (neighbours, new ChoiceMeasures(Trunks, neighbours, outline));
    }
}
