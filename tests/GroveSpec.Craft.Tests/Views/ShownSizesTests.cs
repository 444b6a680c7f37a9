using GroveSpec.Craft.Views;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using Xunit;
using static GroveSpec.Craft.Tests.Views.ViewPlantings;

namespace GroveSpec.Craft.Tests.Views;

public sealed class ShownSizesTests
{
    private static ShownSize[] Sizes(PlantingState state)
    {
        var sizes = ShownSizes.For(state);
        return [.. state.Trunks.Select(sizes.Of)];
    }

    [Fact]
    public void Known_sizes_are_shown_as_they_are()
    {
        var size = Sizes(State(null, Trunk("A", 0, 0, 30, 260) with { Crown = new Stated<Length>(Length.FromMillimetres(80), Origin.Default) }))[0];

        Assert.Equal((30, 260, 80), (size.Diameter.Millimetres, size.Height.Millimetres, size.Crown.Millimetres));
        Assert.False(size.IsDiameterAssumed || size.IsHeightAssumed || size.IsCrownAssumed);
    }

    [Fact]
    public void What_is_not_known_is_assumed_from_what_is()
    {
        var sizes = Sizes(State(null, Trunk("A", 0, 0, 30), Trunk("B", 0, 0, null, 180), Trunk("C", 0, 0, null)));

        Assert.Equal(270, sizes[0].Height.Millimetres, 6);
        Assert.Equal(20, sizes[1].Diameter.Millimetres, 5);
        Assert.Equal((30, 180), (sizes[2].Diameter.Millimetres, sizes[2].Height.Millimetres));
        Assert.Equal([false, true, true], sizes.Select(size => size.IsDiameterAssumed));
        Assert.Equal([true, false, true], sizes.Select(size => size.IsHeightAssumed));
    }

    [Fact]
    public void With_nothing_known_a_trunk_is_shown_20_by_180_mm()
    {
        var size = Sizes(State(null, Trunk("A", 0, 0, null)))[0];

        Assert.Equal((20, 180), (size.Diameter.Millimetres, size.Height.Millimetres));
    }

    [Fact]
    public void An_assumed_crown_is_never_wider_than_a_third_of_the_height()
    {
        Assert.Equal(0.2 * 400 + 1.5 * 20, Sizes(State(null, Trunk("A", 0, 0, 20, 400)))[0].Crown.Millimetres, 6);
        Assert.Equal(40, Sizes(State(null, Trunk("A", 0, 0, 80, 120)))[0].Crown.Millimetres, 5);
    }

    [Fact]
    public void An_assumed_crown_is_never_wider_than_the_others_are_high_so_that_a_slip_in_one_height_leaves_the_rest_to_be_seen()
    {
        var state = State(null, Trunk("A", 0, 0, 20, 170_000), Trunk("B", 0, 0, 20, 200), Trunk("C", 0, 0, 20, 180));

        Assert.Equal(200, Sizes(state)[0].Crown.Millimetres);
        Assert.Equal(90_000, Sizes(state with { Trunks = [state.Trunks[0] with { Crown = new Stated<Length>(Length.FromMillimetres(90_000), Origin.Default) }, .. state.Trunks.Skip(1)] })[0].Crown.Millimetres);
    }
}
