using System.Globalization;
using GroveSpec.Checks;
using Xunit;

namespace GroveSpec.Binding.Tests;

/// <summary>Texts meant to hurt: each ends in findings that name the place, and never in a fault.</summary>
public sealed class HostileFilesTests
{
    [Theory]
    [InlineData("🌲")]
    [InlineData("a\u200Db")]
    [InlineData("\u202Egorf")]
    [InlineData("<script>")]
    [InlineData("=HYPERLINK(1)")]
    [InlineData("A/height")]
    [InlineData("A~2")]
    public void Odd_names_bind_or_are_told(string name)
    {
        var assessment = Planted.Under($"trunk A at 0, 0 mm\ntrunk {name} at 50, 7 mm\ntape A to {name} 51 mm\n");
        Assert.True(assessment.Planting.Trunks.Length == 2 || assessment.Findings.Any(finding => finding.Severity == Severity.Error), Planted.All(assessment));
        Assert.DoesNotContain(assessment.Findings, finding => finding.Check.Name == "broken-check");
    }

    [Fact]
    public void A_name_of_ten_thousand_characters_is_cut_in_messages()
    {
        var assessment = Planted.Under($"trunk {new string('x', 10_000)} at 0, 0 mm diameter 0 mm\ntrunk {"e" + new string('\u0301', 5000)} at 9, 9 mm diameter 0 mm\n");
        Assert.NotEmpty(assessment.Findings);
        Assert.All(assessment.Findings, finding => Assert.True(finding.Message.Length < 1000, finding.Message));
    }

    [Fact]
    public void A_hundred_thousand_tape_readings_are_bound()
    {
        var text = string.Concat(Enumerable.Range(0, 100_000).Select(index => string.Create(CultureInfo.InvariantCulture, $"tape A to B {10 + (index % 7)} mm\n")));
        var planting = Planted.Under("trunk A at 0, 0 mm\ntrunk B at 12, 5 mm\n" + text).Planting;
        Assert.Equal(100_000, planting.Tapes.Length);
        Assert.Equal(100_000, planting.Tapes.Select(tape => tape.Origin.Id).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void Two_groups_that_are_not_joined_are_told_trunk_by_trunk()
    {
        var assessment = Planted.Under("trunk A\ntrunk B\ntrunk C\ntrunk D\ntape A to B 50 mm\ntape C to D 60 mm\n");
        Assert.Equal(4, assessment.Found("no-place").Length);
        Assert.All(assessment.Found("no-place"), finding => Assert.Contains("not known either", finding.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void Ten_trunks_with_one_reading_are_told()
    {
        var trunks = string.Concat(Enumerable.Range(0, 10).Select(index => $"trunk T{index}\n"));
        var assessment = Planted.Under(trunks + "tape T0 to T1 5 mm\n");
        Assert.Equal(10, assessment.Found("no-place").Sum(finding => 1 + finding.Untold));
    }

    [Fact]
    public void Ten_thousand_trunks_at_one_point_are_assessed()
    {
        var assessment = Planted.Under(string.Concat(Enumerable.Range(0, 10_000).Select(index => $"trunk T{index} at 0, 0 mm diameter 5 mm height 9 mm\n")));
        Assert.Equal(10_000, assessment.Planting.Trunks.Length);
        Assert.DoesNotContain(assessment.Findings, finding => finding.Check.Name == "broken-check");
    }

    [Fact]
    public void Two_trunks_a_nanometre_apart_are_two_places()
    {
        var planting = Planted.Under("trunk A at 0, 0 mm\ntrunk B at 0.000001, 0 mm\n").Planting;
        Assert.Equal(1, planting.Trunks[1].At?.Value.X.Nanometres);
    }

    [Fact]
    public void A_role_that_bears_a_word_of_its_own_is_a_role_like_any_other() =>
        Assert.DoesNotContain(Planted.Under("trunk A at 0, 0 mm role lee\nrole lee { story \"lee\" }\n").Findings, finding => finding.Severity == Severity.Error);

    [Fact]
    public void Fifty_thousand_trunks_of_one_name_are_told_one_by_one_and_the_first_holds()
    {
        var assessment = Planted.Under(string.Concat(Enumerable.Repeat("trunk A at 0, 0 mm\n", 50_000)));
        Assert.Single(assessment.Planting.Trunks);
        Assert.NotEmpty(assessment.Found("twice-named"));
    }
}
