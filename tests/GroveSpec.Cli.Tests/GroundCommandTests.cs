using System.Text.Json.Nodes;

namespace GroveSpec.Cli.Tests;

public sealed class GroundCommandTests : PlantingCommandTests
{
    private const string Slab = """
        planting  "Four on a slab"
        habit     group
        container oval 420 x 280 x 40 mm
        viewed    from 180 deg, at 1000 mm, eye 200 mm
        trunk A   at -90, -35 mm   diameter 30 mm   height 410 mm   # the oldest
        trunk B   at -40, -40 mm   diameter 22 mm   height 350 mm
        trunk C   at 20, 30 mm     diameter 16 mm   height 290 mm
        trunk D   at 60, -20 mm    diameter 12 mm   height 210 mm

        """;

    public GroundCommandTests()
        : base("ground", Slab)
    {
    }

    private protected override string[][] Questions => [["--diameter", "14 mm", "--height", "17cm"], ["--of=A"]];

    [Fact]
    public void Where_free_ground_is_too_narrow_to_be_set_by_hand_the_spots_are_told_as_the_least_bad()
    {
        Work.Write("sliver.grove", "planting \"Rnd\"\nhabit group\ncontainer round 400 x 40 mm\nviewed from 180 deg, at 1600 mm, eye 150 mm, near\ntrunk A at -122, 51 mm diameter 49.3 mm height 627 mm\ntrunk B at -22, -135 mm diameter 41.1 mm height 370 mm lean 2 deg toward 266 deg\ntrunk C at 147, 79 mm diameter 25 mm height 357 mm\ntrunk D at -77, 17 mm diameter 18.4 mm height 263 mm\ntrunk E at -80, -128 mm diameter 16.5 mm height 223 mm\n");
        var answer = Work.Run("ground", "sliver.grove", "--diameter", "23mm", "--height", "241mm", "--write");
        Assert.Contains("No place there is wide enough to be set by hand, so these are the least bad spots:", Flowing(answer.Output), StringComparison.Ordinal);
        Assert.Contains("nothing was written, since no free ground is wide enough to be set by hand.", answer.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void The_best_spot_is_written_and_nothing_else_is_touched()
    {
        var before = Work.Run("check", "a.grove", "--json").Output;
        Assert.Equal(ExitStatus.Good, Work.Run("ground", "a.grove", "--diameter", "9mm", "--height", "120mm", "--write").Status);
        var written = Work.Read("a.grove");
        Assert.Matches(@"^trunk E   at -?\d+, -?\d+ mm   diameter 9 mm   height 120 mm$", Assert.Single(written.Split('\n').Except(Slab.Split('\n'))));
        Assert.Equal(Slab, string.Join('\n', written.Split('\n').Where(line => !line.StartsWith("trunk E", StringComparison.Ordinal))));
        var known = JsonNode.Parse(before)!["findings"]!.AsArray().Select(Key).ToHashSet(StringComparer.Ordinal);
        Assert.DoesNotContain(JsonNode.Parse(Work.Run("check", "a.grove", "--json").Output)!["findings"]!.AsArray(), finding => !known.Contains(Key(finding)));
    }

    [Fact]
    public void A_trunk_of_the_planting_is_moved_where_it_is_written()
    {
        Assert.Contains("C was written at the best spot.", Work.Run("ground", "a.grove", "--of", "C", "--write").Errors, StringComparison.Ordinal);
        Assert.Matches(@"\ntrunk C   at -?\d+, -?\d+ mm     diameter 16 mm   height 290 mm\n", Work.Read("a.grove"));
        Work.Write("fixed.grove", Slab.Replace("height 290 mm", "height 290 mm fixed", StringComparison.Ordinal));
        var answer = Work.Run("ground", "fixed.grove", "--of", "C", "--write");
        Assert.Contains("nothing was written", answer.Errors, StringComparison.Ordinal);
        Assert.Contains("C is fixed, so nothing is offered to be written", Flowing(answer.Output), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_no_ground_is_free_that_is_said_and_nothing_is_written()
    {
        Work.Write("twin.grove", "planting \"Twins\"\ncontainer oval 420 x 280 x 40 mm\ntrunk A at -90, -35 mm diameter 30 mm\n");
        var answer = Work.Run("ground", "twin.grove", "--diameter", "30mm", "--write");
        Assert.Contains("no ground is free: it raises a finding wherever it stands", Flowing(answer.Output), StringComparison.Ordinal);
        Assert.Contains("It raises one finding: twin-diameters of A and B.", Flowing(answer.Output), StringComparison.Ordinal);
        Assert.Contains("nothing was written, since no ground is free.", answer.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("trunk B", Work.Read("twin.grove"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_picture_is_written_by_its_ending()
    {
        foreach (var (file, begins) in new[] { ("ground.svg", "<svg"), ("ground.png", "PNG"), ("ground.pdf", "%PDF") })
        {
            Assert.Equal(ExitStatus.Good, Work.Run("ground", "a.grove", "--diameter", "9mm", "--picture", file).Status);
            Assert.Contains(begins, Work.Read(file)[..200], StringComparison.Ordinal);
        }

        Assert.StartsWith("<svg", Work.Run("ground", "a.grove", "--diameter", "9mm", "--picture", "-").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void More_trunks_than_are_looked_among_are_refused_with_what_to_do()
    {
        Work.Write("many.grove", "planting \"Many\"\n" + string.Concat(Enumerable.Range(0, 60).Select(i => $"trunk T{i} at {i * 31}, {i * i % 97} mm diameter {10 + i} mm\n")));
        Assert.Contains("60 trunks stand here, and ground is looked for among up to 59.", Flowing(Work.Run("ground", "many.grove", "--diameter", "9mm").Output), StringComparison.Ordinal);
        Assert.DoesNotContain("60 trunks", Flowing(Work.Run("ground", "many.grove", "--of", "T3").Output), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_container_the_ground_goes_as_far_as_neighbours_reach() =>
        Assert.Contains("mm of what stands, as far as neighbours reach", Flowing(Told("planting \"Open\"\ntrunk A at 0, 0 mm diameter 30 mm\ntrunk B at 100, 20 mm diameter 20 mm\n")), StringComparison.Ordinal);

    [Fact]
    public void A_trunk_without_a_place_takes_no_ground_and_is_named() =>
        Assert.Contains("H stands here too, but nothing gives its place", Flowing(Told(Slab + "trunk H diameter 9 mm height 140 mm\n")), StringComparison.Ordinal);

    [Theory]
    [InlineData("--diameter=0")]
    [InlineData("--diameter=-5mm")]
    [InlineData("--diameter=thick")]
    [InlineData("--diameter=5 deg")]
    [InlineData("--diameter=999999999 m")]
    [InlineData("--height=30cm")]
    public void A_size_that_is_none_is_refused(string size) => Assert.Equal(ExitStatus.Usage, Work.Run("ground", "a.grove", size).Status);

    [Fact]
    public void Inches_are_read_and_written()
    {
        var answer = Work.Run("ground", "a.grove", "--diameter", "0.35", "--units", "inch", "--json");
        var spot = JsonNode.Parse(answer.Output)!["plantings"]![0]!["spots"]![0]!;
        Assert.Matches(@"trunk E   at -?[\d.]+, -?[\d.]+ in   diameter 0.35 in", (string)spot["edits"]![0]!["text"]!);
        Assert.Equal(0, Math.Round((double)spot["x"]! / 1.27) - ((double)spot["x"]! / 1.27), 6);
    }

    private string Told(string text)
    {
        Work.Write("told.grove", text);
        return Work.Run("ground", "told.grove", "--diameter", "9mm").Output;
    }

    private static string Key(JsonNode? finding) => $"{finding!["check"]} {string.Join(' ', finding["trunks"]!.AsArray())}";

    private protected override void ExpectOfSamples(JsonArray plantings)
    {
        Assert.Contains(plantings, planting => planting!["outline"]!.AsArray().Count > 0);
        Assert.All(plantings, planting => Assert.True(planting!["obstacle"] is not null || planting["spots"]!.AsArray().Count > 0));
    }
}
