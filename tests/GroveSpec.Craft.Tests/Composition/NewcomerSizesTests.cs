using CsCheck;
using GroveSpec.Craft.Composition;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Model.Trunks;
using Xunit;

namespace GroveSpec.Craft.Tests.Composition;

public sealed class NewcomerSizesTests
{
    private static readonly PlantingState Three = State((10, 100), (20, 200), (80, 400));

    [Fact]
    public void First_sizes_lie_in_the_widest_gap_between_two_thicknesses()
    {
        // 80 is four times 20, and 20 only twice 10.
        Assert.Equal((40, 283), Millimetres(NewcomerSizes.Of(Three)));
        Assert.Equal((40, null), Millimetres(NewcomerSizes.Of(State((20, null), (80, 400)))));
        Assert.Equal((18, null), Millimetres(NewcomerSizes.Of(State((20, 200)))));
        Assert.Equal((18, null), Millimetres(NewcomerSizes.Of(State())));
    }

    [Theory]
    [InlineData(20, 200)]
    [InlineData(40, 283)]
    [InlineData(80, 400)]
    [InlineData(1.25, 25)]
    [InlineData(270, 900)]
    public void A_height_goes_with_a_thickness(double diameter, double height) =>
        Assert.Equal(height, NewcomerSizes.HeightFor(Three, Length.FromMillimetres(diameter))!.Value.Millimetres);

    [Theory]
    [InlineData(200, 20)]
    [InlineData(283, 40)]
    [InlineData(25, 1)]
    [InlineData(900, 270)]
    public void A_thickness_goes_with_a_height(double height, double diameter) =>
        Assert.Equal(diameter, NewcomerSizes.DiameterFor(Three, Length.FromMillimetres(height))!.Value.Millimetres);

    [Fact]
    public void Where_no_trunk_has_both_nothing_goes_with_either()
    {
        Assert.Null(NewcomerSizes.HeightFor(State((20, null)), Length.FromMillimetres(10)));
        Assert.Null(NewcomerSizes.DiameterFor(State(), Length.FromMillimetres(10)));
    }

    [Fact]
    public void What_goes_with_what_goes_with_a_size_is_that_size_again() =>
        Gen.Int[40, 400].Sample(height => Assert.InRange(NewcomerSizes.HeightFor(Three, NewcomerSizes.DiameterFor(Three, Length.FromMillimetres(height))!.Value)!.Value.Millimetres, height - 8, height + 8));

    private static (double Diameter, double? Height) Millimetres((Length Diameter, Length? Height) sizes) => (sizes.Diameter.Millimetres, sizes.Height?.Millimetres);

    private static PlantingState State(params (double Diameter, double? Height)[] sizes) => PlantingState.Of(
        new Planting
        {
            Trunks = [.. sizes.Select((size, index) => new Trunk
            {
                Name = $"T{index}",
                Origin = Origin.Default,
                At = new(PlanPoint.FromMillimetres(60 * index, 0), Origin.Default),
                Diameter = new(Length.FromMillimetres(size.Diameter), Origin.Default),
                Height = size.Height is { } height ? new(Length.FromMillimetres(height), Origin.Default) : null,
            })],
        },
        null);
}
