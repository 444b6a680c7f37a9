using GroveSpec.Craft.Wire;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Tasks;
using Xunit;

namespace GroveSpec.Craft.Tests.Wire;

public sealed class WireGaugeTests
{
    [Theory]
    // American wire gauge, ASTM B258 as printed in secondary tables; to half the last digit.
    [InlineData(18, 1.0237)]
    [InlineData(16, 1.2908)]
    [InlineData(12, 2.0525)]
    [InlineData(8, 3.2636)]
    [InlineData(6, 4.1154)]
    public void A_gauge_has_the_diameter_of_the_tables(int gauge, double millimetres) =>
        Assert.Equal(millimetres, WireGauge.Diameter(gauge).Millimetres, 0.0005);

    [Fact]
    public void Aluminium_is_sold_from_one_to_six_millimetres_by_halves() =>
        Assert.Equal([1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6], WireSizes.Sold(WireMetal.Aluminium).Select(size => size.Diameter.Millimetres));

    [Fact]
    public void Copper_is_sold_by_even_gauges() =>
        Assert.Equal([1.02, 1.29, 1.63, 2.05, 2.59, 3.26, 4.12], WireSizes.Sold(WireMetal.Copper).Select(size => size.Diameter.Millimetres));

    [Theory]
    // Equal plastic moments of copper of 54 MPa and aluminium of 34 MPa: (34 / 54)^⅓.
    [InlineData(0.857)]
    public void A_copper_wire_may_be_thinner_by_the_root_of_the_yield_stresses(double share) =>
        Assert.Equal(1 / share, WireSizes.AluminiumEqual(WireMetal.Copper, Length.FromMillimetres(1), 1).Millimetres, 0.001);

    [Fact]
    public void Eight_wires_bend_as_hard_as_one_of_twice_the_diameter() =>
        Assert.Equal(Length.FromMillimetres(6), WireSizes.AluminiumEqual(WireMetal.Aluminium, Length.FromMillimetres(3), 8));

    [Theory]
    [InlineData(WireMetal.Aluminium, 3.2, 1, 3)]
    [InlineData(WireMetal.Aluminium, 3.25, 1, 3)]
    [InlineData(WireMetal.Aluminium, 3.250001, 1, 3.5)]
    [InlineData(WireMetal.Aluminium, 0.2, 1, 1)]
    [InlineData(WireMetal.Aluminium, 9, 1, 6)]
    [InlineData(WireMetal.Aluminium, 6.93, 2, 5.5)]
    [InlineData(WireMetal.Copper, 3.8, 1, 3.26)]
    public void The_nearest_size_is_found_and_of_two_as_near_the_thinner(WireMetal metal, double wanted, int strands, double millimetres) =>
        Assert.Equal(millimetres, WireSizes.Nearest(metal, Length.FromMillimetres(wanted), strands).Diameter.Millimetres);
}
