using Xunit;

namespace GroveSpec.Binding.Tests.Checks;

public sealed class UnlikelyReadingTests
{
    [Fact]
    public void A_trunk_that_grew_thinner_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm\nmeasured 2025-10-30 {\n  A diameter 30 mm\n}\nmeasured 2026-10-30 {\n  A diameter 26 mm\n}");
        var finding = assessment.Only("unlikely-reading");
        Assert.Equal("diameter 26 mm", assessment.Underlined(finding));
        Assert.Contains("does not get thinner", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trunk_that_grew_thinner_little_by_little_is_told_against_its_thickest()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm\nmeasured 2024-10-30 {\n  A diameter 60 mm\n}\nmeasured 2025-10-30 {\n  A diameter 59 mm\n}\nmeasured 2026-10-30 {\n  A diameter 58 mm\n}");
        Assert.Contains("read 58 mm on 2026-10-30 but 60 mm on 2024-10-30", assessment.Only("unlikely-reading").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_before_the_trunk_was_raised_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm raised 2020\nmeasured 2019-10-30 {\n  A diameter 30 mm\n}");
        var finding = assessment.Only("unlikely-reading");
        Assert.Equal("A", assessment.Underlined(finding));
        Assert.Contains("before 2020", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_after_the_trunk_was_removed_is_told()
    {
        var assessment = Planted.Under("trunk A at 0, 0 mm removed 2018-03\nmeasured 2019-10-30 {\n  A diameter 30 mm\n}");
        var finding = assessment.Only("unlikely-reading");
        Assert.Equal("A", assessment.Underlined(finding));
        Assert.Contains("after it was removed", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_millimetre_less_is_not_told() => Assert.Empty(Planted.Under("trunk A at 0, 0 mm\nmeasured 2025-10-30 {\n  A diameter 30 mm\n}\nmeasured 2026-10-30 {\n  A diameter 29 mm\n}").Found("unlikely-reading"));

    [Fact]
    public void A_trunk_cut_shorter_is_not_told() => Assert.Empty(Planted.Under("trunk A at 0, 0 mm\nmeasured 2025-10-30 {\n  A height 300 mm\n}\nmeasured 2026-10-30 {\n  A height 200 mm\n}").Found("unlikely-reading"));

    [Fact]
    public void Readings_after_the_day_that_is_judged_are_told_once()
    {
        var text = "trunk A at 0, 0 mm\nmeasured 2026-01-01 {\n  A diameter 5 mm\n}\nmeasured 2027-01-01 {\n  A diameter 6 mm\n}\n";
        Assert.Empty(Planted.Under(text).Found("unlikely-reading"));
        var finding = Planted.Under(text, date: new NodaTime.LocalDate(2025, 1, 1)).Only("unlikely-reading");
        Assert.Contains("The readings of 2 days are later than 2025-01-01", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_percent_or_a_millimetre_less_is_what_readings_differ_by()
    {
        // Common practice: two readings of one trunk differ by about so much.
        static string Text(string later) => $"trunk A at 0, 0 mm\nmeasured 2025-01-01 {{\n  A diameter 100 mm\n}}\nmeasured 2026-01-01 {{\n  A diameter {later} mm\n}}\n";
        Assert.Empty(Planted.Under(Text("98")).Found("unlikely-reading"));
        Assert.Single(Planted.Under(Text("97.999999")).Found("unlikely-reading"));
    }
}
