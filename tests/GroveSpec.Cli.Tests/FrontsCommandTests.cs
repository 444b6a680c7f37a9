using System.Globalization;
using System.Text.Json.Nodes;

namespace GroveSpec.Cli.Tests;

public sealed class FrontsCommandTests : PlantingCommandTests
{
    private const string Five = """
        planting  "Five by the ferry"
        habit     group
        container oval 420 x 280 x 40 mm
        viewed    from 180 deg, at 1000 mm, eye 200 mm   # from the bench
        trunk A   at -90, -35 mm   diameter 30 mm   height 410 mm
        trunk B   at -40, -40 mm   diameter 22 mm   height 350 mm
        trunk C   at 0, 20 mm      diameter 18 mm   height 290 mm
        trunk D   at 40, -20 mm    diameter 12 mm   height 210 mm
        trunk E   at 90, 30 mm     diameter 8 mm    height 150 mm

        """;

    public FrontsCommandTests()
        : base("fronts", Five)
    {
    }

    [Fact]
    public void Where_no_thickness_is_known_it_is_not_said_that_no_trunk_covers_another()
    {
        Work.Write("thin.grove", System.Text.RegularExpressions.Regex.Replace(Five, "diameter \\d+ mm", ""));
        var none = Flowing(Work.Run("fronts", "thin.grove").Output);
        Assert.Contains("what one trunk covers of another cannot be told, since no thickness is known", none, StringComparison.Ordinal);
        Assert.DoesNotContain("no trunk covers another", none, StringComparison.Ordinal);
        Work.Write("one.grove", Five.Replace("diameter 8 mm", "", StringComparison.Ordinal));
        Assert.Contains("as far as thicknesses are known, and of 1 it is not", Flowing(Work.Run("fronts", "one.grove").Output), StringComparison.Ordinal);
    }

    [Fact]
    public void The_best_front_is_written_and_nothing_else_is_touched()
    {
        var best = (double)JsonNode.Parse(Work.Run("fronts", "a.grove", "--json").Output)!["plantings"]![0]!["suggestions"]![0]!["bearing"]!;
        var answer = Work.Run("fronts", "a.grove", "--write");
        var written = best.ToString("0.##", CultureInfo.InvariantCulture);
        Assert.Contains($"a.grove: the best front was written, viewed from {written} deg.", answer.Errors, StringComparison.Ordinal);
        Assert.Equal(Five.Replace("from 180 deg", $"from {written} deg", StringComparison.Ordinal), File.ReadAllText(Work["a.grove"]));
        var now = JsonNode.Parse(Work.Run("fronts", "a.grove", "--json").Output)!["plantings"]![0]!["now"]!;
        Assert.Equal(best, (double)now["bearing"]!);
    }

    [Fact]
    public void Once_more_there_is_nothing_to_write()
    {
        Work.Run("fronts", "a.grove", "--write");
        var before = File.ReadAllText(Work["a.grove"]);
        Assert.Contains("no front was written, since the best front is the one it has.", Work.Run("fronts", "a.grove", "--write").Errors, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(Work["a.grove"]));
    }

    [Fact]
    public void Standard_input_cannot_be_written_back() => Assert.Equal(ExitStatus.Usage, Work.RunWithInput(Five, "fronts", "-", "--write").Status);

    [Fact]
    public void What_a_front_loses_is_told_in_sentences_beside_the_one_it_has_now()
    {
        var told = string.Join(' ', Work.Run("fronts", "a.grove").Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("Five by the ferry, its best fronts", told, StringComparison.Ordinal);
        Assert.Matches(@" 1 From \d+(\.\d+)? deg, score \d", told);
        Assert.Matches(@"It holds from \d+(\.\d+)? deg to \d+(\.\d+)? deg: the viewer may step", told);
        Assert.Contains("- Now, from 180 deg, score", told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_picture_is_written_by_its_ending_and_for_several_plantings_into_a_folder()
    {
        foreach (var (file, beginning) in new[] { ("f.svg", "<svg"), ("f.png", "\u2030PNG"), ("f.pdf", "%PDF") })
        {
            Assert.Equal(ExitStatus.Good, Work.Run("fronts", "a.grove", "--picture", file).Status);
            Assert.Equal(beginning[^3..], System.Text.Encoding.Latin1.GetString(File.ReadAllBytes(Work[file]), beginning.Length - 3, 3));
        }

        Work.Write("b.grove", Five.Replace("Five", "Once more five", StringComparison.Ordinal));
        Assert.Equal(ExitStatus.Good, Work.Run("fronts", "a.grove", "b.grove", "--picture", "drawn/").Status);
        Assert.True(File.Exists(Work["drawn/a-fronts.svg"]) && File.Exists(Work["drawn/b-fronts.svg"]));
        Assert.StartsWith("<svg", Work.Run("fronts", "a.grove", "--picture", "-").Output, StringComparison.Ordinal);
        Assert.Equal(ExitStatus.Usage, Work.Run("fronts", "a.grove", "--picture", "-", "--json").Status);
        Assert.Equal(ExitStatus.Usage, Work.Run("fronts", "a.grove", "--picture", "f.bmp").Status);
    }

    [Fact]
    public void A_thousand_trunks_are_refused_in_a_sentence()
    {
        Work.Write("many.grove", "planting \"Many\"\n" + string.Concat(Enumerable.Range(0, 1000).Select(i => $"trunk T{i} at {i * 31 % 907}, {i * i % 971} mm diameter {10 + (i % 9)} mm\n")));
        Assert.Contains("1000 trunks stand here, and a front is looked for in plantings of up to 60.", Work.Run("fronts", "many.grove").Output.Replace("\n     ", " ", StringComparison.Ordinal).Replace("\n  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    private protected override void ExpectOfSamples(JsonArray plantings) => Assert.Contains(plantings, planting => planting!["suggestions"]!.AsArray().Count == 3);
}
