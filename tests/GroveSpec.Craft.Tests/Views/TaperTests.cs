using GroveSpec.Craft.Views;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Craft.Tests.Views;

public sealed class TaperTests
{
    private static double Radius(double share) =>
        Taper.RadiusAt(Length.FromMillimetres(30), Length.FromMillimetres(300), share).Millimetres;

    [Fact]
    public void A_trunk_thins_all_the_way_up()
    {
        for (var step = 1; step <= 100; step++)
        {
            Assert.True(Radius(step / 100.0) < Radius((step - 1) / 100.0));
        }
    }

    [Fact]
    public void The_flare_widens_the_soil_line_and_is_gone_two_diameters_up()
    {
        Assert.Equal(15 * 1.42, Radius(0), 6);
        Assert.InRange(Taper.Flare(2), 0, 0.003);
    }

    [Fact]
    public void The_tip_is_blunt()
    {
        Assert.Equal(15 * 0.07, Radius(1), 3);
        Assert.Equal(Radius(1), Radius(4));
        Assert.Equal(Radius(0), Radius(-1));
    }
}
