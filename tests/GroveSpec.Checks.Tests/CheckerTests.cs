using System.Diagnostics;
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
    public void The_checks_of_ten_thousand_trunks_cost_about_as_much_however_they_stand()
    {
        var lattice = Context(Lattice(100, 100));
        var heap = Context(Check.Head + string.Join('\n', Enumerable.Range(0, 10_000).Select(index => $"trunk T{index} at 3, 4 mm diameter 20 mm height 200 mm")));
        _ = Work(lattice);
        Assert.True(Work(heap) < Work(lattice) * 30);

        static CheckContext Context(string source)
        {
            var assessment = Check.Of(source);
            return new(assessment.Planting, assessment.State, assessment.Origins, assessment.Units);
        }

        static long Work(CheckContext context)
        {
            long best = long.MaxValue;
            for (var round = 0; round < 3; round++)
            {
                var fresh = new CheckContext(context.Planting, context.State, context.Origins, context.Units);
                var started = Stopwatch.GetTimestamp();
                _ = Checker.Check(fresh, []);
                best = Math.Min(best, Stopwatch.GetTimestamp() - started);
            }

            TestContext.Current.TestOutputHelper?.WriteLine($"{best * 1000.0 / Stopwatch.Frequency:0.0} ms");
            return best;
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
