using GroveSpec.Craft.Calendar;
using GroveSpec.Craft.Care;
using GroveSpec.Craft.Wire;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Craft.Tests.Wire;

public sealed class BendingTests
{
    private static readonly Stress AluminiumYield = new(34);

    [Theory]
    // D / 2R by hand.
    [InlineData(6, 200, 0.015)]
    [InlineData(10, 500, 0.010)]
    public void The_outer_fibres_are_stretched_by_the_thickness_over_twice_the_radius(double thickness, double radius, double strain) =>
        Assert.Equal(strain, Bending.OuterFibreStrain(Millimetres(thickness), Millimetres(radius)).Share, 1e-12);

    [Theory]
    // σd³/6 of a round bar that has yielded, for the yield stresses of two handbooks.
    [InlineData(34, 2, 45.33)]
    [InlineData(34, 3, 153.0)]
    [InlineData(54, 2, 72.0)]
    public void A_wire_bears_the_plastic_moment_of_a_round_bar(double yield, double diameter, double moment) =>
        Assert.Equal(moment, Bending.OfWires(new Stress(yield), Millimetres(diameter), 1).NewtonMillimetres, 0.005);

    [Theory]
    // For wood of 7,700 MPa at a strain of 0.001.
    [InlineData(34, 0.511, 0.0005)]
    [InlineData(75, 0.3925, 0.00005)]
    public void The_balancing_wire_is_that_of_the_derivation(double yield, double share, double tolerance) =>
        Assert.Equal(share, Bending.BalancingShare(new Proportion(0.001), new Stress(7_700), new Stress(yield), 1), tolerance);

    [Theory]
    // Inverse: a wire of a third balances only this strain.
    [InlineData(34, 0.00028)]
    [InlineData(75, 0.00061)]
    public void A_third_balances_only_a_small_strain(double yield, double strain) =>
        Assert.Equal(1 / 3.0, Bending.BalancingShare(new Proportion(strain), new Stress(7_700), new Stress(yield), 1), 0.002);

    [Fact]
    public void A_balancing_wire_bears_what_the_wood_asks()
    {
        var (thickness, strain, wood) = (Millimetres(9), new Proportion(0.004), new Stress(9_600));
        var wire = thickness * Bending.BalancingShare(strain, wood, AluminiumYield, 2);
        Assert.Equal(Bending.OfWood(wood, strain, thickness).NewtonMillimetres, Bending.OfWires(AluminiumYield, wire, 2).NewtonMillimetres, 0.01);
    }

    [Theory]
    // 1 − M / EIκ of an elastic, then perfectly plastic wire: soft aluminium of 3 mm.
    [InlineData(100, 0.944)]
    [InlineData(30, 0.983)]
    public void A_wire_alone_keeps_most_of_a_sharp_bend(double radius, double kept) =>
        Assert.Equal(kept, Bending.KeptAlone(WireMaterial.Aluminium, Millimetres(3), Millimetres(radius)).Share, 0.0005);

    [Fact]
    public void A_wire_that_is_hardly_bent_keeps_nothing() =>
        Assert.Equal(0, Bending.KeptAlone(WireMaterial.Aluminium, Millimetres(3), Millimetres(1e6)).Share);

    [Theory]
    // Costello, Theory of Wire Rope, for a Poisson's ratio of 0.33.
    [InlineData(45, 0.653)]
    [InlineData(55, 0.516)]
    public void A_wound_wire_is_softer_than_a_straight_one(double coil, double share) =>
        Assert.Equal(share, Bending.StiffnessOfCoil(new Angle(coil)), 0.0005);

    [Fact]
    public void A_bend_spread_over_the_length_for_a_strain_has_that_strain()
    {
        var (thickness, angle, strain) = (Millimetres(11), new Angle(25), new Proportion(0.0061));
        var length = Bending.LengthFor(thickness, angle, strain);
        Assert.Equal(strain.Share, Bending.OuterFibreStrain(thickness, Bending.Radius(length, angle)).Share, 1e-8);
    }

    [Theory]
    // FPL-GTR-190, table 5-3a, green: modulus of rupture over modulus of elasticity.
    [InlineData("ulmus-parvifolia", "green wood of American elm", 0.0065)]
    [InlineData("acer-palmatum", "green wood of red maple", 0.0055)]
    [InlineData("fagus-crenata", "green wood of American beech", 0.0062)]
    [InlineData("larix-kaempferi", "green wood of tamarack", 0.0059)]
    [InlineData("juniperus-chinensis", "green wood of eastern redcedar", 0.0107)]
    [InlineData("pinus-thunbergii", "green wood of red pine", 0.0045)]
    public void A_species_is_held_against_a_wood_of_its_genus(string species, string wood, double strain)
    {
        var green = GreenWood.Of(new TreeKind(species, null, TreeYear.Of(new Planting(), species)));
        Assert.Equal(wood, green.Wood);
        Assert.True(green.IsOfGenus);
        Assert.Equal(strain, green.BreakingStrain.Share, 0.00005);
    }

    [Theory]
    [InlineData("ficus-microcarpa")]
    [InlineData("acerola")]
    [InlineData("")]
    [InlineData(null)]
    public void Another_species_is_held_against_the_span_of_green_woods(string? species)
    {
        // Record 1914: 643,000 to 1,769,000 psi.
        var green = GreenWood.Of(new TreeKind(species, null, TreeYear.Of(new Planting(), species)));
        Assert.False(green.IsOfGenus);
        Assert.Equal(643_000 * 0.00689476, green.Softest.Megapascals, 50.0);
        Assert.Equal(1_769_000 * 0.00689476, green.Stiffest.Megapascals, 50.0);
    }

    [Fact]
    public void A_metre_of_wire_weighs_its_volume_times_its_density()
    {
        // 3 mm: 7.0686 cm³ a metre, at 2.70 and 8.94 g/cm³.
        Assert.Equal(19.085, WireMaterial.Aluminium.MassOf(Millimetres(3), Millimetres(1000)).Grams, 0.001);
        Assert.Equal(63.193, WireMaterial.Copper.MassOf(Millimetres(3), Millimetres(1000)).Grams, 0.001);
    }

    private static Length Millimetres(double millimetres) => Length.FromMillimetres(millimetres);
}
