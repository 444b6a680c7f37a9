using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

/// <summary>The days between heavy work are common practice: 120 from roots to leaves taken, half as many again for a slow species.</summary>
public sealed class TooMuchAtOnceTests
{
    private const string Name = "too-much-at-once";
    private const string Repot = "task R repot on A on 2027-03-20\n";

    [Theory]
    [InlineData("zelkova-serrata", "2027-07-17", true)]
    [InlineData("zelkova-serrata", "2027-07-18", false)]
    [InlineData("acer-palmatum", "2027-09-15", true)]
    [InlineData("acer-palmatum", "2027-09-16", false)]
    public void Leaves_are_left_on_for_120_days_after_work_on_the_roots_and_180_on_a_slow_species(string species, string day, bool isTold) =>
        Tell(species, $"{Repot}task D defoliate on A on {day}", isTold);

    [Fact]
    public void A_trunk_that_its_role_holds_back_is_given_half_as_long_again()
    {
        Tell("zelkova-serrata", Repot + "task D defoliate on A on 2027-09-15\nrole quiet { vigour restrain }", true);
        Tell("zelkova-serrata", Repot + "task D defoliate on A on 2027-09-16\nrole quiet { vigour restrain }", false);
        Tell("zelkova-serrata", Repot + "task D defoliate on A on 2027-09-15\nrole quiet { vigour push }", false);

        // A trunk that shares the one work with it, but not the other, is not held back by that.
        Tell("zelkova-serrata", "task R repot on all on 2027-03-20\ntask D defoliate on B on 2027-09-15\nrole quiet { vigour restrain }", false);
    }

    [Theory]
    [InlineData("root-prune", "2027-04-03", false)]
    [InlineData("root-prune", "2027-04-04", true)]
    [InlineData("root-prune", "2027-09-15", true)]
    [InlineData("root-prune", "2027-09-16", false)]
    [InlineData("wire", "2027-05-14", true)]
    [InlineData("wire", "2027-05-15", false)]
    [InlineData("graft", "2027-05-14", true)]
    [InlineData("graft", "2027-05-15", false)]
    [InlineData("prune", "2027-03-20", false)]
    [InlineData("pinch", "2027-03-21", false)]
    public void After_the_roots_were_cut_each_kind_of_work_waits_its_own_time(string kind, string day, bool isTold) =>
        Tell("zelkova-serrata", $"{Repot}task N {kind} on A on {day}", isTold);

    [Theory]
    [InlineData("repot", "2027-08-09", true)]
    [InlineData("repot", "2027-08-10", false)]
    [InlineData("defoliate", "2027-08-23", true)]
    [InlineData("defoliate", "2027-08-24", false)]
    [InlineData("prune", "2027-07-26", true)]
    [InlineData("prune", "2027-07-27", false)]
    public void After_leaves_were_taken_each_kind_of_work_waits_its_own_time(string kind, string day, bool isTold) =>
        Tell("zelkova-serrata", $"task D defoliate on A on 2027-06-15\ntask N {kind} on A on {day}", isTold);

    [Fact]
    public void It_is_told_only_where_no_choice_of_days_leaves_enough()
    {
        // From 1 March to 29 June are 120 days.
        Tell("zelkova-serrata", "task R repot on A from 2027-03-01 to 2027-03-31\ntask D defoliate on A from 2027-06-01 to 2027-06-29", false);
        Tell("zelkova-serrata", "task R repot on A from 2027-03-01 to 2027-03-31\ntask D defoliate on A from 2027-06-01 to 2027-06-28", true);
    }

    [Fact]
    public void It_says_how_far_apart_they_are_and_marks_both()
    {
        var finding = CareSource.Hit(Name, CareSource.Of("zelkova-serrata", Repot + "task D defoliate on A B on 2027-06-18"));
        Assert.Equal((90, 120, "days"), (finding.Measured, finding.Limit, finding.Unit));
        Assert.Equal("D (defoliate) on A comes at most 90 days after R (repot), and a tree needs 120 days between the two to recover. Move one of them.", finding.Message);
        Assert.Equal(["A"], finding.Trunks);
        Assert.Equal("R", Assert.Single(finding.Related).Message);
    }

    [Fact]
    public void Other_trunks_upkeep_and_what_is_past_are_no_burden()
    {
        Tell("zelkova-serrata", Repot + "task D defoliate on B on 2027-06-01", false);
        Tell("zelkova-serrata", "task D defoliate on A on 2027-06-15\ntask N prune on A every 3 weeks, from 2027-06-01 to 2027-08-01", false);
        Tell("zelkova-serrata", "task R repot on A done 2027-03-20\ntask D defoliate on A done 2027-06-01", false);
        Tell("zelkova-serrata", "task R repot on A done 2027-03-20\ntask D defoliate on A on 2027-06-01", true);
        Tell("zelkova-serrata", "task W wire on A on 2026-09-20\ntask R repot on A on 2026-10-20", false);
    }

    [Fact]
    public void Work_that_much_else_crowds_is_told_of_eight_times_and_no_more()
    {
        var crowd = string.Concat(Enumerable.Range(1, 12).Select(number => $"task D{number:00} defoliate on A on 2027-06-{number:00}\n"));
        var findings = Check.Findings(Name, CareSource.Of("zelkova-serrata", Repot + crowd));
        Assert.Equal(8, findings.Count(finding => finding.Related.Any(place => place.Message == "R")));
    }

    private static void Tell(string species, string tasks, bool isTold) =>
        Assert.Equal(isTold ? 1 : 0, Check.Findings(Name, CareSource.Of(species, tasks)).Length);
}
