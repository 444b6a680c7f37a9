using System.Globalization;
using System.Numerics;
using CsCheck;
using GroveSpec.Binding.Quantities;
using GroveSpec.Model.Quantities;
using UnitsNet.Units;
using Xunit;

namespace GroveSpec.Binding.Tests.Quantities;

public sealed class LengthTests
{
    private static readonly long[] Factors = [1_000_000, 10_000_000, 25_400_000, 304_800_000];

    // NIST SP 811 appendix B.8: 1 in = 25.4 mm and 1 ft = 304.8 mm, both exactly.
    [Theory]
    [InlineData("1 in", 25_400_000)]
    [InlineData("1 ft", 304_800_000)]
    [InlineData("1 mm", 1_000_000)]
    [InlineData("1 cm", 10_000_000)]
    [InlineData("1 m", 1_000_000_000)]
    [InlineData("1", 1_000_000)]
    [InlineData("0.000001 mm", 1)]
    [InlineData("0.0000005 mm", 1)]
    [InlineData("0.0000004999999999999999999999999999 mm", 0)]
    [InlineData("0.0000005000000000000000000000000000 mm", 1)]
    [InlineData("0.1 in", 2_540_000)]
    [InlineData("0.3 in", 7_620_000)]
    [InlineData("33.1 mm", 33_100_000)]
    [InlineData("3280.8398950131 ft", 1_000_000_000_000)]
    [InlineData("1000 m", 1_000_000_000_000)]
    public void A_length_is_taken_to_the_nanometre(string written, long nanometres)
    {
        if (nanometres == 0)
        {
            Assert.Equal(0, DecimalNumber.Scaled(written.Split(' ')[0], 1_000_000));
            return;
        }

        var trunk = Planted.Under($"trunk A at 0, 0 mm height {written}").Planting.Trunks[0];
        Assert.Equal(new Length(nanometres), trunk.Height?.Value);
    }

    [Theory]
    [InlineData("mm", LengthUnit.Millimeter)]
    [InlineData("cm", LengthUnit.Centimeter)]
    [InlineData("m", LengthUnit.Meter)]
    [InlineData("in", LengthUnit.Inch)]
    [InlineData("ft", LengthUnit.Foot)]
    public void UnitsNet_gives_the_same_millimetres(string unit, LengthUnit oracle) =>
        Gen.Int[1, 300_000].Select(thousandths => thousandths / 1000m).Sample(amount =>
        {
            var number = amount.ToString(CultureInfo.InvariantCulture);
            var ours = DecimalNumber.Scaled(number, UnitTable.Nanometres(UnitTable.Exact(unit)!.Value))!.Value / 1e6;
            var theirs = UnitsNet.Length.From((double)amount, oracle).Millimeters;
            return Math.Abs(ours - theirs) <= 1e-6 * Math.Max(1, theirs);
        });

    [Fact]
    public void Rounding_agrees_with_exact_fractions_at_any_length() =>
        Gen.Select(Gen.Int[0, 999_999], Gen.Char['0', '9'].Array[0, 40], Gen.Int[0, Factors.Length - 1].Select(index => Factors[index]), Gen.Bool).Sample((whole, decimals, factor, isNegative) =>
        {
            var text = (isNegative ? "-" : "") + whole.ToString(CultureInfo.InvariantCulture) + (decimals.Length == 0 ? "" : "." + new string(decimals));
            var digits = BigInteger.Parse(whole.ToString(CultureInfo.InvariantCulture) + new string(decimals), CultureInfo.InvariantCulture);
            var scale = BigInteger.Pow(10, decimals.Length);
            var product = digits * factor;
            var quotient = BigInteger.DivRem(product, scale, out var rest);
            var expected = (long)(rest * 2 >= scale ? quotient + 1 : quotient);
            return DecimalNumber.Scaled(text, factor) == (isNegative ? -expected : expected);
        });

    [Fact]
    public void A_girth_is_pi_times_a_diameter()
    {
        // 88 mm / π = 28.011270 mm, worked out by hand to the nanometre: 28011269.98...
        var trunk = Planted.Under("trunk A at 0, 0 mm girth 88 mm").Planting.Trunks[0];
        Assert.Equal(new Length(28_011_270), trunk.Diameter?.Value);
        Assert.True(trunk.IsGirth);
    }

    [Fact]
    public void Nine_followed_by_four_hundred_digits_is_beyond_what_is_taken()
    {
        var assessment = Planted.Under($"trunk A at 0, 0 mm height {new string('9', 401)} mm");
        Assert.Contains("beyond the 1 km", assessment.Only("out-of-range").Message, StringComparison.Ordinal);
        Assert.Null(assessment.Planting.Trunks[0].Height);
    }

    [Fact]
    public void Minus_zero_is_zero()
    {
        var at = Planted.Under("trunk A at -0, -0.0 mm").Planting.Trunks[0].At!.Value.Value;
        Assert.Equal(PlanPoint.Origin, at);
    }

    [Fact]
    public void A_unit_behind_a_list_holds_for_those_before_it()
    {
        var planting = Planted.Of("container oval 40 x 30 x 5 cm\ntrunk A at 1, 2 in line (0,0,0) (1,1,9) cm\ntask W wire on A in autumn 2026 with copper 2 mm, span 4 to 26 cm").Planting;
        Assert.Equal(Length.FromMillimetres(400), Assert.IsType<Model.Containers.Container.Oval>(planting.Container).Width);
        Assert.Equal(PlanPoint.FromMillimetres(25.4, 50.8), planting.Trunks[0].At?.Value);
        Assert.Equal(Length.FromMillimetres(90), planting.Trunks[0].Line[1].Z);
        Assert.Contains(planting.Tasks[0].Details, detail => detail is Model.Tasks.TaskDetail.Span { From.Millimetres: 40, To.Millimetres: 260 });
    }

    [Fact]
    public void Fahrenheit_is_turned_into_Celsius()
    {
        // 50 °F is 10 °C: (50 − 32) / 1.8.
        var means = Planted.Under("site means 50 50 50 50 50 50 50 50 50 50 50 32 F").Planting.Site?.MonthlyMeans?.Value;
        Assert.Equal(10, means!.Value[0].Celsius, 12);
        Assert.Equal(0, means.Value[11].Celsius, 12);
    }
}
