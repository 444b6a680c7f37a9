using System.Text.Json.Nodes;
using Xunit;

namespace GroveSpec.LanguageServer.Tests;

/// <summary>Editors that can do little: the protocol gives each of them another shape of the same answer.</summary>
public sealed class PlainEditorTests : IAsyncLifetime
{
    private const string Uri = "file:///plantings/a.grove";

    private const string Text = """
        planting "Row House"
        habbit group
        container ovl 400 x 300 x 40 mm
        trunk A at -60, 0 mm diameter 20 mm height 300 mm
        trunk B at 0, 2 mm girth 44 mm height 220 mm
        trunk C at 70, 0 mm diameter 16 mm height 180 mm removed 2026-03-01
        measured 2026-10-30 {
          A diameter 21 mm
        }

        """;

    private EditorStandIn editor = null!;

    public async ValueTask InitializeAsync()
    {
        editor = await EditorStandIn.StartAsync();
        await editor.OpenAsync(Uri, Text);
    }

    public ValueTask DisposeAsync() => editor.DisposeAsync();

    [Fact]
    public async Task An_editor_without_snippets_is_offered_the_same_statements_as_plain_text()
    {
        var at = LifeTests.At(Uri, 9, 0);
        var plain = (await editor.AskAsync("textDocument/completion", at))!["items"]!.AsArray();

        await using var rich = await EditorStandIn.StartAsync(new JsonObject { ["textDocument"] = new JsonObject { ["completion"] = new JsonObject { ["completionItem"] = new JsonObject { ["snippetSupport"] = true } } } });
        await rich.OpenAsync(Uri, Text);
        var withPlaces = (await rich.AskAsync("textDocument/completion", at))!["items"]!.AsArray();

        Assert.Equal(withPlaces.Select(Label), plain.Select(Label));
        Assert.Contains(withPlaces, item => (int?)item!["insertTextFormat"] == 2);
        Assert.All(plain, item =>
        {
            Assert.NotEqual(2, (int?)item!["insertTextFormat"]);
            Assert.DoesNotContain('$', (string)item["textEdit"]!["newText"]!);
        });
        Assert.StartsWith("trunk D at", (string)plain.Single(item => Label(item)!.StartsWith("trunk", StringComparison.Ordinal))!["textEdit"]!["newText"]!, StringComparison.Ordinal);

        static string? Label(JsonNode? item) => (string?)item!["label"];
    }

    [Fact]
    public async Task An_editor_that_shows_no_tree_is_sent_the_outline_as_a_list()
    {
        var list = (await editor.AskAsync("textDocument/documentSymbol", LifeTests.At(Uri, 0, 0)))!.AsArray();

        Assert.Equal(["Row House", "A", "B", "C", "measured 2026-10-30", "A"], list.Select(symbol => (string?)symbol!["name"]));
        Assert.All(list, symbol =>
        {
            Assert.Equal(Uri, (string?)symbol!["location"]!["uri"]);
            Assert.Null(symbol["children"]);
            Assert.Null(symbol["selectionRange"]);
        });
        Assert.Equal("measured 2026-10-30", (string?)list[^1]!["containerName"]);
        Assert.Null(list[1]!["containerName"]);
        Assert.Equal([1], list[3]!["tags"]!.AsArray().Select(tag => (int)tag!));
        Assert.Equal(7, (int)list[^1]!["location"]!["range"]!["start"]!["line"]!);
    }

    [Fact]
    public async Task An_editor_without_versions_of_edits_is_sent_them_by_document()
    {
        var asked = LifeTests.At(Uri, 3, 6);
        asked["newName"] = "Q";
        var edit = (await editor.AskAsync("textDocument/rename", asked))!;

        Assert.Null(edit["documentChanges"]);
        var changed = Assert.Single(edit["changes"]!.AsObject());
        Assert.Equal(Uri, changed.Key);
        Assert.Equal([(3, 6), (7, 2)], changed.Value!.AsArray().Select(one => ((int)one!["range"]!["start"]!["line"]!, (int)one["range"]!["start"]!["character"]!)).Order());
    }

    [Fact]
    public async Task All_that_can_only_mean_one_thing_is_mended_at_once_and_only_when_it_is_asked_for()
    {
        var unasked = (await editor.AskAsync("textDocument/codeAction", Actions()))!.AsArray();
        Assert.DoesNotContain(unasked, action => (string?)action!["kind"] == "source.fixAll");

        var action = Assert.Single((await editor.AskAsync("textDocument/codeAction", Actions("source.fixAll")))!.AsArray())!;
        Assert.Equal("source.fixAll", (string?)action["kind"]);
        var edits = Assert.Single(action["edit"]!["changes"]!.AsObject()).Value!.AsArray();
        Assert.Equal(["habit", "oval"], edits.Select(edit => (string?)edit!["newText"]).Order(StringComparer.Ordinal));
        Assert.Empty((await editor.AskAsync("textDocument/codeAction", Actions("refactor")))!.AsArray());

        // Sent back one after another, from the last to the first, they leave nothing to mend.
        var changes = new JsonArray([.. edits.OrderByDescending(edit => (int)edit!["range"]!["start"]!["line"]!).Select(edit => new JsonObject { ["range"] = edit!["range"]!.DeepClone(), ["text"] = (string?)edit["newText"] })]);
        await editor.TellAsync("textDocument/didChange", new JsonObject { ["textDocument"] = new JsonObject { ["uri"] = Uri, ["version"] = 2 }, ["contentChanges"] = changes });
        Assert.DoesNotContain(editor.Findings(Uri, 2)["diagnostics"]!.AsArray(), one => (int)one!["severity"]! == 1);
        Assert.Empty((await editor.AskAsync("textDocument/codeAction", Actions("source.fixAll")))!.AsArray());
    }

    private static JsonObject Actions(params string[] only) => new()
    {
        ["textDocument"] = new JsonObject { ["uri"] = Uri },
        ["range"] = new JsonObject { ["start"] = new JsonObject { ["line"] = 0, ["character"] = 0 }, ["end"] = new JsonObject { ["line"] = 9, ["character"] = 0 } },
        ["context"] = only.Length == 0
            ? new JsonObject { ["diagnostics"] = new JsonArray() }
            : new JsonObject { ["diagnostics"] = new JsonArray(), ["only"] = new JsonArray([.. only.Select(kind => JsonValue.Create(kind))]) },
    };
}
