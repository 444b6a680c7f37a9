using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

/// <summary>
/// Common practice, by the bands of the profiles. Zelkova: leaf-out until 14 days after the last frost, 4 May; leaf-colour from 21
/// days before the first, 7 October. Scots pine: leaf-out until 1 June, harden-off from 22 June. Japanese beech: harden-off until
/// 29 June, bud-break from 28 days before the last frost, 23 March 2028.
/// </summary>
public sealed class OutOfSeasonTests
{
    private const string Name = "out-of-season";

    [Theory]
    [InlineData("zelkova-serrata", "repot", "2027-05-03", false)]
    [InlineData("zelkova-serrata", "repot", "2027-05-04", true)]
    [InlineData("zelkova-serrata", "root-prune", "2027-10-06", true)]
    [InlineData("zelkova-serrata", "root-prune", "2027-10-07", false)]
    [InlineData("pinus-sylvestris", "repot", "2027-05-31", false)]
    [InlineData("pinus-sylvestris", "repot", "2027-06-01", true)]
    [InlineData("pinus-sylvestris", "repot", "2027-06-21", true)]
    [InlineData("pinus-sylvestris", "repot", "2027-06-22", false)]
    [InlineData("fagus-crenata", "pinch", "2027-06-28", false)]
    [InlineData("fagus-crenata", "pinch", "2027-06-29", true)]
    [InlineData("fagus-crenata", "pinch", "2028-03-22", true)]
    [InlineData("fagus-crenata", "pinch", "2028-03-23", false)]
    [InlineData("zelkova-serrata", "pinch", "2027-08-01", false)]
    [InlineData("ficus-microcarpa", "repot", "2027-07-01", false)]
    [InlineData("ulmus-parvifolia", "repot", "2027-07-01", false)]
    [InlineData("some-shrub", "repot", "2027-07-01", false)]
    public void It_is_told_within_the_wrong_part_of_the_year_and_not_a_day_outside(string species, string kind, string day, bool isTold) =>
        Assert.Equal(isTold ? 1 : 0, Check.Findings(Name, CareSource.Of(species, $"task R {kind} on A on {day}")).Length);

    [Fact]
    public void A_plan_with_a_good_day_in_it_is_not_told()
    {
        CareSource.Miss(Name, CareSource.Of("zelkova-serrata", "task R repot on A from 2027-05-03 to 2027-05-30"));
        CareSource.Hit(Name, CareSource.Of("zelkova-serrata", "task R repot on A from 2027-05-04 to 2027-10-06"));
        CareSource.Miss(Name, CareSource.Of("zelkova-serrata", "task R repot on A after 2027-05-30"));
        CareSource.Miss(Name, CareSource.Of("fagus-crenata", "task P pinch on A every 2 weeks, from 2027-06-01 to 2027-08-01"));
    }

    [Fact]
    public void It_turns_round_with_the_hemisphere()
    {
        CareSource.Miss(Name, CareSource.Of("zelkova-serrata", "task R repot on A on 2027-07-15", CareSource.South));
        CareSource.Hit(Name, CareSource.Of("zelkova-serrata", "task R repot on A on 2027-01-15", CareSource.South));
    }

    [Fact]
    public void It_says_from_when_to_when_and_what_to_do() =>
        Assert.Equal("R (repot) on A and B comes at the wrong time: Japanese zelkova is in full leaf from about 4 May 2027 to 6 October 2027, and with cut roots it would wilt. Do it before the leaves open, or once they turn.", Check.Message(Name, CareSource.Of("zelkova-serrata", "task R repot on A B in mid summer 2027")));
}
