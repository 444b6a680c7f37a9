using CsCheck;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Model.Tests;

public sealed class QuantityTests
{
    [Theory]
    [InlineData(0, 0, 1)]
    [InlineData(90, 1, 0)]
    [InlineData(180, 0, -1)]
    [InlineData(270, -1, 0)]
    public void Bearings_run_clockwise_from_the_back(double degrees, double rightward, double backward)
    {
        Assert.Equal(rightward, new Bearing(degrees).Rightward, 12);
        Assert.Equal(backward, new Bearing(degrees).Backward, 12);
        Assert.Equal(degrees, Bearing.Of(rightward, backward).Degrees, 9);
    }

    [Theory]
    [InlineData(-90, 270)]
    [InlineData(360, 0)]
    [InlineData(725, 5)]
    [InlineData(-0.0, 0)]
    public void Full_turns_are_taken_off_a_bearing(double degrees, double folded) => Assert.Equal(folded, new Bearing(degrees).Degrees);

    [Fact]
    public void A_bearing_is_never_a_full_turn() => Gen.Double[-1e6, 1e6].Sample(degrees => new Bearing(degrees).Degrees is >= 0 and < 360);

    [Fact]
    public void No_step_has_the_bearing_of_the_back() => Assert.Equal(Bearing.Back, PlanPoint.Origin.BearingTo(PlanPoint.Origin));

    [Fact]
    public void A_place_is_found_again_from_its_distance_and_bearing() =>
        Gen.Select(Gen.Double[-1000, 1000], Gen.Double[-1000, 1000]).Sample((x, y) =>
        {
            var place = PlanPoint.FromMillimetres(x, y);
            var distance = PlanPoint.Origin.DistanceTo(place).Millimetres;
            var bearing = PlanPoint.Origin.BearingTo(place);
            return Math.Abs((bearing.Rightward * distance) - x) < 1e-5 && Math.Abs((bearing.Backward * distance) - y) < 1e-5;
        });

    [Fact]
    public void Lengths_add_without_loss() =>
        Gen.Select(Gen.Long[-1_000_000_000_000, 1_000_000_000_000], Gen.Long[-1_000_000_000_000, 1_000_000_000_000]).Sample((left, right) =>
            new Length(left) + new Length(right) - new Length(right) == new Length(left));

    [Fact]
    public void Every_length_that_the_language_takes_passes_through_millimetres_unchanged() =>
        Gen.Long[-1_000_000_000_000, 1_000_000_000_000].Sample(nanometres => Length.FromMillimetres(new Length(nanometres).Millimetres) == new Length(nanometres));

    [Theory]
    [InlineData(0.0000005, 1)]
    [InlineData(-0.0000005, -1)]
    [InlineData(0.0000004, 0)]
    public void Halves_of_a_nanometre_are_rounded_away_from_zero(double millimetres, long nanometres) =>
        Assert.Equal(new Length(nanometres), Length.FromMillimetres(millimetres));

    [Fact]
    public void What_is_no_length_is_refused()
    {
        Assert.Throws<OverflowException>(() => Length.FromMillimetres(double.NaN));
        Assert.Throws<OverflowException>(() => Length.FromMillimetres(double.PositiveInfinity));
        Assert.Throws<OverflowException>(() => Length.FromMillimetres(1e300));
    }

    // NIST SP 811, appendix B.8: 1 in = 25.4 mm exactly.
    [Fact]
    public void An_inch_is_25_4_millimetres() => Assert.Equal(1, Length.FromMillimetres(25.4).Inches);
}
