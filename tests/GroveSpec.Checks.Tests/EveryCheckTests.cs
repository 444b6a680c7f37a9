using Xunit;

namespace GroveSpec.Checks.Tests;

/// <summary>What holds for each check of composition alike.</summary>
public sealed class EveryCheckTests
{
    /// <summary>The names of the cases.</summary>
    public static TheoryData<string> Names => [.. CheckCase.All.Select(one => one.Check)];

    [Fact]
    public void Every_check_of_composition_is_held_to_it()
    {
        Assert.Equal(Catalogue.All.Where(check => check.IsComposition).Select(check => check.Name), CheckCase.All.Select(one => one.Check));
        Assert.All(CheckCase.All, one => Assert.Equal(Catalogue.Find(one.Check)!.Limit is null, one.Moved.IsEmpty));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void It_is_told_on_one_side_of_its_limit_and_not_on_the_other(string check)
    {
        var one = Named(check);
        Check.Expect(check, one.Source(one.Hit), one.Trunks);
        Check.Expect(check, one.Source(one.Miss));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_tolerance_moves_the_limit_and_it_is_as_sharp_there(string check)
    {
        var one = Named(check);
        Assert.All(one.Moved, moved =>
        {
            var tolerance = $"tolerance {check} {moved.Tolerance}";
            Check.Expect(check, one.Source(moved.Hit, tolerance), one.Trunks);
            Check.Expect(check, one.Source(moved.Miss, tolerance));
        });
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_check_without_a_limit_takes_no_tolerance_and_goes_on_as_usual(string check)
    {
        var one = Named(check);
        var odd = Check.Of(one.Source(one.Hit, $"tolerance {check} 7 deg")).Findings;
        Assert.Single(odd, finding => finding.Check.Name == "odd-tolerance");
        Assert.Single(odd, finding => finding.Check.Name == check);
        Assert.DoesNotContain(Check.Of(one.Source(one.Miss, $"tolerance {check} 7 deg")).Findings, finding => finding.Check.Name == check);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Accepted_it_is_let_stand_and_nothing_else_is(string check)
    {
        var one = Named(check);
        var before = Check.Of(one.Source(one.Hit)).Findings;
        var after = Check.Of(one.Source(one.Hit, $"accept {check} {one.Trunks} because \"it is meant so\""));
        Assert.Equal((check, one.Trunks), (Assert.Single(after.Accepted).Check.Name, string.Join(' ', after.Accepted[0].Trunks)));
        Assert.Equal(before.Where(finding => finding.Check.Name != check).Select(Fact), after.Findings.Select(Fact));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Accepted_of_other_trunks_or_of_another_check_it_is_told_all_the_same_and_the_acceptance_is_stale(string check)
    {
        var one = Named(check);
        var source = one.Source(one.Hit) + "trunk Z at -200, 150 mm diameter 5 mm height 40 mm planned spring 2040\n";
        var others = one.Trunks.Length == 0 ? ["Z"] : one.Trunks.Split(' ').SkipLast(1).Append("Z");
        foreach (var acceptance in new[] { $"accept {check} {string.Join(' ', others)}", $"accept {(check == "level-tops" ? "off-container" : "level-tops")} {one.Trunks}" })
        {
            var found = Check.Of($"{source}{acceptance} because \"it is meant so\"\n");
            Assert.Contains(found.Findings, finding => finding.Check.Name == check && string.Join(' ', finding.Trunks) == one.Trunks);
            Assert.Single(found.Findings, finding => finding.Check.Name == "stale-accept");
            Assert.Empty(found.Accepted);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Muted_it_is_silent_and_all_others_are_told_as_before(string check)
    {
        var one = Named(check);
        var before = Check.Of(one.Source(one.Hit)).Findings.Where(finding => finding.Check.Name != check).Select(Fact);
        var after = Check.Of(one.Source(one.Hit, $"mute {check} because \"it is meant so\"")).Findings;
        Assert.DoesNotContain(after, finding => finding.Check.Name == check);
        Assert.Empty(before.Except(after.Select(Fact)));
    }

    private static CheckCase Named(string check) => CheckCase.All.Single(one => one.Check == check);

    private static string Fact(Finding finding) => $"{finding.Check.Name}: {string.Join(' ', finding.Trunks)}: {finding.Message}";
}
