using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

/// <summary>
/// All by common practice. Of a trident maple bud-break begins from 28 to 7 days before the last frost and harden-off 42 to 70 after:
/// from the middle of the one, 2 April, to the middle of the other, 15 June, are 74 days. 74 days before the first frost, 28 October,
/// is 15 August; leaves may fall from 21 October on.
/// </summary>
public sealed class LateCutTests
{
    private const string Name = "late-cut";

    [Theory]
    [InlineData("2027-08-15", false)]
    [InlineData("2027-08-16", true)]
    [InlineData("2027-10-20", true)]
    [InlineData("2027-10-21", false)]
    [InlineData("2028-02-01", false)]
    public void It_is_told_from_the_day_on_which_a_shoot_has_too_little_time_until_the_leaves_fall(string day, bool isLate) =>
        Tell("acer-buergerianum", $"task P prune on A on {day}", isLate);

    [Fact]
    public void It_says_how_many_days_are_left_how_many_are_needed_and_what_to_do()
    {
        var finding = CareSource.Hit(Name, CareSource.Of("acer-buergerianum", "task P prune on A from 2027-08-01 to 2027-08-31"));
        Assert.Equal((58, 74, "days", Severity.Warning), (finding.Measured, finding.Limit, finding.Unit, finding.Severity));
        Assert.Equal(["A"], finding.Trunks);
        Assert.Equal("P (prune) on A may come as late as 58 days before the usual first frost, 28 October 2027, and a new shoot of trident maple needs about 74 to harden. Be done by 15 August 2027, or wait until about 21 October 2027, when a cut wakes nothing more.", finding.Message);
    }

    [Theory]
    [InlineData("2027-03-01", false)]
    [InlineData("2027-03-02", true)]
    public void In_the_south_it_is_told_in_its_own_autumn(string day, bool isLate)
    {
        // First frost 14 May 2027, 74 days behind 1 March.
        var source = CareSource.Of("acer-buergerianum", $"task P prune on A on {day}", CareSource.South);
        Assert.Equal(isLate, Check.Findings(Name, source).Length == 1);
    }

    [Theory]
    [InlineData("fagus-crenata", false)]
    [InlineData("pinus-sylvestris", false)]
    [InlineData("juniperus-chinensis", false)]
    [InlineData("ficus-microcarpa", false)]
    [InlineData("acer-palmatum", true)]
    [InlineData("zelkova-serrata", true)]
    public void What_shoots_once_a_year_or_has_no_winter_wakes_nothing_late(string species, bool wakes) => Tell(species, "task P prune on A on 2027-09-15", wakes);

    [Theory]
    [InlineData("acer-buergerianum", "pinch", true)]
    [InlineData("acer-palmatum", "pinch", false)]
    [InlineData("acer-palmatum", "defoliate", true)]
    [InlineData("acer-palmatum", "disbud", false)]
    [InlineData("acer-palmatum", "wire", false)]
    public void Pinching_wakes_only_what_shoots_again_and_again(string species, string kind, bool wakes) => Tell(species, $"task P {kind} on A on 2027-09-15", wakes);

    [Fact]
    public void Work_that_is_done_or_has_no_end_or_no_frost_to_fear_is_not_told()
    {
        Tell("acer-buergerianum", "task P prune on A on 2027-09-15 done 2027-09-15", false);
        Tell("acer-buergerianum", "task P prune on A after 2027-09-15", false);
        CareSource.Miss(Name, CareSource.Of("acer-buergerianum", "task P prune on A on 2027-09-15", "site latitude 50 N"));
    }

    [Fact]
    public void Of_work_that_comes_again_the_latest_day_counts()
    {
        var finding = CareSource.Hit(Name, CareSource.Of("acer-buergerianum", "task P pinch on all every 2 weeks, from 2027-07-01 to 2027-09-30"));

        // 1 and 15 July, 12 and 26 August, 9 and 23 September: 35 days before the frost.
        Assert.Equal(35, finding.Measured);
        Assert.EndsWith("Be done by 15 August 2027.", finding.Message, StringComparison.Ordinal);
        Assert.Empty(finding.Trunks);
    }

    private static void Tell(string species, string task, bool isTold)
    {
        var source = CareSource.Of(species, task);
        Assert.Equal(isTold, Check.Findings(Name, source).Length == 1);
    }
}
