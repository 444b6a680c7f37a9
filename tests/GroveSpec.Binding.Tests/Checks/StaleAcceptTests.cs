using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class StaleAcceptTests
{
    private const string Row = "trunk A at 0, 0 mm diameter 20 mm height 300 mm\ntrunk B at 60, 0 mm diameter 30 mm height 400 mm\ntrunk C at 150, 0 mm diameter 40 mm height 520 mm\n";

    [Fact]
    public void An_accept_that_lets_a_finding_stand_is_not_told()
    {
        Assert.NotEmpty(Planted.Under(Row).Found("three-in-line"));
        var assessment = Planted.Under(Row + "accept three-in-line C A B because \"the sea wall\"\n");
        Assert.Empty(assessment.Found("three-in-line"));
        Assert.Empty(assessment.Found("stale-accept"));
        Assert.Contains(assessment.Accepted, finding => finding.Check.Name == "three-in-line");
    }

    [Fact]
    public void An_accept_that_matches_nothing_is_told_and_can_be_taken_out()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm diameter 20 mm height 300 mm\naccept near-rim A because \"it hangs over\"\n");
        var finding = assessment.Only("stale-accept");
        Assert.Empty(Planted.Of(assessment.Mended(finding)).Found("stale-accept"));
    }

    [Fact]
    public void An_accept_of_a_check_that_is_not_there_is_told_only_as_that()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm diameter 20 mm height 300 mm\naccept beauty A because \"it is\"\n");
        Assert.Empty(assessment.Found("stale-accept"));
        Assert.Single(assessment.Found("unknown-check"));
    }

    [Fact]
    public void A_finding_accepted_twice_is_told_once_as_that()
    {
        var assessment = Planted.Under(Row + "accept three-in-line A B C because \"one\"\naccept three-in-line A B C because \"two\"\n");
        Assert.Empty(assessment.Found("stale-accept"));
        Assert.Single(assessment.Found("twice-accepted"));
        Assert.Single(assessment.Planting.Accepted);
    }
}
