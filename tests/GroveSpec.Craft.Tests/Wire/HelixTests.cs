using CsCheck;
using GroveSpec.Craft.Wire;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Craft.Tests.Wire;

public sealed class HelixTests
{
    [Theory]
    // Worked out apart from this project for a trunk of 10 mm, a wire of 3 mm and 300 mm of trunk.
    [InlineData(45, 424.264, 40.8407, 7.3456)]
    [InlineData(55, 523.034, 28.5970, 10.4906)]
    public void A_straight_trunk_takes_the_wire_of_the_worked_example(double coil, double length, double pitch, double turns)
    {
        var (trunk, wire, run, angle) = (Millimetres(10), Millimetres(3), Millimetres(300), new Angle(coil));
        Assert.Equal(length, Helix.Length(run, angle).Millimetres, 0.0005);
        Assert.Equal(pitch, Helix.Pitch(trunk, wire, angle).Millimetres, 0.00005);
        Assert.Equal(turns, Helix.Turns(run, trunk, trunk, wire, angle), 0.00005);
    }

    [Fact]
    public void A_tapering_trunk_takes_the_wire_of_the_worked_example()
    {
        // 12 mm to 6 mm over 300 mm, a wire of 2 mm at 50°; worked out apart from this project.
        var angle = new Angle(50);
        Assert.Equal(466.717, Helix.Length(Millimetres(300), angle).Millimetres, 0.0005);
        Assert.Equal(10.6144, Helix.Turns(Millimetres(300), Millimetres(12), Millimetres(6), Millimetres(2), angle), 0.00005);
    }

    [Fact]
    public void Turns_agree_with_a_wire_followed_step_by_step() =>
        Gen.Select(Gen.Double[2, 60], Gen.Double[2, 60], Gen.Double[0.8, 8], Gen.Double[20, 500], Gen.Double[10, 80]).Sample((lower, upper, wire, run, coil) =>
        {
            const int Steps = 4000;
            var turned = 0.0;
            for (var step = 0; step < Steps; step++)
            {
                // Each step climbs a little and turns by as much as the angle asks for at that radius.
                var radius = (lower + ((upper - lower) * (step + 0.5) / Steps) + wire) / 2;
                turned += run / Steps * Math.Tan(coil * Math.PI / 180) / radius;
            }

            var turns = Helix.Turns(Millimetres(run), Millimetres(lower), Millimetres(upper), Millimetres(wire), new Angle(coil));
            Assert.Equal(turned / (2 * Math.PI), turns, turns * 1e-5);
        });

    [Fact]
    public void A_trunk_that_hardly_thins_takes_as_many_turns_as_one_that_does_not() =>
        Assert.Equal(
            Helix.Turns(Millimetres(300), Millimetres(10), Millimetres(10), Millimetres(3), new Angle(50)),
            Helix.Turns(Millimetres(300), Millimetres(10.00001), Millimetres(10), Millimetres(3), new Angle(50)),
            1e-5);

    private static Length Millimetres(double millimetres) => Length.FromMillimetres(millimetres);
}
