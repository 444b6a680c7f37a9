using System.Xml.Linq;

namespace GroveSpec.Cli.Tests;

public sealed class DrawCommandTests : IDisposable
{
    private readonly Workplace work = new();

    public void Dispose() => work.Dispose();

    [Theory]
    [InlineData("plan")]
    [InlineData("front")]
    [InlineData("timeline")]
    [InlineData("wiring")]
    public void Each_view_is_a_well_formed_drawing_and_the_same_each_time(string view)
    {
        work.Write("a.grove", Plantings.InLine);
        var answer = work.Run("draw", "a.grove", "--view", view);
        Assert.Equal(ExitStatus.Good, answer.Status);
        Assert.Equal("svg", XDocument.Parse(answer.Output).Root!.Name.LocalName);
        Assert.Equal(answer.Bytes, work.Run("draw", "a.grove", "--view", view).Bytes);
    }

    [Fact]
    public void The_format_is_what_the_outputs_name_ends_in_unless_said_otherwise()
    {
        work.Write("a.grove", Plantings.Quiet);
        work.Run("draw", "a.grove", "--output", "a.svg");
        work.Run("draw", "a.grove", "--output", "a.png");
        work.Run("draw", "a.grove", "--output", "a.pdf");
        work.Run("draw", "a.grove", "--output", "a.txt", "--format", "pdf");
        Assert.Equal(work.Run("draw", "a.grove").Bytes, File.ReadAllBytes(work["a.svg"]));
        Assert.Equal("PNG"u8.ToArray(), File.ReadAllBytes(work["a.png"])[1..4]);
        Assert.Equal("%PDF"u8.ToArray(), File.ReadAllBytes(work["a.pdf"])[..4]);
        Assert.Equal("%PDF"u8.ToArray(), File.ReadAllBytes(work["a.txt"])[..4]);
        Assert.Equal(ExitStatus.Usage, work.Run("draw", "a.grove", "--output", "a.jpg").Status);
    }

    [Fact]
    public void Several_plantings_are_drawn_into_a_folder_as_they_lie_in_theirs()
    {
        work.Write("in/a.grove", Plantings.Quiet);
        work.Write("in/b/a.grove", Plantings.InLine);
        Assert.Equal(ExitStatus.Usage, work.Run("draw", "in").Status);
        Assert.Equal(ExitStatus.Good, work.Run("draw", "in", "--output", "out").Status);
        Assert.Equal(work.Run("draw", "in/b/a.grove").Output, work.Read("out/b/a-plan.svg"));
        Assert.True(File.Exists(work["out/a-plan.svg"]));
        Assert.Equal(ExitStatus.Usage, work.Run("draw", "in/a.grove", "in/b/a.grove", "--output", "out").Status);
    }

    [Fact]
    public void A_planting_with_errors_is_drawn_and_the_errors_are_told()
    {
        work.Write("torn.grove", Plantings.Broken);
        var answer = work.Run("draw", "torn.grove");
        Assert.Equal(ExitStatus.Findings, answer.Status);
        Assert.StartsWith("torn.grove:7:", answer.Errors, StringComparison.Ordinal);
        Assert.NotNull(XDocument.Parse(answer.Output).Root);
    }

    [Fact]
    public void A_picture_of_pixels_is_not_poured_onto_a_terminal()
    {
        work.Write("a.grove", Plantings.Quiet);
        Assert.Equal(ExitStatus.Usage, work.RunWatched("draw", "a.grove", "--format", "png").Status);
    }

    [Fact]
    public void A_book_is_one_page_that_asks_for_nothing_from_outside()
    {
        work.Write("a.grove", Plantings.InLine);
        var answer = work.Run("book", "a.grove");
        Assert.Equal(ExitStatus.Good, answer.Status);
        Assert.StartsWith("<!doctype html>", answer.Output, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("Content-Security-Policy", answer.Output, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("src=\"http", answer.Output, StringComparison.Ordinal);
        Assert.Equal(ExitStatus.Good, work.Run("book", "a.grove", "--output", "a.html").Status);
        Assert.Equal(answer.Output, work.Read("a.html"));
    }

    [Fact]
    public void More_trunks_than_any_planting_has_are_told_and_neither_drawn_nor_bound_in_a_book()
    {
        using var work = new Workplace();
        work.Write("a.grove", "planting \"P\"\n" + string.Concat(Enumerable.Range(0, 20_001).Select(index => $"trunk T{index} at {index % 200 * 30}, {index / 200 * 30} mm\n")));
        foreach (var command in new[] { "draw", "book" })
        {
            var answer = work.Run(command, "a.grove", "--output", "made.svg");
            Assert.Equal(ExitStatus.Findings, answer.Status);
            Assert.Contains("20,001 trunks stand here", answer.Errors, StringComparison.Ordinal);
            Assert.False(File.Exists(work["made.svg"]));
        }
    }
}
