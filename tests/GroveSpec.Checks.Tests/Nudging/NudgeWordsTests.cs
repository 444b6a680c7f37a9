using GroveSpec.Checks.Nudging;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Checks.Tests.Nudging;

/// <summary>What is said of moves.</summary>
public sealed class NudgeWordsTests
{
    [Theory]
    [InlineData(0, "then find nothing, where now they find 2.")]
    [InlineData(1, "then find 1 (even-gaps), where now they find 2.")]
    [InlineData(2, "then find 2 (even-gaps 2 times), where now they find 2: as many, but they weigh less, an error as much as three warnings, a hint half of one.")]
    [InlineData(3, "then find 3 (even-gaps 3 times), where now they find 2: more, but they weigh less, an error as much as three warnings, a hint half of one.")]
    public void Where_no_fewer_findings_are_left_it_is_said_that_they_weigh_less(int left, string expected)
    {
        var assessment = Check.Of("trunk A at 0, 0 mm diameter 30 mm\ntrunk B at 10, 0 mm diameter 20 mm\n");
        var touching = Assert.Single(assessment.Findings, finding => finding.Check.Name == "touching");
        var suggestion = new NudgeSuggestion
        {
            Moves = [new("B", Length.FromMillimetres(20), new(90), PlanPoint.FromMillimetres(30, 0), null, null, IsMoved: true)],
            Distance = Length.FromMillimetres(20),
            State = assessment.State,
            Left = [.. Enumerable.Repeat(touching with { Check = Catalogue.Find("even-gaps")! }, left)],
            Why = "",
            Edits = [],
        };
        Assert.Equal($"One trunk goes 20 mm, and the checks of composition {expected}", NudgeWords.Why(suggestion, [touching, touching], UnitSystem.Metric));
    }
}
