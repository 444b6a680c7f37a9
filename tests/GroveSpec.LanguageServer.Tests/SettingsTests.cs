using System.Text.Json.Nodes;
using Xunit;

namespace GroveSpec.LanguageServer.Tests;

public sealed class SettingsTests
{
    private const string Planting = "planting \"A\"\ntrunk A at 0, 0 mm girth 63 mm height 200 mm\n";

    private static JsonObject Askable => JsonNode.Parse("""{ "workspace": { "configuration": true, "didChangeConfiguration": { "dynamicRegistration": true }, "inlayHint": { "refreshSupport": true } } }""")!.AsObject();

    [Fact]
    public async Task Each_folder_has_its_own_settings_and_the_innermost_holds()
    {
        using var folder = new ScratchFolder();
        var outer = folder.Write("bench/a.grove", Planting);
        var inner = folder.Write("bench/north/b.grove", Planting);
        var beside = folder.Write("bench-two/c.grove", Planting);
        await using var editor = await StartAsync(folder, Inches("bench"), Inches("nowhere"));

        editor.Next("workspace/inlayHint/refresh");
        Assert.Contains(" in", await HintAsync(editor, outer));
        Assert.Contains(" mm", await HintAsync(editor, inner));
        Assert.Contains(" mm", await HintAsync(editor, beside));

        async Task<EditorStandIn> StartAsync(ScratchFolder scratch, params Func<string, bool>[] inInches)
        {
            var started = new EditorStandIn
            {
                Answering = asked => Task.FromResult<JsonNode?>((string?)asked["method"] == "workspace/configuration"
                    ? new JsonArray([.. asked["params"]!["items"]!.AsArray().Select(item => (JsonNode)new JsonObject { ["units"] = inInches.Any(isInch => isInch((string?)item!["scopeUri"] ?? "")) ? "inch" : "metric" })])
                    : null),
            };
            // The documents are open before the settings are known, so that they have to be looked at again.
            await started.AskAsync("initialize", new JsonObject
            {
                ["processId"] = null,
                ["capabilities"] = Askable,
                ["workspaceFolders"] = new JsonArray(Folder(scratch, "bench"), Folder(scratch, "bench/north")),
            });
            foreach (var uri in new[] { outer, inner, beside })
            {
                await started.OpenAsync(uri, Planting);
            }

            await started.TellAsync("initialized", new JsonObject());
            return started;
        }
    }

    [Fact]
    public async Task Settings_are_asked_for_again_when_they_change_and_when_a_folder_comes()
    {
        using var folder = new ScratchFolder();
        var planting = folder.Write("late/a.grove", Planting);
        var units = "metric";
        await using var editor = await EditorStandIn.StartAsync(Askable, answering: asked => Task.FromResult(Answer(asked, () => units)));
        editor.Next("workspace/configuration");
        await editor.OpenAsync(planting, Planting);
        Assert.Contains(" mm", await HintAsync(editor, planting));

        units = "inch";
        await editor.TellAsync("workspace/didChangeConfiguration", new JsonObject { ["settings"] = null });
        editor.Next("workspace/inlayHint/refresh");
        Assert.Contains(" in", await HintAsync(editor, planting));

        units = "metric";
        await editor.TellAsync("workspace/didChangeWorkspaceFolders", new JsonObject { ["event"] = new JsonObject { ["added"] = new JsonArray(Folder(folder, "late")), ["removed"] = new JsonArray() } });
        editor.Next("workspace/inlayHint/refresh");
        Assert.Contains(" mm", await HintAsync(editor, planting));
    }

    [Fact]
    public async Task An_answer_about_older_settings_that_comes_late_changes_nothing()
    {
        var first = new TaskCompletionSource<JsonNode?>(TaskCreationOptions.RunContinuationsAsynchronously);
        var count = 0;
        await using var editor = await EditorStandIn.StartAsync(Askable, answering: asked =>
            (string?)asked["method"] != "workspace/configuration" ? Task.FromResult<JsonNode?>(null)
            : Interlocked.Increment(ref count) == 1 ? first.Task
            : Task.FromResult(Answer(asked, () => "inch")));
        await editor.OpenAsync("untitled:one", Planting);
        await editor.TellAsync("workspace/didChangeConfiguration", new JsonObject { ["settings"] = null });
        editor.Next("workspace/inlayHint/refresh");

        first.SetResult(new JsonArray(new JsonObject { ["units"] = "metric" }));

        // The late answer was read before this question, for it was sent before.
        Assert.Contains(" in", await HintAsync(editor, "untitled:one"));
    }

    [Theory]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("[null]")]
    [InlineData("[1, 2, 3]")]
    [InlineData("{}")]
    public async Task An_editor_that_answers_nothing_of_use_leaves_what_it_said_at_the_beginning(string answer)
    {
        await using var editor = await EditorStandIn.StartAsync(Askable, options: new JsonObject { ["units"] = "inch" }, answering: _ => Task.FromResult(JsonNode.Parse(answer)));
        editor.Next("workspace/configuration");
        await editor.OpenAsync("untitled:one", Planting);

        Assert.Contains(" in", await HintAsync(editor, "untitled:one"));
    }

    [Fact]
    public async Task An_edit_that_comes_while_settings_change_is_never_lost()
    {
        var count = 0;
        await using var editor = await EditorStandIn.StartAsync(Askable, answering: asked => Task.FromResult(Answer(asked, () => Interlocked.Increment(ref count) % 2 == 0 ? "inch" : "metric")));
        await editor.OpenAsync("untitled:one", Planting);
        for (var version = 2; version <= 200; version++)
        {
            await editor.TellAsync("workspace/didChangeConfiguration", new JsonObject { ["settings"] = null });
            await editor.TellAsync("textDocument/didChange", new JsonObject
            {
                ["textDocument"] = new JsonObject { ["uri"] = "untitled:one", ["version"] = version },
                ["contentChanges"] = new JsonArray(new JsonObject { ["text"] = "#\n", ["range"] = JsonNode.Parse("""{ "start": { "line": 0, "character": 0 }, "end": { "line": 0, "character": 0 } }""") }),
            });
        }

        // Settings that come in this moment make the answer one to be asked again.
        JsonObject answer;
        do
        {
            answer = await editor.AnswerAsync("textDocument/documentSymbol", new JsonObject { ["textDocument"] = new JsonObject { ["uri"] = "untitled:one" } });
        }
        while ((int?)answer["error"]?["code"] == -32801);

        Assert.Equal(199, (int)answer["result"]![0]!["location"]!["range"]!["start"]!["line"]!);
    }

    [Fact]
    public async Task An_editor_that_tells_of_settings_only_when_asked_is_asked()
    {
        await using var editor = await EditorStandIn.StartAsync(Askable);

        Assert.Equal("workspace/didChangeConfiguration", (string?)editor.Next("client/registerCapability")["params"]!["registrations"]![0]!["method"]);
    }

    private static JsonNode? Answer(JsonObject asked, Func<string> units) => (string?)asked["method"] == "workspace/configuration"
        ? new JsonArray([.. asked["params"]!["items"]!.AsArray().Select(_ => (JsonNode)new JsonObject { ["units"] = units() })])
        : null;

    private static Func<string, bool> Inches(string folder) => uri => uri.EndsWith("/" + folder, StringComparison.Ordinal);

    private static JsonObject Folder(ScratchFolder scratch, string name) => new() { ["uri"] = scratch.UriOf(name), ["name"] = name };

    private static async Task<string> HintAsync(EditorStandIn editor, string uri)
    {
        var hints = await editor.AskAsync("textDocument/inlayHint", new JsonObject { ["textDocument"] = new JsonObject { ["uri"] = uri }, ["range"] = JsonNode.Parse("""{ "start": { "line": 0, "character": 0 }, "end": { "line": 9, "character": 0 } }""") });
        return (string)hints!.AsArray().First()!["label"]!;
    }
}
