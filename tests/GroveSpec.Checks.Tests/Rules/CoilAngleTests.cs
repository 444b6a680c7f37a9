using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

/// <summary>Common practice: 45 to 55 degrees from the trunk's axis.</summary>
public sealed class CoilAngleTests
{
    private const string Name = "coil-angle";

    [Theory]
    [InlineData("55.1", "55 deg")]
    [InlineData("44.9", "45 deg")]
    public void Beyond_a_limit_is_told_and_the_remedy_winds_it_at_the_limit(string angle, string remedy)
    {
        var source = WireSource.Of($"coil {angle} deg");
        var finding = CareSource.Hit(Name, source);
        Assert.Equal(double.Parse(angle, System.Globalization.CultureInfo.InvariantCulture), finding.Measured);
        Assert.Equal("wind it at " + remedy, finding.Remedies[0].Title);
        var mended = CareSource.Mended(source, finding.Remedies[0]);
        Assert.Contains("coil " + remedy, mended, StringComparison.Ordinal);
        CareSource.Miss(Name, mended);
    }

    [Theory]
    [InlineData("45")]
    [InlineData("50")]
    [InlineData("55")]
    public void Up_to_both_limits_nothing_is_told(string angle) => CareSource.Miss(Name, WireSource.Of($"coil {angle} deg"));

    [Fact]
    public void Where_no_angle_is_written_nothing_is_told() => CareSource.Miss(Name, WireSource.Of("span 20 to 160 mm"));

    [Fact]
    public void It_says_what_is_wrong_with_a_close_and_with_an_open_coil()
    {
        Assert.Equal(
            "W (wire) is wound at 65 deg from the trunk’s axis: wound as close as that, like a spring, it gives no purchase. Common practice is 45 to 55 deg.",
            CareSource.Hit(Name, WireSource.Of("coil 65 deg")).Message);
        Assert.Contains("wound as open as that, there is too little wire round the trunk to hold", CareSource.Hit(Name, WireSource.Of("coil 30 deg")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tolerance_moves_both_limits()
    {
        CareSource.Miss(Name, WireSource.Of("coil 60 deg") + "tolerance coil-angle 10 deg\n");
        Assert.Equal(52, CareSource.Hit(Name, WireSource.Of("coil 54 deg") + "tolerance coil-angle 2 deg\n").Limit);
    }

    [Fact]
    public void Of_a_wire_that_is_off_nothing_is_told() =>
        CareSource.Miss(Name, WireSource.Of("coil 65 deg", "done 2027-09-10", "done 2027-10-30"));
}
