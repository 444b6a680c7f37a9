using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

/// <summary>Common practice: about four weeks after work on the roots.</summary>
public sealed class FedTooSoonTests
{
    private const string Name = "fed-too-soon";
    private const string Repot = "task R repot on A on 2027-03-20\n";

    [Theory]
    [InlineData("2027-03-19", false)]
    [InlineData("2027-03-20", true)]
    [InlineData("2027-04-16", true)]
    [InlineData("2027-04-17", false)]
    public void It_is_told_up_to_the_twenty_seventh_day(string day, bool isTold) =>
        Assert.Equal(isTold ? 1 : 0, Check.Findings(Name, CareSource.Of("zelkova-serrata", $"{Repot}task F feed on A on {day}")).Length);

    [Theory]
    [InlineData("2027-04-02", true)]
    [InlineData("2027-04-03", false)]
    public void A_tolerance_moves_the_limit(string day, bool isTold) =>
        Assert.Equal(isTold ? 1 : 0, Check.Findings(Name, CareSource.Of("zelkova-serrata", $"{Repot}task F feed on A on {day}\ntolerance fed-too-soon 14 days")).Length);

    [Fact]
    public void The_first_of_many_feeds_counts_and_is_a_hint()
    {
        var finding = CareSource.Hit(Name, CareSource.Of("zelkova-serrata", "task R root-prune on A done 2027-03-20\ntask F feed on all every 3 weeks, from 2027-04-01 to 2027-08-01"));
        Assert.Equal((12, 28, "days", Severity.Hint), (finding.Measured, finding.Limit, finding.Unit, finding.Severity));
        Assert.Equal("F (feed) on all trunks comes at most 12 days after R (root-prune), and fresh cut roots are left 28 days without fertiliser. Begin later.", finding.Message);
    }

    [Fact]
    public void Where_the_days_can_be_chosen_far_enough_apart_or_it_is_another_trunk_nothing_is_told()
    {
        CareSource.Miss(Name, CareSource.Of("zelkova-serrata", "task R repot on A from 2027-03-01 to 2027-03-31\ntask F feed on A on 2027-04-10"));
        CareSource.Miss(Name, CareSource.Of("zelkova-serrata", Repot + "task F feed on B on 2027-04-01"));
    }
}
