using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class UnknownNameTests
{
    [Fact]
    public void A_role_that_is_not_there_is_told_where_it_is_named()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm role wind");
        var finding = assessment.Only("unknown-name");
        Assert.Equal("wind", assessment.Underlined(finding));
        Assert.Contains("There is no role wind", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trunk_that_is_not_there_is_told_in_a_tape()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm\ntrunk B at 9, 9 mm\ntape A to Q 30 mm");
        var finding = assessment.Only("unknown-name");
        Assert.Equal("Q", assessment.Underlined(finding));
        Assert.Contains("the trunks are A, B", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_task_that_is_not_there_is_told_in_a_time()
    {
        var assessment = Planted.Under("task T1 repot on all 6 to 8 weeks after Wire1");
        var finding = assessment.Only("unknown-name");
        Assert.Equal("Wire1", assessment.Underlined(finding));
        Assert.Contains("There is no task Wire1", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trunk_that_is_not_there_is_told_in_an_accept()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm\naccept three-in-line A because \"sea\"\naccept even-count Old because \"sea\"");
        var finding = assessment.Only("unknown-name");
        Assert.Equal("Old", assessment.Underlined(finding));
        Assert.Contains("There is no trunk Old", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trunk_that_is_not_there_is_told_in_a_reading()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm\nmeasured 2026-10-30 {\n  Bee diameter 3 mm\n}");
        var finding = assessment.Only("unknown-name");
        Assert.Equal("Bee", assessment.Underlined(finding));
        Assert.Contains("There is no trunk Bee", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_may_be_used_above_the_line_that_gives_it() => Assert.Empty(Planted.Under("task L1 look-over of W1 every 2 weeks until W1\ntask W1 wire on all in autumn 2026").Found("unknown-name"));

    [Fact]
    public void A_name_of_composed_letters_is_found_by_its_parts() => Assert.Empty(Planted.Under("trunk \u00E9 at 0, 0 mm\ntrunk B at 90, 9 mm\ntape e\u0301 to B 90 mm").Found("unknown-name"));

    [Fact]
    public void The_remedies_mend_the_spelling_or_add_the_role()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm role windwrad\ntrunk B at 50, 9 mm role windward\nrole windward { rank 1 }");
        var finding = assessment.Only("unknown-name");
        Assert.Contains("perhaps windward is meant", finding.Message, StringComparison.Ordinal);
        Assert.Contains("role windward\ntrunk B", assessment.Mended(finding), StringComparison.Ordinal);
        Assert.Contains("role windward { rank 1 }\nrole windwrad { }", assessment.Mended(finding, 1), StringComparison.Ordinal);
        Assert.Empty(Planted.Of(assessment.Mended(finding, 1)).Found("unknown-name"));
        Assert.Equal("windward", assessment.TextOf("test.grove").Slice(finding.Related[0].Place.Span));
    }
}
