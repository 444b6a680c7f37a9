using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class CannotFitTests
{
    private const string Wired = "trunk A at 0, 0 mm diameter 30 mm height 260 mm\ntask W wire on A on 2026-09-26\ntask U unwire of W 6 to 8 weeks after W\n";

    [Fact]
    public void Times_that_cannot_all_hold_are_told_once_with_every_statement_that_takes_part_and_no_other()
    {
        // Six weeks after 26 September is 7 November; the last day before 1 November is 31 October.
        var assessment = Planted.Under(Wired + "task F feed on all in spring 2027\ntask S repot on all after U, before 2026-11-01\n");
        var finding = assessment.Only("cannot-fit");

        Assert.Equal("before 2026-11-01", assessment.Underlined(finding));
        Assert.Equal(["on 2026-09-26", "6 to 8 weeks after W", "after U"], finding.Related.Select(related => assessment.TextOf(related.Place.File).Slice(related.Place.Span)));
        Assert.Contains("of W, U and S cannot all hold: it is 7 days too tight", finding.Message, StringComparison.Ordinal);
        Assert.Equal(7, finding.Measured);
    }

    [Theory]
    [InlineData("2026-11-07", true)]
    [InlineData("2026-11-08", false)]
    public void The_last_day_that_fits_is_the_limit(string day, bool isTold) =>
        Assert.Equal(isTold ? 1 : 0, Planted.Under(Wired + $"task S repot on all after U, before {day}\n").Found("cannot-fit").Length);

    [Fact]
    public void A_task_that_was_done_stands_on_its_true_day()
    {
        var assessment = Planted.Under(Wired.Replace("on 2026-09-26", "on 2026-09-26 done 2026-10-10", StringComparison.Ordinal) + "task S repot on all after U, before 2026-11-15\n");
        var finding = assessment.Only("cannot-fit");

        Assert.Contains("done 2026-10-10", finding.Related.Select(related => assessment.TextOf(related.Place.File).Slice(related.Place.Span)));
        Assert.Equal(7, finding.Measured);
        Assert.Empty(Planted.Under(Wired + "task S repot on all after U, before 2026-11-15\n").Found("cannot-fit"));
    }

    [Fact]
    public void A_stage_of_the_year_counts_by_the_site()
    {
        const string Site = "site latitude 51 N last frost 2 May first frost 20 October\n";
        Assert.Single(Planted.Under(Site + "trunk A at 0, 0 mm\ntask L defoliate on all after leaf-out 2027, before 2027-04-01\n").Found("cannot-fit"));
        Assert.Empty(Planted.Under(Site + "trunk A at 0, 0 mm\ntask L defoliate on all after leaf-out 2027, before 2027-08-01\n").Found("cannot-fit"));
    }

    [Fact]
    public void A_span_that_ends_before_it_starts_is_told_by_its_own_check_alone()
    {
        var assessment = Planted.Under("task T feed on all from 2027-05-01 to 2027-04-01\n");
        Assert.Single(assessment.Found("ends-before-start"));
        Assert.Empty(assessment.Found("cannot-fit"));
    }

    [Fact]
    public void Tasks_in_a_circle_are_told_by_their_own_check_alone()
    {
        var assessment = Planted.Under("task S feed on all 2 weeks after T\ntask T repot on all 1 week after S");
        Assert.Single(assessment.Found("task-circle"));
        Assert.Empty(assessment.Found("cannot-fit"));
    }

    [Fact]
    public void Each_thing_that_cannot_be_is_told_for_itself() =>
        Assert.Equal(2, Planted.Under("task S feed on all in spring 2027, before 2026-01-01\ntask T repot on all in spring 2028, after 2029-01-01\n").Found("cannot-fit").Length);
}
