using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

/// <summary>Common practice: about a third of the trunk's thickness where it bends.</summary>
public sealed class WireTooThinTests
{
    private const string Name = "wire-too-thin";

    // At 150 of 300 mm a trunk of 30 mm has 30 × (0.07 + 0.93 × 0.5^0.9) = 17.05 mm left: a quarter is 4.2628 mm, a third 5.68 mm.
    private const string Middle = ", span 100 to 200 mm";

    [Fact]
    public void Under_a_quarter_of_the_thickness_where_it_works_is_told_and_the_remedy_takes_the_nearest_size()
    {
        var source = WireSource.Of("with aluminium 3 mm" + Middle);
        var finding = CareSource.Hit(Name, source);
        Assert.Equal(
            "W (wire) has aluminium of 3 mm on A: 18 % of the 17 mm that A has 150 mm up the trunk, where the wire does its work. Common practice is about a third, here 5.7 mm. The nearest that is sold is aluminium of 5.5 mm. No figure promises that a wire holds.",
            finding.Message);
        Assert.Equal("A", Assert.Single(finding.Trunks));
        Assert.Equal("take aluminium of 5.5 mm", finding.Remedies[0].Title);
        var mended = CareSource.Mended(source, finding.Remedies[0]);
        Assert.Contains(" with aluminium 5.5 mm, span", mended, StringComparison.Ordinal);
        CareSource.Miss(Name, mended);
        CareSource.Miss("wire-too-thick", mended);
    }

    [Theory]
    [InlineData("4.262 mm", 1)]
    [InlineData("4.263 mm", 0)]
    public void Exactly_a_quarter_is_the_limit(string size, int count) =>
        Assert.Equal(count, Check.Findings(Name, WireSource.Of($"with aluminium {size}{Middle}")).Length);

    [Theory]
    // Two wires bend as hard as one of 1.26 times the diameter: 4.2628 / 2^⅓ is 3.3834 mm.
    [InlineData("2 x aluminium 3.38 mm", 1)]
    [InlineData("2 x aluminium 3.39 mm", 0)]
    // Copper of 54 MPa against aluminium of 34 MPa: 4.2628 × (34 / 54)^⅓ is 3.6537 mm.
    [InlineData("copper 3.65 mm", 1)]
    [InlineData("copper 3.66 mm", 0)]
    public void Two_wires_and_copper_are_taken_as_the_aluminium_wire_that_bends_as_hard(string wire, int count) =>
        Assert.Equal(count, Check.Findings(Name, WireSource.Of($"with {wire}{Middle}")).Length);

    [Fact]
    public void Lower_on_the_trunk_the_same_wire_is_thinner_against_it()
    {
        CareSource.Miss(Name, WireSource.Of("with aluminium 5 mm, span 100 to 200 mm"));
        CareSource.Hit(Name, WireSource.Of("with aluminium 5 mm, span 0 to 60 mm"));
    }

    [Fact]
    public void Of_a_trunk_thicker_than_any_wire_the_finding_says_what_else_there_is()
    {
        var source = WireSource.Of("with aluminium 3 mm, span 10 to 90 mm").Replace("diameter 30 mm", "diameter 60 mm", StringComparison.Ordinal);
        var finding = CareSource.Hit(Name, source);
        Assert.Contains("No wire sold comes near it, not even two wires of aluminium of 6 mm: bend in small passes, or pull the trunk with a guy line instead.", finding.Message, StringComparison.Ordinal);
        Assert.StartsWith("let wire-too-thin", Assert.Single(finding.Remedies).Title, StringComparison.Ordinal);
    }

    [Fact]
    public void With_a_bend_the_moments_are_told_for_comparison()
    {
        // The strain is 17.05 × 0.20944 / 200 = 0.0179, past the 0.006 at which green woods break: 7,700 MPa × 0.006 × π × 17.05³ / 32 = 22.5 N m; the wire 34 × 27 / 6 = 153 N mm.
        var message = CareSource.Hit(Name, WireSource.Of("with aluminium 3 mm" + Middle + ", bend 12 deg toward 90 deg over 100 mm")).Message;
        Assert.EndsWith("For comparison only: at this bend green wood of many kinds pushes back with about 22 N m in a laboratory, and the wire bears 0.15 N m. Living wood yields and creeps, which this leaves out, and no figure promises that a wire holds.", message, StringComparison.Ordinal);
    }

    [Fact]
    public void On_several_trunks_each_is_told_by_itself_and_no_remedy_changes_the_others()
    {
        var findings = Check.Findings(Name, WireSource.Of("with aluminium 1.5 mm, span 20 to 100 mm").Replace("on A from", "on A B from", StringComparison.Ordinal));
        Assert.Equal(["A", "B"], findings.SelectMany(finding => finding.Trunks).Order());
        Assert.All(findings, finding => Assert.Contains("give this trunk a wire task of its own", finding.Message, StringComparison.Ordinal));
        Assert.All(findings, finding => Assert.StartsWith("let ", Assert.Single(finding.Remedies).Title, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("")]
    [InlineData("span 20 to 100 mm")]
    public void Without_a_wire_nothing_is_told(string details) => CareSource.Miss(Name, WireSource.Of(details));

    [Fact]
    public void Without_a_height_the_thickness_above_the_flare_is_taken()
    {
        var source = WireSource.Of("with aluminium 7.49 mm").Replace(" height 300 mm", "", StringComparison.Ordinal);
        Assert.Contains("that A has above its flare", CareSource.Hit(Name, source).Message, StringComparison.Ordinal);
        CareSource.Miss(Name, source.Replace("7.49", "7.51", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_a_wire_that_is_off_nothing_is_told() =>
        CareSource.Miss(Name, WireSource.Of("with aluminium 2 mm", "done 2027-09-10", "done 2027-10-30"));

    [Fact]
    public void A_tolerance_moves_the_limit() =>
        CareSource.Miss(Name, WireSource.Of("with aluminium 3 mm" + Middle) + "tolerance wire-too-thin 15 %\n");
}
