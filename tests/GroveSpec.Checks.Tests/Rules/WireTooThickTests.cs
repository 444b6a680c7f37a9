using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

/// <summary>Common practice: about a third of the trunk's thickness where it bends.</summary>
public sealed class WireTooThickTests
{
    private const string Name = "wire-too-thick";

    // At 150 of 300 mm a trunk of 30 mm has 17.0512 mm left: 45 % of it is 7.6731 mm.
    private const string Middle = ", span 100 to 200 mm";

    [Theory]
    [InlineData("7.674 mm", 1)]
    [InlineData("7.673 mm", 0)]
    public void Nine_twentieths_of_the_thickness_where_it_works_is_the_limit(string size, int count) =>
        Assert.Equal(count, Check.Findings(Name, WireSource.Of($"with aluminium {size}{Middle}")).Length);

    [Fact]
    public void The_remedy_takes_the_nearest_size_of_the_same_metal()
    {
        // A third of 17.05 mm is 5.68 mm of aluminium, for which copper may have 4.87 mm; the thickest sold is gauge 6.
        var source = WireSource.Of("with copper 7 mm" + Middle);
        var finding = CareSource.Hit(Name, source);
        Assert.Contains("copper of 7 mm, which bends as hard as one aluminium wire of 8.2 mm, on A: 48 % of the 17 mm", finding.Message, StringComparison.Ordinal);
        Assert.Equal("take copper of 4.12 mm (gauge 6)", finding.Remedies[0].Title);
        var mended = CareSource.Mended(source, finding.Remedies[0]);
        Assert.Contains("with copper 4.12 mm, span", mended, StringComparison.Ordinal);
        CareSource.Miss(Name, mended);
        CareSource.Miss("wire-too-thin", mended);
    }

    [Fact]
    public void Of_a_trunk_thinner_than_any_wire_the_finding_says_what_else_there_is()
    {
        var source = WireSource.Of("with aluminium 1 mm, span 10 to 90 mm").Replace("diameter 30 mm", "diameter 2 mm", StringComparison.Ordinal);
        Assert.Contains("Every wire sold is thicker: bend it by hand and hold it with raffia or a soft tie instead.", CareSource.Hit(Name, source).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tolerance_moves_the_limit() =>
        CareSource.Miss(Name, WireSource.Of("with aluminium 8 mm" + Middle) + "tolerance wire-too-thick 50 %\n");

    [Fact]
    public void A_newer_reading_of_the_trunk_counts() =>
        CareSource.Miss(Name, WireSource.Of("with aluminium 8 mm" + Middle) + "measured 2027-08-30 {\n  A  diameter 34 mm\n}\n");
}
