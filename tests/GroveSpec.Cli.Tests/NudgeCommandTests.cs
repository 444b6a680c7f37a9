using System.Text.Json.Nodes;

namespace GroveSpec.Cli.Tests;

public sealed class NudgeCommandTests : PlantingCommandTests
{
    private const string Row = """
        planting  "Three in a row"
        habit     group
        container rectangle 500 x 300 x 40 mm
        viewed    from 180 deg, at 1500 mm, eye 250 mm
        trunk A   at -120, -20 mm   diameter 40 mm   height 460 mm   # the first
        trunk B   at -30, 1 mm      diameter 24 mm   height 300 mm
        trunk C   at 110, 30 mm     diameter 12 mm   height 170 mm

        """;

    public NudgeCommandTests()
        : base("nudge", Row)
    {
    }

    [Fact]
    public void A_file_that_is_written_is_judged_as_it_then_is()
    {
        Work.Write("rim.grove", "planting \"Rim\"\nhabit group\ncontainer oval 400 x 300 x 40 mm\nviewed from 180 deg, at 1000 mm, eye 160 mm\ntrunk A at 190, 20 mm diameter 30 mm height 300 mm\ntrunk B at 0, -2 mm diameter 20 mm height 220 mm\ntrunk C at -110, 58 mm diameter 12 mm height 150 mm\n");
        Assert.Equal(ExitStatus.Findings, Work.Run("nudge", "rim.grove").Status);
        var answer = Work.Run("nudge", "rim.grove", "--write");
        Assert.Equal((ExitStatus.Good, "rim.grove: the move of A was written.\n"), (answer.Status, answer.Errors));
        Assert.Equal(ExitStatus.Good, Work.Run("check", "rim.grove").Status);
    }

    [Fact]
    public void A_trunk_farther_outside_the_container_than_it_may_be_moved_is_left_to_be_measured()
    {
        Work.Write("far.grove", Row.Replace("at 110, 30 mm", "at 600, 30 mm", StringComparison.Ordinal));
        var told = Flowing(Work.Run("nudge", "far.grove").Output);
        Assert.Contains("C stays where it is, since it stands farther outside the container than 60 mm, which no move within reach can mend: measure the place again, or write the container as it is.", told, StringComparison.Ordinal);
        Assert.DoesNotContain("Move C", told, StringComparison.Ordinal);
        Work.Write("muted.grove", Row.Replace("at 110, 30 mm", "at 600, 30 mm", StringComparison.Ordinal) + "mute off-container because \"the slab is larger\"\n");
        Assert.DoesNotContain("C stays", Flowing(Work.Run("nudge", "muted.grove").Output), StringComparison.Ordinal);
    }

    [Fact]
    public void A_picture_s_name_does_not_become_a_folder_for_several()
    {
        Work.Write("b.grove", Row);
        var answer = Work.Run("nudge", "a.grove", "b.grove", "--picture", "moves.svg");
        Assert.Equal(ExitStatus.Usage, answer.Status);
        Assert.Contains("moves.svg is the name of one picture, and there are 2 plantings; name a folder for them.", answer.Errors, StringComparison.Ordinal);
        Assert.Equal(ExitStatus.Good, Work.Run("nudge", "a.grove", "b.grove", "--picture", "moves").Status);
    }

    [Fact]
    public void The_move_is_told_as_an_order_with_what_it_comes_to()
    {
        var told = Flowing(Work.Run("nudge", "a.grove").Output);
        Assert.StartsWith("Three in a row, the smallest moves 1 One trunk goes ", told, StringComparison.Ordinal);
        Assert.Contains("and the checks of composition then find nothing, where now they find 1. Move ", told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trunk_whose_line_could_not_be_read_whole_stays_and_its_line_is_left_alone()
    {
        var torn = Row.Replace("height 300 mm", "height 300 mm   line (-30,1,0) (-28,4", StringComparison.Ordinal);
        Work.Write("torn.grove", torn);
        var told = Flowing(Work.Run("nudge", "torn.grove", "--write").Output);
        Assert.Contains("B stays as it is, since its line could not be read whole: put that right first.", told, StringComparison.Ordinal);
        Assert.DoesNotContain("Move B", told, StringComparison.Ordinal);
        string[] before = torn.Split('\n'), after = Work.Read("torn.grove").Split('\n');
        var changed = Assert.Single(Enumerable.Range(0, before.Length), line => before[line] != after[line]);
        Assert.DoesNotContain("trunk B", after[changed], StringComparison.Ordinal);
    }

    [Fact]
    public void The_move_is_written_and_nothing_else_is_touched()
    {
        var answer = Work.Run("nudge", "a.grove", "--write");
        Assert.Equal(ExitStatus.Good, answer.Status);
        Assert.Contains("was written.", answer.Errors, StringComparison.Ordinal);
        string[] before = Row.Split('\n'), after = Work.Read("a.grove").Split('\n');
        var changed = Assert.Single(Enumerable.Range(0, before.Length), line => before[line] != after[line]);
        Assert.StartsWith("trunk ", after[changed], StringComparison.Ordinal);
        Assert.Equal(before.Length, after.Length);
        Assert.Contains("find nothing here, so nothing has to be moved.", Flowing(Work.Run("nudge", "a.grove").Output), StringComparison.Ordinal);
        Assert.DoesNotContain("three-in-line", Work.Run("check", "a.grove").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("gone/report.json", ExitStatus.Files)]
    [InlineData("", ExitStatus.Usage)]
    [InlineData("a.grove", ExitStatus.Usage)]
    public void Where_the_report_cannot_be_written_the_planting_stays_as_it_is(string output, int status)
    {
        Assert.Equal(status, (int)Work.Run("nudge", "a.grove", "--write", "--json", "--output", output).Status);
        Assert.Equal(Row, Work.Read("a.grove"));
    }

    [Fact]
    public void Where_the_report_would_go_into_a_named_pipe_the_planting_stays_as_it_is()
    {
        Assert.SkipWhen(!OperatingSystem.IsLinux(), "Pipes are made by mkfifo.");
        using (var made = System.Diagnostics.Process.Start("mkfifo", [Work["report.pipe"]]))
        {
            made.WaitForExit();
        }

        Assert.Equal(ExitStatus.Files, Work.Run("nudge", "a.grove", "--write", "--output", "report.pipe").Status);
        Assert.Equal(Row, Work.Read("a.grove"));
    }

    [Fact]
    public void A_picture_that_cannot_be_is_refused_by_the_option_that_names_it()
    {
        Assert.Contains("--picture needs the name of a file or folder.", Work.Run("nudge", "a.grove", "--picture", "").Errors, StringComparison.Ordinal);
        var other = Work.Run("nudge", "a.grove", "--picture", "moves.jpg").Errors;
        Assert.Contains(".jpg is none of them. Name another file.", Flowing(other), StringComparison.Ordinal);
        Assert.DoesNotContain("--format", other, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_is_suggested_nothing_is_written()
    {
        Work.Write("b.grove", Plantings.Quiet);
        Assert.Contains("b.grove: nothing was written.", Work.Run("nudge", "b.grove", "--write").Errors, StringComparison.Ordinal);
        Assert.Equal(Plantings.Quiet, Work.Read("b.grove"));
    }

    [Fact]
    public void No_trunk_goes_further_than_was_asked_for_and_whole_steps_are_kept()
    {
        var answer = JsonNode.Parse(Work.Run("nudge", "a.grove", "--reach", "14mm", "--step", "1mm", "--json").Output)!;
        var moves = answer["plantings"]![0]!["suggestions"]![0]!["moves"]!.AsArray();
        Assert.All(moves, move => Assert.InRange((double)move!["distance"]!, 0, 14));
        Assert.All(moves, move => Assert.Equal(0, (double)move!["x"]! % 1, 6));
        Assert.Contains("No moves of up to 1 mm were found", Flowing(Work.Run("nudge", "a.grove", "--reach", "1mm").Output), StringComparison.Ordinal);
    }

    [Fact]
    public void The_picture_shows_the_moves_and_is_alone_on_standard_output()
    {
        Assert.Contains("Three in a row", Work.Run("nudge", "a.grove", "--picture", "moves.svg").Output, StringComparison.Ordinal);
        var picture = Work.Read("moves.svg");
        Assert.Contains("class=\"gs-way\"", picture, StringComparison.Ordinal);
        Assert.Equal(picture, Work.Run("nudge", "a.grove", "--picture", "-").Output);
        Assert.Equal(ExitStatus.Usage, Work.Run("nudge", "a.grove", "--picture", "-", "--json").Status);
    }

    [Theory]
    [InlineData("--reach", "far")]
    [InlineData("--bend", "90")]
    [InlineData("--bend", "0")]
    [InlineData("--step", "-1mm")]
    public void What_cannot_be_meant_so_is_refused(string option, string written) =>
        Assert.Equal(ExitStatus.Usage, Work.Run("nudge", "a.grove", $"{option}={written}").Status);

    private protected override void ExpectOfSamples(JsonArray plantings) => Assert.Contains(plantings, planting => planting!["suggestions"]!.AsArray().Count > 0);
}
