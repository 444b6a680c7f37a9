using System.Globalization;
using Xunit;

namespace GroveSpec.Checks.Tests;

public sealed class CheckerTests
{
    private const string Row = "trunk A at -100, 0 mm diameter 20 mm\ntrunk B at 0, 4 mm diameter 20 mm\ntrunk C at 100, 0 mm diameter 20 mm\n";

    private static string Lattice(int wide, int deep) => Check.Head.Replace("600 x 400", "90000 x 90000", StringComparison.Ordinal) + string.Join('\n', Enumerable.Range(0, wide * deep).Select(index =>
        string.Create(CultureInfo.InvariantCulture, $"trunk T{index} at {(index % wide * 60) - (wide * 30)}, {(index / wide * 60) - (deep * 30)} mm diameter 20 mm height 200 mm")));

    [Fact]
    public void An_accepted_finding_is_counted_apart_whatever_the_order_of_its_trunks()
    {
        var assessment = Check.Of(Row + "accept three-in-line C A B because \"the sea wall runs along them\"");
        Assert.DoesNotContain(assessment.Findings, finding => finding.Check.Name is "three-in-line" or "stale-accept");
        Assert.Contains(assessment.Accepted, finding => finding.Check.Name == "three-in-line");
    }

    [Fact]
    public void An_acceptance_that_matches_nothing_is_a_hint_with_a_remedy_that_takes_it_out()
    {
        var source = Row.Replace("0, 4 mm", "0, 80 mm", StringComparison.Ordinal) + "accept three-in-line A B C because \"the sea wall runs along them\"";
        var finding = Assert.Single(Check.Findings("stale-accept", source));
        Assert.Equal(Severity.Hint, finding.Severity);
        Assert.DoesNotContain("accept", Apply(Check.Head + source, Assert.Single(finding.Remedies)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_muted_check_is_silent_and_one_of_impossible_facts_of_the_file_is_not()
    {
        Check.Expect("three-in-line", Row + "mute three-in-line because \"a row is meant\"");
        Assert.NotEmpty(Check.Findings("twice-named", Row + "trunk A at 50, 90 mm diameter 9 mm\nmute twice-named because \"so\""));
    }

    [Theory]
    [InlineData("tolerance even-gaps 0 %")]
    [InlineData("tolerance even-gaps 1000 %")]
    [InlineData("tolerance even-gaps 8 deg")]
    [InlineData("tolerance even-count 3")]
    public void A_tolerance_that_means_nothing_is_told_and_the_usual_limit_used(string tolerance)
    {
        var found = Check.Of(Row + tolerance).Findings;
        Assert.Contains(found, finding => finding.Check.Name is "odd-tolerance");
        Assert.Contains(found, finding => finding.Check.Name == "even-gaps" && finding.Limit == 8);
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(1, false)]
    public void The_composition_of_more_trunks_than_any_planting_has_is_not_judged_and_that_is_told(int more, bool isJudged)
    {
        var trunks = Checker.MostTrunks + more;
        var source = Check.Head + "role unused { form stout }\naccept three-in-line T0 T1 T2 because \"so\"\n"
            + string.Concat(Enumerable.Range(0, trunks).Select(index => string.Create(CultureInfo.InvariantCulture, $"trunk T{index} at {index % 200 * 3}, {index / 200 * 3} mm diameter 9 mm height 90 mm\n")));
        var assessment = Check.Of(source);
        Assert.Equal(isJudged, assessment.Findings.Any(finding => finding.Check.IsComposition));
        Assert.Contains(assessment.Findings, finding => finding.Check.Name == "unused-role");
        if (!isJudged)
        {
            var told = Assert.Single(assessment.Findings, finding => finding.Check.Name == "too-large");
            Assert.Equal("20,001 trunks stand here, and the composition of no more than 20,000 is judged. The file was read, but nothing is told of how they stand together, and nothing is drawn. Split it into several plantings.", told.Message);
            Assert.StartsWith("T20000 ", assessment.Tree.Text.Content[told.Place.Span.Start..].Replace("trunk ", "", StringComparison.Ordinal), StringComparison.Ordinal);
            Assert.DoesNotContain(assessment.Findings, finding => finding.Check.Name == "stale-accept");
        }
    }

    [Fact]
    public void Of_a_hint_on_each_of_very_many_lines_a_thousand_are_told_and_the_rest_counted()
    {
        var source = Row + string.Concat(Enumerable.Range(0, 3_000).Select(index => string.Create(CultureInfo.InvariantCulture, $"measured 2027-01-01 {{ A diameter {9000 - (index * 2)} mm }}\n")));
        var told = Check.Findings("unlikely-reading", source);
        Assert.Equal(1_000, told.Length);
        Assert.EndsWith(" 1909 more of this kind are less marked and not told.", told[^1].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_remedy_of_a_finding_writes_an_acceptance_that_lets_it_stand()
    {
        var before = Check.Head + Row;
        var remedy = Assert.Single(Check.Findings("three-in-line", before)).Remedies[^1];
        var after = Apply(before, remedy);
        Assert.Contains("accept three-in-line A B C because \"write the reason here\"", after, StringComparison.Ordinal);
        Check.Expect("three-in-line", after);
        Check.Expect("stale-accept", after);
    }

    [Fact]
    public void Errors_come_before_warnings_and_those_before_hints()
    {
        var severities = Check.Of(Row + "trunk D at 295, 0 mm diameter 20 mm").Findings.Select(finding => finding.Severity).ToList();
        Assert.Contains(Severity.Error, severities);
        Assert.Contains(Severity.Warning, severities);
        Assert.Contains(Severity.Hint, severities);
        Assert.Equal(severities.Order(), severities);
    }

    [Fact]
    public void The_worst_of_a_kind_comes_first()
    {
        var found = Check.Findings("three-in-line", Row + "trunk D at 200, 0 mm diameter 20 mm\n");
        Assert.True(found.Length > 1);
        Assert.Equal(found.Select(finding => finding.Measured!.Value).Order(), found.Select(finding => finding.Measured!.Value));
    }

    [Fact]
    public void From_ten_trunks_on_five_of_a_kind_are_told_and_the_rest_counted()
    {
        var few = Check.Findings("three-in-line", Lattice(3, 3));
        Assert.Equal(8, few.Length);
        Assert.All(few, finding => Assert.Equal(0, finding.Untold));

        // A lattice of 4 by 3 has 2 triples in each of 3 rows, 1 in each of 4 columns, and 4 along diagonals of neighbours.
        var many = Check.Findings("three-in-line", Lattice(4, 3));
        Assert.Equal(5, many.Length);
        Assert.Equal(9, many[^1].Untold);
        Assert.Contains("9 more of this kind", many[^1].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Ten_thousand_trunks_in_a_lattice_have_few_findings_all_counted()
    {
        var found = Check.Of(Lattice(100, 100)).Findings;
        Assert.InRange(found.Length, 1, 60);
        Assert.True(Assert.Single(found, finding => finding.Check.Name == "even-gaps" && finding.Untold > 0).Untold > 5_000);
    }

    [Fact]
    public void However_ten_thousand_trunks_stand_few_findings_are_written_out()
    {
        // Each rule writes out at most forty findings, and each finding asks for its own place, those of eight others and that of the last statement.
        var most = Catalogue.All.Count(check => check.IsComposition) * 40 * 10;
        Assert.InRange(PlacesAskedFor(Lattice(100, 100)), 1, most);
        Assert.InRange(PlacesAskedFor(Check.Head + string.Join('\n', Enumerable.Range(0, 10_000).Select(index => $"trunk T{index} at 3, 4 mm diameter 20 mm height 200 mm"))), 1, most);

        static int PlacesAskedFor(string source)
        {
            var assessment = Check.Of(source);
            var counted = new CountedOrigins(assessment.Origins);
            _ = Checker.Check(new(assessment.Planting, assessment.State, counted, assessment.Units), []);
            return counted.Asked;
        }
    }

    [Fact]
    public void The_same_source_gives_the_same_findings_and_the_order_of_its_lines_changes_none()
    {
        static string[] Told(string source) => [.. Check.Of(source).Findings.Where(finding => finding.Check.Name != "even-count").Select(finding => finding.Check.Name + string.Join(' ', finding.Trunks) + finding.Measured).Order(StringComparer.Ordinal)];
        var lines = (Row + "trunk D at 60, 90 mm diameter 12 mm\ntrunk E at -70, 80 mm diameter 9 mm").Split('\n');
        Assert.Equal(Told(string.Join('\n', lines)), Told(string.Join('\n', lines.Reverse())));
    }

    private static string Apply(string source, Remedy remedy)
    {
        foreach (var edit in remedy.Edits.OrderByDescending(edit => edit.Place.Span.Start))
        {
            source = source.Remove(edit.Place.Span.Start, edit.Place.Span.Length).Insert(edit.Place.Span.Start, edit.NewText);
        }

        return source;
    }
}
