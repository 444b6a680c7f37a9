using System.Globalization;
using System.Text.Json.Nodes;
using Xunit;

namespace GroveSpec.LanguageServer.Tests;

/// <summary>What there is to decide, as an editor asks for it.</summary>
public sealed class DecideTests : IAsyncLifetime
{
    private const string Text = """
        planting "Row 🌲 House"
        habit group
        species larix-kaempferi
        container oval 400 x 300 x 40 mm
        viewed from 180 deg, at 1100 mm, eye 160 mm, near

        trunk A at -60, 0 mm diameter 30 mm height 400 mm role main
        trunk B at 0, 2 mm diameter 14 mm height 220 mm
        trunk C at 71, 0 mm diameter 21 mm height 290 mm
        trunk D at 12, 64 mm diameter 10 mm height 160 mm
        trunk E diameter 7 mm height 110 mm
        tape E to A 80 mm
        tape E to B 70 mm
        tape E to D 133.1 mm

        role main { rank 1 }
        measured 2026-10-30 {
          A diameter 30 mm
        }
        """;

    private readonly ScratchFolder folder = new();
    private EditorStandIn editor = null!;
    private string uri = "";

    public async ValueTask InitializeAsync()
    {
        uri = folder.Write("a.grove", Text);
        editor = await EditorStandIn.StartAsync([], folder.Path);
        await editor.OpenAsync(uri, Text);
    }

    public async ValueTask DisposeAsync()
    {
        await editor.DisposeAsync();
        folder.Dispose();
    }

    [Theory]
    [InlineData("thin")]
    [InlineData("fronts")]
    [InlineData("nudge")]
    [InlineData("ground")]
    [InlineData("survey")]
    [InlineData("stand")]
    public async Task Every_question_is_answered_with_a_picture_and_sentences(string question)
    {
        var sheet = await DecideAsync(question);

        Assert.Equal(1, (int)sheet["version"]!);
        Assert.Equal("Row 🌲 House", (string?)sheet["title"]);
        var pictures = sheet["ways"]!.AsArray().Select(way => (string?)way!["picture"]).Append((string?)sheet["picture"]).OfType<string>().ToList();
        Assert.NotEmpty(pictures);
        Assert.All(pictures, picture => Assert.StartsWith("<svg ", picture, StringComparison.Ordinal));
        Assert.NotEmpty(sheet["says"]!.AsArray().Concat(sheet["ways"]!.AsArray().SelectMany(way => way!["says"]!.AsArray())));
        Assert.All(sheet["ways"]!.AsArray(), way => Assert.False(string.IsNullOrWhiteSpace((string?)way!["title"])));
    }

    [Theory]
    [InlineData("thin", "removed 2026-10-30")]
    [InlineData("fronts", "deg")]
    [InlineData("nudge", "at ")]
    [InlineData("ground", "trunk F")]
    [InlineData("survey", "at ")]
    public async Task A_choice_that_is_written_is_a_change_of_the_text_that_raises_no_error(string question, string written)
    {
        var way = (await DecideAsync(question))["ways"]!.AsArray().First(one => one!["edits"]!.AsArray().Count > 0)!;

        Assert.Contains(written, string.Join('\n', way["edits"]!.AsArray().Select(edit => (string?)edit!["newText"])), StringComparison.Ordinal);
        var changed = Apply(way["edits"]!.AsArray());
        Assert.NotEqual(Text, changed);
        await editor.ReplaceAsync(uri, changed, 2);
        var errors = editor.Findings(uri, 2)["diagnostics"]!.AsArray().Where(found => (int)found!["severity"]! == 1);
        Assert.Empty(errors.Select(found => (string?)found!["message"]));
    }

    [Fact]
    public async Task What_was_written_into_a_field_counts_and_comes_back()
    {
        var sheet = await DecideAsync("thin", ("keep", " 3 - 4 "), ("with", "B, D"), ("without", "C"), ("on", "2027-03-01"));

        Assert.Equal(["3 - 4", "B, D", "C", "2027-03-01"], sheet["fields"]!.AsArray().Select(field => (string?)field!["value"]));
        Assert.All(sheet["fields"]!.AsArray(), field => Assert.Null(field!["trouble"]));
        Assert.All(sheet["ways"]!.AsArray(), way => Assert.DoesNotContain(Edited(way!), name => name is "B" or "D"));
        Assert.All(sheet["ways"]!.AsArray(), way => Assert.All(way!["edits"]!.AsArray(), edit => Assert.Contains("removed 2027-03-01", (string?)edit!["newText"], StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("thin", "keep", "some")]
    [InlineData("thin", "keep", "0")]
    [InlineData("thin", "keep", "5-3")]
    [InlineData("thin", "on", "2027-02-30")]
    [InlineData("nudge", "reach", "-3 mm")]
    [InlineData("nudge", "reach", "5 deg")]
    [InlineData("ground", "diameter", "")]
    [InlineData("ground", "height", "tall")]
    public async Task What_cannot_be_understood_is_said_at_its_field_and_the_usual_holds(string question, string field, string written)
    {
        var sheet = await DecideAsync(question, (field, written));

        var told = sheet["fields"]!.AsArray().Single(one => (string?)one!["name"] == field)!;
        Assert.Equal(written, (string?)told["value"]);
        Assert.StartsWith("This needs ", (string?)told["trouble"], StringComparison.Ordinal);
        Assert.NotEmpty(sheet["ways"]!.AsArray());
    }

    [Theory]
    [InlineData("diameter", "40 mm", "height")]
    [InlineData("height", "60 mm", "diameter")]
    public async Task Of_one_more_trunk_the_size_that_was_not_written_follows_the_one_that_was(string written, string value, string follows)
    {
        var (first, then) = (Size(await DecideAsync("ground"), follows), Size(await DecideAsync("ground", (written, value)), follows));
        Assert.True(written == "diameter" ? then > first : then < first, $"{follows} {first} mm, then {then} mm");

        // What was written stays as it was written.
        var both = await DecideAsync("ground", (written, value), (follows, "77 mm"));
        Assert.Equal(77, Size(both, follows));
        Assert.Equal(double.Parse(value[..^3], CultureInfo.InvariantCulture), Size(both, written));

        static double Size(JsonNode sheet, string field) => double.Parse(((string)sheet["fields"]!.AsArray().Single(one => (string?)one!["name"] == field)!["value"]!)[..^3], CultureInfo.InvariantCulture);
    }

    [Fact]
    public async Task The_picture_of_ground_for_a_trunk_that_stands_shows_where_it_stands_now()
    {
        var picture = (string)(await DecideAsync("ground", ("of", "C")))["picture"]!;
        Assert.Contains("C, now</text>", picture, StringComparison.Ordinal);
        Assert.Contains("class=\"gs-was\"", picture, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"gs-was\"", (string)(await DecideAsync("ground"))["picture"]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_name_that_is_no_trunk_is_a_sentence_and_not_an_end()
    {
        Assert.Contains("Zed", (string?)(await DecideAsync("ground", ("of", "Zed")))["says"]![0], StringComparison.Ordinal);
        Assert.Contains("Zed", (string?)(await DecideAsync("thin", ("with", "Zed")))["says"]![0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task There_is_no_other_question()
    {
        var refused = await editor.RefusedAsync("grovespec/decide", Asked("prune"));
        Assert.Equal(-32602, (int)refused["code"]!);
    }

    [Fact]
    public async Task Nothing_stands_in_an_empty_planting_and_that_is_said()
    {
        await editor.ReplaceAsync(uri, "planting \"Bare\"\n", 2);
        foreach (var question in (string[])["thin", "fronts", "nudge", "ground", "survey", "stand"])
        {
            var sheet = await DecideAsync(question);
            Assert.True(sheet["says"]!.AsArray().Count > 0 || sheet["ways"]!.AsArray().Count > 0, question);
        }
    }

    [Fact]
    public async Task What_a_picture_shows_leads_to_its_line_and_two_pictures_share_no_id()
    {
        var sheet = await DecideAsync("fronts");

        Assert.Contains(sheet["places"]!.AsArray(), place => (string?)place!["origin"] == "trunk:A" && Slice(place["selection"]!) == "A");
        var ids = sheet["ways"]!.AsArray().Select(way => (string)way!["picture"]!).Append((string)sheet["picture"]!)
            .Select(svg => System.Xml.Linq.XDocument.Parse(svg).Descendants().Select(part => (string?)part.Attribute("id")).OfType<string>().ToHashSet()).ToList();
        Assert.Equal(ids.Sum(one => one.Count), ids.SelectMany(one => one).Distinct().Count());
    }

    private static IEnumerable<string> Edited(JsonNode way) =>
        way["edits"]!.AsArray().Select(edit => Text.Split('\n')[(int)edit!["range"]!["start"]!["line"]!].Split(' ')[1]);

    private async Task<JsonNode> DecideAsync(string question, params (string Name, string Written)[] answers) =>
        (await editor.AskAsync("grovespec/decide", Asked(question, answers)))!;

    private JsonObject Asked(string question, params (string Name, string Written)[] answers)
    {
        var asked = new JsonObject { ["textDocument"] = new JsonObject { ["uri"] = uri }, ["question"] = question };
        if (answers.Length > 0)
        {
            asked["answers"] = new JsonObject(answers.Select(one => KeyValuePair.Create(one.Name, (JsonNode?)one.Written)));
        }

        return asked;
    }

    private static int OffsetOf(JsonNode position) => Text.Split('\n').Take((int)position["line"]!).Sum(line => line.Length + 1) + (int)position["character"]!;

    private static string Slice(JsonNode range) => Text[OffsetOf(range["start"]!)..OffsetOf(range["end"]!)];

    private static string Apply(JsonArray edits)
    {
        var changed = Text;
        foreach (var edit in edits.OrderByDescending(edit => OffsetOf(edit!["range"]!["start"]!)))
        {
            changed = changed[..OffsetOf(edit!["range"]!["start"]!)] + (string)edit["newText"]! + changed[OffsetOf(edit["range"]!["end"]!)..];
        }

        return changed;
    }
}
