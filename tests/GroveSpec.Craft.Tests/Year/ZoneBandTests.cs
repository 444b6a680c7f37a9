using GroveSpec.Craft.Year;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Sites;
using Xunit;

namespace GroveSpec.Craft.Tests.Year;

public sealed class ZoneBandTests
{
    [Theory]
    // USDA plant hardiness zones: the lower bound of each, in degrees Celsius to the tenth.
    [InlineData(1, 'a', -51.1)]
    [InlineData(5, 'a', -28.9)]
    [InlineData(6, 'a', -23.3)]
    [InlineData(7, 'a', -17.8)]
    [InlineData(8, 'a', -12.2)]
    [InlineData(9, 'a', -6.7)]
    [InlineData(13, 'b', 18.3)]
    public void A_zone_begins_where_the_map_says(int number, char half, double coldest) =>
        Assert.Equal(coldest, ZoneBand.Of(new HardinessZone(number, half)).Coldest.Celsius, 0.05);

    [Fact]
    public void Halves_lie_side_by_side_and_a_whole_zone_is_both()
    {
        for (var number = 1; number <= 13; number++)
        {
            var (colder, warmer, whole) = (ZoneBand.Of(new(number, 'a')), ZoneBand.Of(new(number, 'b')), ZoneBand.Of(new(number, null)));
            Assert.Equal(colder.Warmest, warmer.Coldest);
            Assert.Equal((colder.Coldest, warmer.Warmest), (whole.Coldest, whole.Warmest));
            Assert.Equal(warmer.Warmest, ZoneBand.Of(new(number + 1, 'a')).Coldest);
        }
    }

    [Fact]
    public void A_temperature_lies_in_the_half_zone_that_begins_at_or_below_it()
    {
        for (var number = 1; number <= 13; number++)
        {
            foreach (var half in "ab")
            {
                var zone = new HardinessZone(number, half);
                var band = ZoneBand.Of(zone);
                Assert.Equal(zone, ZoneBand.At(band.Coldest));
                Assert.Equal(zone, ZoneBand.At(new Temperature(band.Warmest.Celsius - 0.001)));
            }
        }

        Assert.Equal(new HardinessZone(1, 'a'), ZoneBand.At(new Temperature(-80)));
        Assert.Equal(new HardinessZone(13, 'b'), ZoneBand.At(new Temperature(40)));
    }
}
