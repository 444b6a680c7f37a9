using GroveSpec.Checks;
using GroveSpec.Conformance.Tests.Drawn;
using GroveSpec.Model.States;
using GroveSpec.Syntax.Tree;
using Xunit;

namespace GroveSpec.Conformance.Tests;

public sealed class SampleTests
{
    [Fact]
    public void There_are_at_least_eight_of_three_to_thirty_trunks_and_every_habit()
    {
        var plantings = SampleFile.All.Select(sample => Plates.AssessmentOfFile(sample.Path).Planting).ToArray();
        Assert.True(plantings.Length >= 8);
        Assert.Equal(3, plantings.Select(planting => planting.EffectiveHabit).Distinct().Count());
        Assert.Equal(4, plantings.Select(planting => planting.Container!.GetType()).Distinct().Count());
        Assert.Contains(plantings, planting => planting.Trunks.Length == 3);
        Assert.Contains(plantings, planting => planting.Trunks.Length == 30);
        Assert.Contains(plantings, planting => !planting.Accepted.IsEmpty);
    }

    [Fact]
    public void Each_is_read_without_trouble_and_has_no_error()
    {
        foreach (var sample in SampleFile.All)
        {
            var assessment = Plates.AssessmentOfFile(sample.Path);
            Assert.True(assessment.Tree.Problems.IsEmpty, $"{sample.Name}: {string.Join("; ", assessment.Tree.Problems.Select(problem => problem.Message))}");
            Assert.DoesNotContain(assessment.Tree.Statements, statement => statement is Statement.Unknown || statement.IsBroken);
            var errors = assessment.Findings.Where(finding => finding.Severity == Severity.Error).Select(finding => finding.Message).ToArray();
            Assert.True(errors.Length == 0, $"{sample.Name}: {string.Join("; ", errors)}");
            Assert.All(assessment.State.Trunks.Where(trunk => trunk.Presence == Presence.Standing), trunk => Assert.NotNull(trunk.Place));
        }
    }

    [Theory]
    [InlineData("coil-angle")]
    [InlineData("wire-too-thin")]
    [InlineData("wire-too-thick")]
    [InlineData("bend-too-sharp")]
    [InlineData("wire-on-too-long")]
    [InlineData("wire-unwatched")]
    [InlineData("late-cut")]
    [InlineData("too-much-at-once")]
    [InlineData("sacrifice-in-front")]
    [InlineData("sacrifice-kept")]
    [InlineData("unfit-for-species")]
    [InlineData("out-of-season")]
    [InlineData("no-shelter")]
    [InlineData("fed-too-soon")]
    [InlineData("elm-pruning")]
    public void The_years_in_the_south_near_the_equator_and_of_pines_show_each_advice_at_work_and_at_rest(string check)
    {
        var told = ((string[])["weather-side", "dry-wash", "salt-steps"])
            .Count(sample => Plates.AssessmentOfFile(SampleFile.Named(sample).Path).Findings.Any(finding => finding.Check.Name == check));
        Assert.InRange(told, 1, 2);
    }

    [Fact]
    public void Each_has_the_findings_it_is_said_to_have()
    {
        Snapshot.AssertAccepted(SampleFile.All.Select(sample => Snapshot.Compare(sample.Beside("expected.txt"), FindingsOf(sample))));
    }

    [Fact]
    public void Each_is_drawn_as_it_was_accepted()
    {
        Snapshot.AssertAccepted(SampleDrawings.All.Select(drawing => Snapshot.Compare(SampleFile.Named(drawing.Sample).Beside(drawing.View + ".svg"), drawing.Svg)));
    }

    private static string FindingsOf(SampleFile sample) => string.Concat(
        Plates.AssessmentOfFile(sample.Path).Findings
            .Select(finding => $"{finding.Severity.ToString().ToLowerInvariant()} {string.Join(' ', finding.Trunks.Prepend(finding.Check.Name))}{(finding.Untold > 0 ? $", and {finding.Untold} more" : "")}\n"));
}
