using Xunit;

namespace GroveSpec.Checks.Tests.Rules;

/// <summary>Common practice: it comes off while the tree rests.</summary>
public sealed class SacrificeKeptTests
{
    private const string Name = "sacrifice-kept";
    private const string Grow = "task S sacrifice on A from leaf-out 2027 to leaf-fall 2029 low, facing back";

    [Fact]
    public void One_that_nothing_takes_off_is_told_and_the_remedy_writes_the_task()
    {
        var source = CareSource.Of("acer-palmatum", Grow);
        var finding = CareSource.Hit(Name, source);
        Assert.Equal("S (sacrifice) lets a branch grow on A, and nothing takes it off. Add a task that takes it off in late winter 2030.", finding.Message);
        var mended = CareSource.Mended(source, finding.Remedies[0]);
        Assert.Contains("facing back\ntask S-off remove-sacrifice of S in late winter 2030\n", mended, StringComparison.Ordinal);
        CareSource.Miss(Name, mended);
        Assert.DoesNotContain(Check.Of(mended).Findings, found => found.Severity == Severity.Error);
    }

    [Fact]
    public void One_that_is_taken_off_is_not_told() => CareSource.Miss(Name, CareSource.Of("acer-palmatum", Grow + "\ntask O remove-sacrifice of S in late winter 2030"));

    [Fact]
    public void The_removal_of_another_branch_does_not_count() =>
        Assert.Equal(2, Check.Findings(Name, CareSource.Of("acer-palmatum", Grow + "\ntask T sacrifice on B from leaf-out 2027 to leaf-fall 2028\ntask O remove-sacrifice of U in late winter 2030")).Length);

    [Fact]
    public void In_the_south_late_winter_comes_in_the_year_in_which_the_leaves_fall() =>
        Assert.EndsWith("in late winter 2029.", CareSource.Hit(Name, CareSource.Of("acer-palmatum", Grow, CareSource.South)).Message, StringComparison.Ordinal);

    [Fact]
    public void What_has_no_rest_is_cut_in_the_month_behind() =>
        Assert.EndsWith("in 2029-12.", CareSource.Hit(Name, CareSource.Of("ficus-microcarpa", "task S sacrifice on A from 2027-03-01 to 2029-11-30")).Message, StringComparison.Ordinal);

    [Fact]
    public void Where_its_end_is_open_the_grower_is_asked_for_it()
    {
        var finding = CareSource.Hit(Name, CareSource.Of("acer-palmatum", "task S sacrifice on A after leaf-out 2027"));
        Assert.EndsWith("Say until when it grows, and add a task that takes it off.", finding.Message, StringComparison.Ordinal);
        Assert.StartsWith("let sacrifice-kept", Assert.Single(finding.Remedies).Title, StringComparison.Ordinal);
    }

    [Fact]
    public void The_new_task_takes_a_name_that_is_free()
    {
        var source = CareSource.Of("acer-palmatum", Grow + "\ntask S-off measure on A in late winter 2030");
        Assert.Contains("task S-off-2 remove-sacrifice of S", CareSource.Mended(source, CareSource.Hit(Name, source).Remedies[0]), StringComparison.Ordinal);
    }
}
