using System.Text.Json.Nodes;
using Xunit;

namespace GroveSpec.LanguageServer.Tests;

public sealed class RefreshTests
{
    private const string User = "planting \"A\"\nuse \"roles.grove\"\ntrunk A at 0, 0 mm diameter 20 mm height 200 mm role main\n";
    private static readonly string[] Methods = ["workspace/diagnostic/refresh", "workspace/semanticTokens/refresh", "workspace/inlayHint/refresh", "workspace/codeLens/refresh"];

    private static JsonObject Refreshable => JsonNode.Parse("""
        { "workspace": { "diagnostics": { "refreshSupport": true }, "semanticTokens": { "refreshSupport": true }, "inlayHint": { "refreshSupport": true }, "codeLens": { "refreshSupport": true } } }
        """)!.AsObject();

    [Fact]
    public async Task An_editor_is_asked_to_ask_again_when_a_used_file_changes_in_it()
    {
        using var folder = new ScratchFolder();
        var roles = folder.Write("roles.grove", "role main { form stout }\n");
        var planting = folder.Write("a.grove", User);
        await using var editor = await EditorStandIn.StartAsync(Refreshable, folder.Path);
        await editor.OpenAsync(planting, User);
        await editor.OpenAsync(roles, "role other { form stout }\n");

        Assert.Equal(Methods.Order(), Methods.Select(_ => Refresh(editor)).Order());
    }

    [Fact]
    public async Task An_editor_is_asked_to_ask_again_when_a_planting_changes_on_the_disk()
    {
        using var folder = new ScratchFolder();
        var planting = folder.Write("a.grove", User);
        await using var editor = await EditorStandIn.StartAsync(Refreshable, folder.Path);
        await editor.TellAsync("workspace/didChangeWatchedFiles", new JsonObject { ["changes"] = new JsonArray(new JsonObject { ["uri"] = planting, ["type"] = 2 }) });

        Assert.Equal(Methods.Order(), Methods.Select(_ => Refresh(editor)).Order());
    }

    [Fact]
    public async Task While_one_such_request_is_under_way_the_next_ones_are_joined_into_one()
    {
        using var folder = new ScratchFolder();
        var roles = folder.Write("roles.grove", "role main { form stout }\n");
        var planting = folder.Write("a.grove", User);
        var held = new TaskCompletionSource<JsonNode?>(TaskCreationOptions.RunContinuationsAsynchronously);
        var count = 0;
        await using var editor = await EditorStandIn.StartAsync(
            JsonNode.Parse("""{ "workspace": { "codeLens": { "refreshSupport": true } } }""")!.AsObject(),
            folder.Path,
            answering: asked => (string?)asked["method"] == "workspace/codeLens/refresh" && Interlocked.Increment(ref count) == 1 ? held.Task : Task.FromResult<JsonNode?>(null));
        await editor.OpenAsync(planting, User);
        await editor.OpenAsync(roles, "role other { form stout }\n");
        Refresh(editor);
        for (var version = 2; version <= 50; version++)
        {
            await editor.ReplaceAsync(roles, $"role other{version} {{ form stout }}\n", version);
        }

        // All fifty texts are taken in once this is answered.
        await editor.AskAsync("textDocument/documentSymbol", new JsonObject { ["textDocument"] = new JsonObject { ["uri"] = roles } });
        Assert.Equal(1, count);
        held.SetResult(null);
        Refresh(editor);
        await editor.LeaveAsync();
        await editor.Ended;

        Assert.Equal(2, count);
    }

    [Fact]
    public async Task An_editor_that_takes_no_such_requests_is_sent_none_and_one_whose_planting_uses_nothing_neither()
    {
        using var folder = new ScratchFolder();
        var roles = folder.Write("roles.grove", "role main { form stout }\n");
        var planting = folder.Write("a.grove", User);
        await using (var editor = await EditorStandIn.StartAsync(folder: folder.Path))
        {
            await editor.OpenAsync(planting, User);
            await editor.OpenAsync(roles, "role other { form stout }\n");
            await editor.LeaveAsync();
            await editor.Ended;
            Assert.DoesNotContain(editor.Rest(), message => ((string?)message["method"])!.EndsWith("/refresh", StringComparison.Ordinal));
        }

        await using var alone = await EditorStandIn.StartAsync(Refreshable, folder.Path);
        await alone.OpenAsync(planting, "planting \"A\"\n");
        await alone.ReplaceAsync(planting, "planting \"B\"\n", 2);
        await alone.LeaveAsync();
        await alone.Ended;
        Assert.DoesNotContain(alone.Rest(), message => ((string?)message["method"])!.EndsWith("/refresh", StringComparison.Ordinal));
    }

    private static string Refresh(EditorStandIn editor)
    {
        while (true)
        {
            if ((string)editor.NextOfAll()["method"]! is var method && method.EndsWith("/refresh", StringComparison.Ordinal))
            {
                return method;
            }
        }
    }
}
