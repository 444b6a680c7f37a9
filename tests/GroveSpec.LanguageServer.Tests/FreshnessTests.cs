using System.Text.Json.Nodes;
using CsCheck;
using Xunit;

namespace GroveSpec.LanguageServer.Tests;

public sealed class FreshnessTests
{
    private const string Uri = "file:///plantings/a.grove";

    private static readonly string[] Lines =
    [
        "planting \"Ærø 🌲\"\n", "habit group\n", "species larix-kaempferi\n", "container oval 420 x 300 x 40 mm\n",
        "trunk A at 0, 0 mm diameter 20 mm height 200 mm\n", "trunk B at 40, 0 mm girth 60 mm height 180 mm role main\n", "trunk C at 80, 1 mm diameter 12 mm height 300 mm\n",
        "role main { form stout vigour push }\n", "task W1 wire on A B in late autumn 2026 with aluminium 2 mm\n", "measured 2026-10-30 {\n  A diameter 21 mm\n}\n",
        "accept three-in-line A B C because \"so\"\n", "# 🌳🌳 a note\n", "tape A to B 40 mm\n", "nonsense {\n", "}\n", "\n", "trunk É at 1, 2 mm\n",
    ];

    [Fact]
    public async Task Findings_carry_the_version_they_belong_to_and_an_older_one_is_never_sent_after_a_newer()
    {
        await using var editor = await EditorStandIn.StartAsync();
        await editor.OpenAsync(Uri, "planting \"A\"\n");
        for (var version = 2; version <= 200; version++)
        {
            await editor.ReplaceAsync(Uri, string.Concat(Enumerable.Repeat($"nonsense {version}\n", version % 7)), version);
        }

        var last = 0;
        while (last < 200)
        {
            var found = editor.Findings(Uri, 0);
            var version = (int)found["version"]!;
            Assert.True(version >= last);
            last = version;
            if (version == 200)
            {
                Assert.Equal(200 % 7, found["diagnostics"]!.AsArray().Count(one => (int)one!["severity"]! == 1));
            }
        }
    }

    [Fact]
    public async Task Closing_takes_the_findings_back()
    {
        await using var editor = await EditorStandIn.StartAsync();
        await editor.OpenAsync(Uri, "nonsense\n");
        Assert.NotEmpty(editor.Findings(Uri, 1)["diagnostics"]!.AsArray());

        await editor.TellAsync("textDocument/didClose", new JsonObject { ["textDocument"] = new JsonObject { ["uri"] = Uri } });

        Assert.Empty(editor.Findings(Uri, 1)["diagnostics"]!.AsArray());
    }

    [Fact]
    public async Task Unsaved_text_of_a_used_file_wins_over_the_disk_and_its_users_are_looked_at_again()
    {
        using var folder = new ScratchFolder();
        folder.Write("roles.grove", "role main { form stout }\n");
        var planting = folder.Write("a.grove", "planting \"A\"\nuse \"roles.grove\"\ntrunk A at 0, 0 mm diameter 20 mm height 200 mm role main\n");
        await using var editor = await EditorStandIn.StartAsync(folder: folder.Path);
        await editor.OpenAsync(planting, folder.Read("a.grove"));
        Assert.DoesNotContain(editor.Findings(planting, 1)["diagnostics"]!.AsArray(), one => (string?)one!["code"] == "unknown-name");

        await editor.OpenAsync(folder.UriOf("roles.grove"), "role other { form stout }\n");

        Assert.Contains(editor.Findings(planting, 1)["diagnostics"]!.AsArray(), one => (string?)one!["code"] == "unknown-name");

        await editor.TellAsync("textDocument/didClose", new JsonObject { ["textDocument"] = new JsonObject { ["uri"] = folder.UriOf("roles.grove") } });

        Assert.DoesNotContain(editor.Findings(planting, 1)["diagnostics"]!.AsArray(), one => (string?)one!["code"] == "unknown-name");
    }

    [Fact]
    public async Task A_used_file_that_appears_on_the_disk_clears_the_finding_that_it_is_missing()
    {
        using var folder = new ScratchFolder();
        var planting = folder.Write("a.grove", "planting \"A\"\nuse \"roles.grove\"\ntrunk A at 0, 0 mm diameter 20 mm height 200 mm role main\n");
        await using var editor = await EditorStandIn.StartAsync(folder: folder.Path);
        await editor.OpenAsync(planting, folder.Read("a.grove"));
        var before = editor.Findings(planting, 1)["diagnostics"]!.AsArray().Count(one => (int)one!["severity"]! == 1);

        folder.Write("roles.grove", "role main { form stout }\n");
        await editor.TellAsync("workspace/didChangeWatchedFiles", new JsonObject { ["changes"] = new JsonArray(new JsonObject { ["uri"] = folder.UriOf("roles.grove"), ["type"] = 1 }) });

        Assert.True(editor.Findings(planting, 1)["diagnostics"]!.AsArray().Count(one => (int)one!["severity"]! == 1) < before);
    }

    [Fact]
    public async Task A_used_file_that_is_moved_on_the_disk_is_missed_and_found_again_where_the_text_names_it()
    {
        using var folder = new ScratchFolder();
        folder.Write("roles.grove", "role main { form stout }\n");
        var planting = folder.Write("a.grove", "planting \"A\"\nuse \"roles.grove\"\ntrunk A at 0, 0 mm diameter 20 mm height 200 mm role main\n");
        await using var editor = await EditorStandIn.StartAsync(folder: folder.Path);
        await editor.OpenAsync(planting, folder.Read("a.grove"));
        Assert.Empty(Errors(editor.Findings(planting, 1)));

        Directory.CreateDirectory(Path.Combine(folder.Path, "club"));
        File.Move(Path.Combine(folder.Path, "roles.grove"), Path.Combine(folder.Path, "club", "roles.grove"));
        await editor.TellAsync("workspace/didChangeWatchedFiles", new JsonObject
        {
            ["changes"] = new JsonArray(new JsonObject { ["uri"] = folder.UriOf("roles.grove"), ["type"] = 3 }, new JsonObject { ["uri"] = folder.UriOf("club/roles.grove"), ["type"] = 1 }),
        });
        Assert.NotEmpty(Errors(editor.Findings(planting, 1)));

        await editor.ReplaceAsync(planting, folder.Read("a.grove").Replace("roles.grove", "club/roles.grove", StringComparison.Ordinal), 2);
        Assert.Empty(Errors(editor.Findings(planting, 2)));

        static IEnumerable<JsonNode?> Errors(JsonObject found) => found["diagnostics"]!.AsArray().Where(one => (int)one!["severity"]! == 1);
    }

    [Fact]
    public async Task A_planting_that_is_deleted_on_the_disk_is_kept_while_it_is_open_and_forgotten_when_it_is_closed()
    {
        using var folder = new ScratchFolder();
        var planting = folder.Write("a.grove", "planting \"A\"\ntrunk Meadow at 0, 0 mm\n");
        await using var editor = await EditorStandIn.StartAsync(folder: folder.Path);
        await editor.OpenAsync(planting, folder.Read("a.grove"));
        Assert.Single(await MeadowsAsync());

        File.Delete(Path.Combine(folder.Path, "a.grove"));
        await editor.TellAsync("workspace/didChangeWatchedFiles", new JsonObject { ["changes"] = new JsonArray(new JsonObject { ["uri"] = planting, ["type"] = 3 }) });
        Assert.Single(await MeadowsAsync());

        await editor.TellAsync("textDocument/didClose", new JsonObject { ["textDocument"] = new JsonObject { ["uri"] = planting } });
        Assert.Empty(await MeadowsAsync());

        async Task<JsonArray> MeadowsAsync() => (await editor.AskAsync("workspace/symbol", new JsonObject { ["query"] = "Meadow" }))!.AsArray();
    }

    [Fact]
    public async Task Changes_of_one_message_follow_one_another_even_where_a_later_one_touches_what_an_earlier_one_wrote()
    {
        await using var editor = await EditorStandIn.StartAsync();
        await editor.OpenAsync(Uri, "planting \"A\"\ntrunk A at 0, 0 mm\n");

        await editor.TellAsync("textDocument/didChange", new JsonObject
        {
            ["textDocument"] = new JsonObject { ["uri"] = Uri, ["version"] = 2 },
            ["contentChanges"] = new JsonArray(Change(1, 6, 1, 7, "Oak"), Change(1, 7, 1, 9, "ld"), Change(1, 0, 1, 9, "trunk Willow"), Change(0, 10, 0, 11, "B\"\ntrunk Y at 9, 9 mm # \"")),
        });

        Assert.Equal(["B", "Y", "Willow"], (await editor.AskAsync("textDocument/documentSymbol", LifeTests.At(Uri, 0, 0)))!.AsArray().Select(symbol => (string?)symbol!["name"]));
    }

    [Theory]
    [InlineData(10, "x🌲🌲")]
    [InlineData(11, "x🌲🌲")]
    [InlineData(12, "🌲x🌲")]
    [InlineData(13, "🌲x🌲")]
    [InlineData(14, "🌲🌲x")]
    public async Task What_is_written_within_a_character_of_two_units_stands_before_it(int character, string expected)
    {
        await using var editor = await EditorStandIn.StartAsync();
        await editor.OpenAsync(Uri, "planting \"🌲🌲\"\n");
        await editor.TellAsync("textDocument/didChange", new JsonObject
        {
            ["textDocument"] = new JsonObject { ["uri"] = Uri, ["version"] = 2 },
            ["contentChanges"] = new JsonArray(Change(0, character, 0, character, "x")),
        });

        Assert.Equal(expected, (string?)Assert.Single((await editor.AskAsync("textDocument/documentSymbol", LifeTests.At(Uri, 0, 0)))!.AsArray())!["name"]);
    }

    private static JsonObject Change(int line, int character, int toLine, int toCharacter, string text) => new()
    {
        ["range"] = new JsonObject { ["start"] = new JsonObject { ["line"] = line, ["character"] = character }, ["end"] = new JsonObject { ["line"] = toLine, ["character"] = toCharacter } },
        ["text"] = text,
    };

    [Fact]
    public void After_any_edits_text_findings_symbols_and_tokens_are_those_of_a_fresh_server() =>
        Gen.Select(Gen.Int[0, 17].Array[1, 25], Gen.Select(Gen.Int[0, 1000], Gen.Int[0, 1000], Gen.Int[0, 17], Gen.Bool).Array[1, 60], Gen.Bool).Sample(
            (start, edits, isUtf8) => CompareAsync(start, edits, isUtf8).GetAwaiter().GetResult(),
            iter: 340,
            threads: 1);

    private static async Task CompareAsync(int[] start, (int From, int Length, int Line, bool IsOverlong)[] edits, bool isUtf8)
    {
        JsonObject Able() => new() { ["general"] = new JsonObject { ["positionEncodings"] = new JsonArray(isUtf8 ? "utf-8" : "utf-16") } };
        var text = string.Concat(start.Select(Line));
        await using var editor = await EditorStandIn.StartAsync(Able());
        await editor.OpenAsync(Uri, text);
        var version = 1;
        foreach (var (from, length, line, isOverlong) in edits)
        {
            var (first, second) = (Whole(text, from), Whole(text, from + (length % 40)));
            var put = line == 17 ? "" : Line(line);
            await editor.TellAsync("textDocument/didChange", new JsonObject
            {
                ["textDocument"] = new JsonObject { ["uri"] = Uri, ["version"] = ++version },
                ["contentChanges"] = new JsonArray(new JsonObject { ["range"] = new JsonObject { ["start"] = Position(text, first, isUtf8, false), ["end"] = Position(text, second, isUtf8, isOverlong && second == text.Length) }, ["text"] = put }),
            });
            text = string.Concat(text.AsSpan(0, first), put, text.AsSpan(second));
        }

        await using var fresh = await EditorStandIn.StartAsync(Able());
        await fresh.OpenAsync(Uri, text, version);
        foreach (var method in new[] { "textDocument/diagnostic", "textDocument/documentSymbol", "textDocument/semanticTokens/full", "textDocument/codeLens" })
        {
            var parameters = new JsonObject { ["textDocument"] = new JsonObject { ["uri"] = Uri } };
            Assert.Equal(Bare(await fresh.AskAsync(method, parameters)), Bare(await editor.AskAsync(method, parameters)));
        }
    }

    private static string Line(int line) => line < Lines.Length ? Lines[line] : "";

    private static string Bare(JsonNode? answer)
    {
        (answer as JsonObject)?.Remove("resultId");
        return answer?.ToJsonString() ?? "";
    }

    private static int Whole(string text, int place)
    {
        place = Math.Min(place, text.Length);
        return place > 0 && place < text.Length && char.IsLowSurrogate(text[place]) ? place - 1 : place;
    }

    /// <summary>Counts lines and characters in its own way, to hold the server's against it.</summary>
    private static JsonObject Position(string text, int place, bool isUtf8, bool isOverlong)
    {
        var before = text[..place];
        var line = before.Split('\n');
        var character = isUtf8 ? System.Text.Encoding.UTF8.GetByteCount(line[^1]) : line[^1].Length;
        return new() { ["line"] = line.Length - 1 + (isOverlong ? 5 : 0), ["character"] = character + (isOverlong ? 900 : 0) };
    }
}
