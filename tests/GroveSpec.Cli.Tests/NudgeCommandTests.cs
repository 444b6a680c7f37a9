using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace GroveSpec.Cli.Tests;

public sealed class NudgeCommandTests : IDisposable
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

    private readonly Workplace work = new();

    public NudgeCommandTests() => work.Write("a.grove", Row);

    public void Dispose() => work.Dispose();

    [Theory]
    [InlineData(Row)]
    [InlineData(Plantings.Quiet)]
    [InlineData(Plantings.Broken)]
    [InlineData("")]
    [InlineData("trunk \"\u0000\u202e<script>\" at 1, 2 mm\ntrunk \u001b[31m at 3, 4 mm diameter 9 mm\ntrunk 😀 at 5, 6 mm diameter 9 mm\n")]
    public void Json_is_as_its_schema_says(string text)
    {
        work.Write("one.grove", text);
        var answer = work.Run("nudge", "one.grove", "gone.grove", "--json");
        Assert.Equal(ExitStatus.Files, answer.Status);
        Assert.True(Schema().Evaluate(Parse(answer.Output)).IsValid, answer.Output);
    }

    [Fact]
    public void Json_of_every_sample_is_as_its_schema_says()
    {
        var answer = work.Run("nudge", Project.Path("samples"), "--json");
        Assert.True(Schema().Evaluate(Parse(answer.Output)).IsValid);
        Assert.Contains(JsonNode.Parse(answer.Output)!["plantings"]!.AsArray(), planting => planting!["suggestions"]!.AsArray().Count > 0);
    }

    [Fact]
    public void The_move_is_told_as_an_order_with_what_it_comes_to()
    {
        var told = Flowing(work.Run("nudge", "a.grove").Output);
        Assert.StartsWith("Three in a row, the smallest moves 1 One trunk goes ", told, StringComparison.Ordinal);
        Assert.Contains("and the checks of composition then find nothing, where now they find 1. Move ", told, StringComparison.Ordinal);
    }

    [Fact]
    public void The_move_is_written_and_nothing_else_is_touched()
    {
        var answer = work.Run("nudge", "a.grove", "--write");
        Assert.Equal(ExitStatus.Good, answer.Status);
        Assert.Contains("was written.", answer.Errors, StringComparison.Ordinal);
        string[] before = Row.Split('\n'), after = work.Read("a.grove").Split('\n');
        var changed = Assert.Single(Enumerable.Range(0, before.Length), line => before[line] != after[line]);
        Assert.StartsWith("trunk ", after[changed], StringComparison.Ordinal);
        Assert.Equal(before.Length, after.Length);
        Assert.Contains("find nothing here, so nothing has to be moved.", Flowing(work.Run("nudge", "a.grove").Output), StringComparison.Ordinal);
        Assert.DoesNotContain("three-in-line", work.Run("check", "a.grove").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_is_suggested_nothing_is_written()
    {
        work.Write("b.grove", Plantings.Quiet);
        Assert.Contains("b.grove: nothing was written.", work.Run("nudge", "b.grove", "--write").Errors, StringComparison.Ordinal);
        Assert.Equal(Plantings.Quiet, work.Read("b.grove"));
    }

    [Fact]
    public void No_trunk_goes_further_than_was_asked_for_and_whole_steps_are_kept()
    {
        var answer = JsonNode.Parse(work.Run("nudge", "a.grove", "--reach", "14mm", "--step", "1mm", "--json").Output)!;
        var moves = answer["plantings"]![0]!["suggestions"]![0]!["moves"]!.AsArray();
        Assert.All(moves, move => Assert.InRange((double)move!["distance"]!, 0, 14));
        Assert.All(moves, move => Assert.Equal(0, (double)move!["x"]! % 1, 6));
        Assert.Contains("No moves of up to 1 mm were found", Flowing(work.Run("nudge", "a.grove", "--reach", "1mm").Output), StringComparison.Ordinal);
    }

    [Fact]
    public void The_picture_shows_the_moves_and_is_alone_on_standard_output()
    {
        Assert.Contains("Three in a row", work.Run("nudge", "a.grove", "--picture", "moves.svg").Output, StringComparison.Ordinal);
        var picture = work.Read("moves.svg");
        Assert.Contains("class=\"gs-way\"", picture, StringComparison.Ordinal);
        Assert.Equal(picture, work.Run("nudge", "a.grove", "--picture", "-").Output);
        Assert.Equal(ExitStatus.Usage, work.Run("nudge", "a.grove", "--picture", "-", "--json").Status);
    }

    [Theory]
    [InlineData("--reach", "far")]
    [InlineData("--bend", "90")]
    [InlineData("--bend", "0")]
    [InlineData("--step", "-1mm")]
    public void What_cannot_be_meant_so_is_refused(string option, string written) =>
        Assert.Equal(ExitStatus.Usage, work.Run("nudge", "a.grove", $"{option}={written}").Status);

    private static JsonSchema Schema() => JsonSchema.FromText(File.ReadAllText(Project.Path("docs/nudge.schema.json")));

    private static JsonElement Parse(string json) => JsonDocument.Parse(json).RootElement;

    private static string Flowing(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
