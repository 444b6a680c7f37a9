using System.Text.Json.Nodes;

namespace GroveSpec.Cli.Tests;

public sealed class StandCommandTests : PlantingCommandTests
{
    private const string Scattered = """
        planting  "Quiet corner"
        habit     group
        species   acer-buergerianum
        container rectangle 300 x 200 x 40 mm
        viewed    from 180 deg, at 1000 mm
        trunk A   at -110, -50 mm   diameter 30 mm   height 410 mm
        trunk B   at -40, -40 mm    diameter 22 mm   height 350 mm
        trunk C   at 0, 20 mm       diameter 18 mm   height 290 mm
        trunk D   at 70, -20 mm     diameter 12 mm   height 210 mm
        trunk E   at 110, 50 mm     diameter 8 mm    height 150 mm

        """;

    public StandCommandTests()
        : base("stand", Scattered)
    {
    }

    [Fact]
    public void The_picture_has_a_row_for_each_index_and_is_alone_on_standard_output()
    {
        Assert.Contains("Quiet corner", Work.Run("stand", "a.grove", "--picture", "stand.svg").Output, StringComparison.Ordinal);
        var picture = Work.Read("stand.svg");
        Assert.Equal(5, picture.Split("class=\"gs-row\"").Length - 1);
        Assert.Equal(picture, Work.Run("stand", "a.grove", "--picture", "-").Output);
        Assert.Equal(ExitStatus.Usage, Work.Run("stand", "a.grove", "--picture", "-", "--json").Status);
    }

    [Fact]
    public void Json_gives_every_index_by_name_as_R_gives_it()
    {
        // The five stems of the reference values, computed with R 4.2.2 and spatstat: met to half of the last printed digit.
        var planting = JsonNode.Parse(Work.Run("stand", "a.grove", "--json").Output)!["plantings"]![0]!;
        Assert.Equal(74.955507, (double)planting["meanNearestMillimetres"]!, 5e-7);
        Assert.Equal(1.090463, Value("clarkEvans"), 5e-7);
        Assert.Equal(.70, Value("uniformAngle"), 5e-7);
        Assert.Equal(.276364, Value("sizeDifferentiation"), 5e-7);
        Assert.Equal(.420042 * 5 / 4, Value("basalAreaGini"), 5e-7);
        Assert.Equal(1.368494, (double)planting["uncorrected"]!["clarkEvans"]!, 5e-7);
        Assert.Equal(1.576318, (double)planting["uncorrected"]!["clarkEvansScore"]!, 5e-7);
        Assert.Equal(.420042, (double)planting["uncorrected"]!["basalAreaGini"]!, 5e-7);
        Assert.Equal(.24, (double)planting["uncorrected"]!["diameterGini"]!, 5e-7);
        Assert.Equal([0, .25, .5, .75, 1], planting["dominance"]!.AsArray().Select(one => (double)one!["thickerNeighbours"]!));
        Assert.Equal("cannot tell", (string)planting["indices"]!["clarkEvans"]!["reading"]!);
        Assert.Equal(1999, (int)planting["indices"]!["clarkEvans"]!["chance"]!["runs"]!);

        double Value(string name) => (double)planting["indices"]![name]!["value"]!;
    }

    [Fact]
    public void Each_number_is_told_beside_chance_and_real_stands_in_whole_sentences()
    {
        var answer = Work.Run("stand", "a.grove");
        Assert.Equal(ExitStatus.Good, answer.Status);
        var told = Flowing(answer.Output);
        Assert.StartsWith("Quiet corner, how its 5 trunks stand From a trunk to its nearest it is 75 mm on average, centre to centre: 71 mm from A to B, 81 mm from D to E. One of the numbers below can be told from chance: neighbours.", told, StringComparison.Ordinal);
        Assert.Matches(@"Spacing Cannot tell it from chance\. The index of Clark and Evans, after Donnelly, is 1\.09; chance gives 0\.\d\d to 1\.\d\d\. Under 1 trunks crowd, over 1 they keep apart\. Real stands, where chance gives 1: redwood seedlings 0\.58, Finnish pines 0\.86, saplings of Japanese black pine 1\.01, Swedish pines 1\.29\.", told);
        Assert.Contains("each of five trunks has all the others for neighbours, however they stand. At least as thick as all four nearest: A. Thinner than all four: E.", told, StringComparison.Ordinal);
        Assert.DoesNotContain("warning", told, StringComparison.OrdinalIgnoreCase);
        Assert.All(answer.Output.Split('\n'), line => Assert.True(line.Length <= 100, line));
    }

    [Fact]
    public void A_planted_row_of_rows_is_said_to_keep_apart_more_evenly_than_chance()
    {
        Work.Write("rows.grove", "planting \"Rows\"\nhabit group\ncontainer rectangle 600 x 400 x 40 mm\n" + string.Concat(Enumerable.Range(0, 12).Select(i => $"trunk T{i} at {((i % 4) * 150) - 225}, {((i / 4) * 133) - 133} mm diameter {10 + i} mm height 200 mm\n")));
        var told = Flowing(Work.Run("stand", "rows.grove").Output);
        Assert.Contains("can be told from chance: spacing", told, StringComparison.Ordinal);
        Assert.Contains("Spacing The trunks keep apart more evenly than chance would have them.", told, StringComparison.Ordinal);
    }

    [Fact]
    public void Few_trunks_are_told_what_they_are_too_few_for()
    {
        Work.Write("one.grove", "planting \"One\"\ntrunk A at 0, 0 mm diameter 20 mm\n");
        Assert.Contains("there is nothing to tell yet", Flowing(Work.Run("stand", "one.grove").Output), StringComparison.Ordinal);
        Work.Write("two.grove", "planting \"Two\"\ncontainer round 300 x 40 mm\ntrunk A at 0, 0 mm diameter 20 mm\ntrunk B at 40, 30 mm\ntrunk C diameter 9 mm\ntrunk D at 9, 9 mm removed 2020\n");
        var told = Flowing(Work.Run("stand", "two.grove").Output);
        Assert.Contains("From A to B it is 50 mm from centre to centre.", told, StringComparison.Ordinal);
        Assert.Contains("it takes at least three trunks that stand, with a place and a thickness", told, StringComparison.Ordinal);
        Assert.Contains("no place: C.", told, StringComparison.Ordinal);
        Assert.Contains("no thickness: B.", told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_clump_is_told_over_the_ground_that_its_trunks_enclose()
    {
        Work.Write("clump.grove", Scattered.Replace("habit     group", "habit     clump", StringComparison.Ordinal));
        var told = Flowing(Work.Run("stand", "clump.grove").Output);
        Assert.Contains("The trunks of a clump rise from one base, so this is over the ground that they enclose", told, StringComparison.Ordinal);
        Work.Write("raft.grove", Scattered.Replace("habit     group", "habit     raft", StringComparison.Ordinal));
        Assert.Contains("The trunks of a raft rise from one laid trunk", Flowing(Work.Run("stand", "raft.grove").Output), StringComparison.Ordinal);
        Work.Write("bare.grove", string.Join('\n', Scattered.Split('\n').Where(line => !line.StartsWith("container", StringComparison.Ordinal))));
        Assert.Contains("No container is named", Flowing(Work.Run("stand", "bare.grove").Output), StringComparison.Ordinal);
    }

    [Fact]
    public void The_day_and_the_units_are_the_ones_asked_for()
    {
        Work.Write("b.grove", Scattered + "trunk F at -90, 60 mm diameter 9 mm height 120 mm planned 2030-03-01\n");
        Assert.Contains("its 5 trunks stand on 1 January 2029", Work.Run("stand", "b.grove", "--on", "2029-01-01").Output, StringComparison.Ordinal);
        Assert.Contains("its 6 trunks stand on 1 January 2031", Work.Run("stand", "b.grove", "--on", "2031-01-01").Output, StringComparison.Ordinal);
        Assert.Contains("2.95 in on average", Work.Run("stand", "a.grove", "--units", "inch").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_written_to_a_file_is_what_is_printed_and_a_planting_is_never_written_over()
    {
        Assert.Equal(ExitStatus.Good, Work.Run("stand", "a.grove", "--output", "told.txt").Status);
        Assert.Equal(Work.Run("stand", "a.grove").Output, Work.Read("told.txt"));
        Assert.Equal(ExitStatus.Usage, Work.Run("stand", "a.grove", "--output", "a.grove").Status);
        Assert.Equal(Scattered, Work.Read("a.grove"));
    }
}
