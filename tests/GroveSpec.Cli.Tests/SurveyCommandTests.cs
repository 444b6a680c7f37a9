using System.Diagnostics;
using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace GroveSpec.Cli.Tests;

public sealed class SurveyCommandTests : PlantingCommandTests
{
    private const string Head = """
        # A slab, taped on a windless day
        planting  "Tide Line"
        habit     group
        species   larix-kaempferi
        container oval 400 x 260 x 40 mm
        viewed    from 180 deg, at 1000 mm

        """;

    private const string Known = """
        trunk A   at -90, -30 mm   diameter 30 mm   height 400 mm   # the old one
        trunk B   at 60, -40 mm    diameter 22 mm   height 330 mm
        trunk C   at 20, 70 mm     diameter 18 mm   height 260 mm

        """;

    // D stands at (-30, 20), E at (110, 35): distances worked out by Pythagoras.
    private const string Sought = """
        trunk D                    diameter 12 mm   height 210 mm
        trunk E1                   diameter 9 mm    height 150 mm

        """;

    private const string Readings = """
        tape D to A 78.1025 mm
        tape D to B 108.1665 mm
        tape D to C 70.7107 mm
        tape E1 to A 210.2974 mm
        tape E1 to B 90.1388 mm
        tape E1 to C 96.5660 mm

        """;

    public SurveyCommandTests()
        : base("survey", Head + Known)
    {
    }

    [Fact]
    public void Of_more_trunks_than_are_sought_at_once_nothing_is_said_to_fit()
    {
        var text = new System.Text.StringBuilder("planting \"Many\"\nhabit group\ntrunk A at 0, 0 mm\ntrunk B at 200, 0 mm\ntape A to B 200 mm\n");
        for (var trunk = 0; trunk <= 60; trunk++)
        {
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"trunk T{trunk}\ntape T{trunk} to {(trunk == 0 ? "A" : $"T{trunk - 1}")} 60 mm\n");
        }

        Work.Write("a.grove", text.ToString());
        var told = Flowing(Work.Run("survey", "a.grove").Output);
        Assert.Contains("More than 60 trunks without a place hang together by readings", told, StringComparison.Ordinal);
        Assert.DoesNotContain("fit", told, StringComparison.Ordinal);
        Assert.DoesNotContain("No further reading", told, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_two_may_stand_on_either_side_it_is_said_what_to_read_and_what_no_reading_tells()
    {
        const string sides = """
            planting "Sides"
            habit group
            trunk A at -100, 0 mm
            trunk B at 100, 0 mm
            trunk C
            trunk D
            tape A to C 150 mm
            tape B to C 120.4 mm
            tape A to D 179.7 mm
            tape B to D 169.5 mm

            """;
        Work.Write("a.grove", sides);
        Assert.Matches("Next, read C to D: it tells by 17\\d\\.\\d mm whether both stand on the same side\\.", Flowing(Work.Run("survey", "a.grove").Output));
        Work.Write("a.grove", sides + "tape C to D 54.1 mm\n");
        Assert.Contains("No reading among these trunks would tell the side. Read to one that stands aside of the line over which they may be turned, or give one of them an \"at\".", Flowing(Work.Run("survey", "a.grove").Output), StringComparison.Ordinal);
    }

    [Fact]
    public void The_picture_shows_places_and_readings_and_is_alone_on_standard_output()
    {
        Work.Write("a.grove", Head + Known + Sought + Readings);
        Assert.Contains("Tide Line", Work.Run("survey", "a.grove", "--picture", "survey.svg").Output, StringComparison.Ordinal);
        var picture = Work.Read("survey.svg");
        Assert.Equal(6, picture.Split("class=\"gs-reading\"").Length - 1);
        Assert.Equal(2, picture.Split("class=\"gs-ellipse\"").Length - 1);
        Assert.Equal(picture, Work.Run("survey", "a.grove", "--picture", "-").Output);
        Assert.Equal(ExitStatus.Usage, Work.Run("survey", "a.grove", "--picture", "-", "--json").Status);
    }

    [Fact]
    public void Exact_readings_give_the_places_and_every_reading_fits()
    {
        Work.Write("a.grove", Head + Known + Sought + Readings);
        var planting = Json("a.grove");
        Assert.Equal((-30, 20), (Round(Position(planting, "D")["x"]), Round(Position(planting, "D")["y"])));
        Assert.Equal((110, 35), (Round(Position(planting, "E1")["x"]), Round(Position(planting, "E1")["y"])));
        Assert.All(planting["readings"]!.AsArray(), reading => Assert.Equal("fits", (string)reading!["is"]!));
        var told = Flowing(Work.Run("survey", "a.grove").Output);
        Assert.StartsWith("Tide Line, 6 tape readings among 5 trunks D at -30.0, 20.0 mm, within ", told, StringComparison.Ordinal);
        Assert.Contains("All readings fit, the worst to 0.0 mm.", told, StringComparison.Ordinal);

        static double Round(JsonNode? number) => Math.Round((double)number!, 2);
    }

    [Fact]
    public void Written_places_change_their_lines_and_no_other_byte()
    {
        var before = Head + Known + Sought + "\r\n" + Readings;
        Work.Write("a.grove", before);
        var answer = Work.Run("survey", "a.grove", "--write");
        Assert.Equal(ExitStatus.Good, answer.Status);
        Assert.Contains("a.grove: the places of 2 trunks were written.", answer.Errors, StringComparison.Ordinal);
        Assert.Equal(
            before.Replace("trunk D ", "trunk D   at -30, 20 mm ", StringComparison.Ordinal).Replace("trunk E1 ", "trunk E1   at 110, 35 mm ", StringComparison.Ordinal),
            Work.Read("a.grove"));

        // Once more there is nothing to write, and the file is not touched.
        var time = File.GetLastWriteTimeUtc(Work["a.grove"]);
        Assert.Contains("no place was written", Work.Run("survey", "a.grove", "--write").Errors, StringComparison.Ordinal);
        Assert.Equal(time, File.GetLastWriteTimeUtc(Work["a.grove"]));
        Assert.Contains("so that the readings only check them. All readings fit", Flowing(Work.Run("survey", "a.grove").Output), StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_that_does_not_fit_is_named_left_out_and_to_be_read_again()
    {
        Work.Write("a.grove", Head + Known + Taped("tape D to E1 140.8013 mm\n") + Readings.Replace("78.1025", "98.1025", StringComparison.Ordinal) + "tape D to A 78.2 mm\ntape D to A 78.0 mm\n");
        var told = Flowing(Work.Run("survey", "a.grove").Output);
        Assert.Contains("D to A reads 98.1 mm, but the others make it 78.1 mm: it is 20.0 mm too long, and was left out.", told, StringComparison.Ordinal);
        Assert.EndsWith("Next, read D to A again.", told, StringComparison.Ordinal);
        Assert.Equal("left out", (string)Json("a.grove")["readings"]![1]!["is"]!);
        Work.Run("survey", "a.grove", "--write");
        Assert.Matches("trunk D   at -(30(\\.\\d+)?|29\\.9\\d*), (20(\\.\\d+)?|19\\.9\\d*) mm", Work.Read("a.grove"));
    }

    [Fact]
    public void Gaps_that_are_written_as_distances_between_centres_are_told_as_that_and_nothing_is_written()
    {
        // T at (30, 80) and U at (-40, -60): what lies between the bark of each two, to a tenth of a millimetre.
        var text = Head + """
            trunk A at -100, 0 mm diameter 20 mm
            trunk B at 100, 0 mm diameter 24 mm
            trunk C at 0, -120 mm diameter 16 mm
            trunk T diameter 18 mm
            trunk U diameter 14 mm
            tape T to A 133.6 mm
            tape T to B 85.3 mm
            tape T to C 185.2 mm
            tape U to A 67.9 mm
            tape U to B 133.3 mm
            tape U to C 57.1 mm
            tape T to U 140.5 mm

            """;
        Work.Write("a.grove", text);
        var answer = Work.Run("survey", "a.grove", "--write");
        Assert.Contains(
            "All readings would fit, the worst to 0.0 mm, had they been read between bark. Where they were, write \"between bark\" behind each; until that is sure no place is written.",
            Flowing(answer.Output),
            StringComparison.Ordinal);
        Assert.Contains("no place was written", answer.Errors, StringComparison.Ordinal);
        Assert.Equal(text, Work.Read("a.grove"));
        Assert.True((bool)Json("a.grove")["fitsOtherwise"]!["betweenBark"]!);

        Work.Write("b.grove", Regex.Replace(text, "(tape .* mm)", "$1 between bark"));
        Assert.Contains("All readings fit", Flowing(Work.Run("survey", "b.grove").Output), StringComparison.Ordinal);
        Assert.Null(Json("b.grove")["fitsOtherwise"]);
    }

    [Fact]
    public void A_reading_left_out_is_held_against_both_places_that_the_others_leave()
    {
        Work.Write("a.grove", Head + "trunk A at -100, 0 mm\ntrunk B at 100, 0 mm\ntrunk C at 0, -300 mm\ntrunk T\ntape T to A 152.6 mm\ntape T to B 106.3 mm\ntape T to C 38.1 mm\n");
        var told = Flowing(Work.Run("survey", "a.grove").Output);
        Assert.Matches("T to C reads 38\\.1 mm, but of the two places that the others leave the one makes it (222\\.1|381\\.1) mm and the other (222\\.1|381\\.1) mm: it fits neither, and was left out\\. It should be 10 times as long: see whether its unit is the one on the tape\\.", told);
        var reading = Json("a.grove")["readings"]![2]!;
        Assert.Equal([222.1, 381.1], new[] { (double)reading["fitted"]!, (double)reading["otherFitted"]! }.Order(), (one, other) => Math.Abs(one - other) < 0.1);
    }

    [Fact]
    public void Where_it_cannot_be_told_which_reading_is_off_all_are_named_and_nothing_is_written()
    {
        var text = Head + Known + Taped("") + Readings.Replace("78.1025", "98.1025", StringComparison.Ordinal);
        Work.Write("a.grove", text);
        var answer = Work.Run("survey", "a.grove", "--write");
        var told = Flowing(answer.Output);
        Assert.Contains("One of these 3 readings is off, and there are too few to tell which: D to A 98.1 mm, D to B 108.2 mm and D to C 70.7 mm.", told, StringComparison.Ordinal);
        Assert.Contains("which depends on what may be off", told, StringComparison.Ordinal);
        Assert.Contains("a.grove: the place of 1 trunk was written.", answer.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("trunk D   at", Work.Read("a.grove"), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_readings_do_not_agree_it_is_said_by_how_much_and_what_to_do()
    {
        // Four readings to known trunks, of which two are 20 mm off: two to spare, and nothing left that checks.
        Work.Write("a.grove", Head + """
            trunk A at -200, -60 mm
            trunk B at 200, -80 mm
            trunk C at 120, 140 mm
            trunk D at -130, 120 mm
            trunk X
            tape X to A 268.3 mm
            tape X to B 205.0 mm
            tape X to C 131.2 mm
            tape X to D 163.5 mm
            """);
        var told = Flowing(Work.Run("survey", "a.grove").Output);
        Assert.Matches("The readings do not agree with each other: with the best places found they are off by \\d+\\.\\d mm on the whole, where a tape read by hand is right to 2\\.0 mm, and it cannot be told which of them are off\\. Read the trunks whose place is doubtful again", told);
        Assert.DoesNotContain("fit", told, StringComparison.Ordinal);
        Assert.DoesNotContain("95 of 100", told, StringComparison.Ordinal);
        Assert.True((double)Json("a.grove")["disagreement"]! > 2);
        Work.Run("survey", "a.grove", "--write");
        Assert.DoesNotContain("trunk X   at", Work.Read("a.grove"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_in_the_file_that_does_not_fit_is_named_with_where_the_readings_put_it()
    {
        var text = Head + """
            trunk A at -200, -60 mm
            trunk B at 215, -80 mm
            trunk C at 120, 140 mm
            trunk D
            trunk E
            tape A to B 400.5 mm
            tape B to C 234.1 mm
            tape A to C 377.4 mm
            tape A to D 193.1 mm
            tape B to D 385.9 mm
            tape C to D 250.8 mm
            tape A to E 256.3 mm
            tape B to E 174.6 mm
            tape C to E 300.8 mm
            tape D to E 319.1 mm
            """;
        Work.Write("a.grove", text);
        var told = Flowing(Work.Run("survey", "a.grove", "--write").Output);
        Assert.Contains("The readings agree with each other and not with the place of B: the file puts B at 215.0, -80.0 mm, but the readings to it put it at 200.0, -80.0 mm, 15.0 mm from there. Measure B again and mend its \"at\", or the readings; until then nothing that hangs on it is written.", told, StringComparison.Ordinal);
        Assert.DoesNotContain("left out", told, StringComparison.Ordinal);
        Assert.DoesNotContain("All readings fit", told, StringComparison.Ordinal);
        Assert.Equal(text, Work.Read("a.grove"));
        var misplaced = Assert.Single(Json("a.grove")["misplaced"]!.AsArray());
        Assert.Equal(("B", true), ((string)misplaced!["trunk"]!, (bool)misplaced["sure"]!));
    }

    [Fact]
    public void Where_only_the_origin_is_sure_nothing_is_written_and_that_is_said()
    {
        var text = Head + """
            trunk A
            trunk B
            trunk C
            trunk D
            tape A to B 200 mm
            tape A to C 150 mm
            tape B to C 110 mm
            tape A to D 190 mm
            tape B to D 160 mm
            tape C to D 90 mm
            """;
        Work.Write("a.grove", text);
        Assert.Contains("only the origin is sure, and with it alone the rest could not be written later: nothing is written.", Flowing(Work.Run("survey", "a.grove", "--write").Output), StringComparison.Ordinal);
        Assert.Equal(text, Work.Read("a.grove"));
    }

    [Fact]
    public void Where_all_trunks_stand_in_one_line_it_is_said_that_none_of_them_helps()
    {
        Work.Write("line.grove", Head + "trunk A at 0, 0 mm\ntrunk B at 100, 0 mm\ntrunk C at 200, 0 mm\ntrunk D\ntape A to D 300 mm\ntape B to D 200 mm\ntape C to D 100 mm\n");
        var told = Flowing(Work.Run("survey", "line.grove").Output);
        Assert.Contains("No reading among these trunks would hold what can still move: they stand in one line.", told, StringComparison.Ordinal);
        Assert.DoesNotContain("No further reading", told, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_free_is_named_with_the_reading_that_helps()
    {
        Work.Write("a.grove", Head + Known + Taped("") + "tape D to A 78.1 mm\ntape D to B 108.2 mm\ntape E1 to B 90.1 mm\n");
        var told = Flowing(Work.Run("survey", "a.grove").Output);
        Assert.Contains("E1 can still move without any reading changing.", told, StringComparison.Ordinal);
        Assert.Contains("D may stand on either side", told, StringComparison.Ordinal);
        Assert.Contains("Next, read E1 to", told, StringComparison.Ordinal);
        Work.Write("b.grove", Head + Known + Taped("") + "tape D to A 78.1 mm\ntape D to B 108.2 mm\ntape D to C 70.7 mm\n");
        Assert.Contains("Nothing was read to E1. ", Flowing(Work.Run("survey", "b.grove").Output), StringComparison.Ordinal);
        Assert.Contains("Next, read E1 to A, B and C: three that stand well apart hold it.", Flowing(Work.Run("survey", "b.grove").Output), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_any_place_axes_are_chosen_written_and_can_be_turned_over()
    {
        const string Square = "trunk A diameter 9 mm\ntrunk B diameter 9 mm\ntrunk C diameter 9 mm\ntape A to B 100 mm\ntape B to C 100 mm\ntape A to C 141.4214 mm\n";
        Work.Write("a.grove", Head + Square);
        var told = Flowing(Work.Run("survey", "a.grove").Output);
        Assert.Contains("A at 0.0, 0.0 mm, the origin", told, StringComparison.Ordinal);
        Assert.Contains("use --mirrored", told, StringComparison.Ordinal);
        Assert.Contains("C at 100.0, -100.0 mm", Flowing(Work.Run("survey", "a.grove", "--mirrored").Output), StringComparison.Ordinal);
        Work.Run("survey", "a.grove", "--write");
        Assert.Contains("trunk C   at 100, 100 mm", Work.Read("a.grove"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_that_cannot_be_read_is_not_hidden_by_a_second_one()
    {
        var text = Head + Known + "trunk D at 41, mm diameter 12 mm\ntrunk E1 diameter 9 mm\n" + Readings;
        Work.Write("a.grove", text);
        Work.Run("survey", "a.grove", "--write");
        Assert.Contains("trunk D at 41, mm", Work.Read("a.grove"), StringComparison.Ordinal);
        Assert.Contains("trunk E1   at 110, 35 mm", Work.Read("a.grove"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("trunk \u202eA at 1, 2 mm\ntrunk \u001b[31m diameter 9 mm\ntape A to A 5 mm\ntape <script> to \u202eA 9 mm\n")]
    [InlineData(Head + "trunk A\ntrunk B\ntrunk C\ntape A to B 1e9 mm\ntape B to C 1 mm\ntape A to C 0.000001 mm\n")]
    public void Json_of_readings_that_cannot_be_is_as_its_schema_says(string text) => ExpectJsonAsItsSchemaSays(text);

    [Theory]
    [InlineData("--output", "a.grove")]
    [InlineData("--units", "ells")]
    public void What_cannot_be_meant_so_is_refused_and_nothing_is_lost(params string[] options)
    {
        Work.Write("a.grove", Head + Known);
        Assert.Equal(ExitStatus.Usage, Work.Run(["survey", "a.grove", .. options]).Status);
        Assert.Equal(ExitStatus.Usage, Work.RunWithInput(Head + Known, "survey", "-", "--write").Status);
        Assert.Equal(Head + Known, Work.Read("a.grove"));
    }

    [Theory]
    [InlineData("survey")]
    [InlineData("stand")]
    public async Task The_native_program_tells_the_same_of_every_sample(string command)
    {
        var program = Environment.GetEnvironmentVariable("GROVESPEC_PROGRAM");
        Assert.SkipWhen(string.IsNullOrEmpty(program), "GROVESPEC_PROGRAM names no native program; bash tests/run.sh makes one.");
        Work.Write("a.grove", Head + Known + Taped("tape D to E1 140.8 mm\n") + Readings);
        string[] words = [command, Project.Path("samples"), Work["a.grove"], "--json"];
        using var process = Process.Start(new ProcessStartInfo(program!, words) { RedirectStandardOutput = true, RedirectStandardError = true, StandardOutputEncoding = Encoding.UTF8 })!;
        var errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        var output = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(Work.Run(words).Output, output);
        await errors;
    }

    private static string Taped(string more) => Sought + more;

    private static JsonNode Position(JsonNode planting, string trunk) => planting["positions"]!.AsArray().Single(one => (string)one!["trunk"]! == trunk)!;
}
