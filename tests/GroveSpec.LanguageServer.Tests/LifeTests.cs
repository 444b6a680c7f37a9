using System.Text;
using System.Text.Json.Nodes;
using Xunit;

namespace GroveSpec.LanguageServer.Tests;

public sealed class LifeTests
{
    private const string Uri = "file:///plantings/a.grove";

    [Fact]
    public async Task A_request_before_initialize_is_refused_and_the_server_goes_on()
    {
        await using var editor = new EditorStandIn();

        var refusal = await editor.RefusedAsync("textDocument/hover", At(Uri, 0, 0));

        Assert.Equal(-32002, (int)refusal["code"]!);
        Assert.NotNull(await editor.AskAsync("initialize", new JsonObject { ["processId"] = null, ["rootUri"] = null, ["capabilities"] = new JsonObject() }));
    }

    [Fact]
    public async Task A_request_after_shutdown_is_refused_and_exit_ends_the_server_well()
    {
        await using var editor = await EditorStandIn.StartAsync();
        await editor.AskAsync("shutdown", null);

        var refusal = await editor.RefusedAsync("textDocument/hover", At(Uri, 0, 0));
        await editor.TellAsync("exit", null);

        Assert.Equal(-32600, (int)refusal["code"]!);
        Assert.True(await editor.Ended);
    }

    [Fact]
    public async Task Exit_without_shutdown_and_a_client_that_is_gone_end_it_as_a_failure()
    {
        await using var rude = await EditorStandIn.StartAsync();
        await rude.TellAsync("exit", null);
        Assert.False(await rude.Ended);

        await using var gone = await EditorStandIn.StartAsync();
        await gone.VanishAsync();
        Assert.False(await gone.Ended);
        Assert.Empty(gone.Complaints);
    }

    [Fact]
    public async Task Initialize_a_second_time_is_refused()
    {
        await using var editor = await EditorStandIn.StartAsync();

        Assert.Equal(-32600, (int)(await editor.RefusedAsync("initialize", new JsonObject { ["processId"] = null, ["rootUri"] = null, ["capabilities"] = new JsonObject() }))["code"]!);
    }

    [Theory]
    [InlineData("{\"position\":{\"line\":0,\"character\":0}}")]
    [InlineData("{\"textDocument\":{\"uri\":7},\"position\":{\"line\":0,\"character\":0}}")]
    [InlineData("{\"textDocument\":{\"uri\":\"file:///a\"},\"position\":{\"line\":\"x\",\"character\":0}}")]
    [InlineData("[1,2]")]
    public async Task Wrong_parameters_are_refused_with_a_sentence(string parameters)
    {
        await using var editor = await EditorStandIn.StartAsync();

        var refusal = await editor.RefusedAsync("textDocument/hover", JsonNode.Parse(parameters));

        Assert.Equal(-32602, (int)refusal["code"]!);
        Assert.NotEmpty((string)refusal["message"]!);
    }

    [Fact]
    public async Task An_unknown_method_is_refused_and_an_unknown_notification_is_let_be()
    {
        await using var editor = await EditorStandIn.StartAsync();
        await editor.TellAsync("textDocument/didDream", new JsonObject());

        Assert.Equal(-32601, (int)(await editor.RefusedAsync("textDocument/dream", new JsonObject()))["code"]!);
    }

    [Theory]
    [InlineData("{nope")]
    [InlineData("7")]
    [InlineData("")]
    [InlineData("{\"jsonrpc\":\"2.0\"}")]
    public async Task A_message_that_is_no_JSON_is_refused_and_the_next_is_read(string body)
    {
        await using var editor = await EditorStandIn.StartAsync();

        await editor.SendRawAsync(EditorStandIn.Framed(body));

        Assert.Null(await editor.AskAsync("textDocument/hover", At(Uri, 0, 0)));
    }

    [Fact]
    public async Task JSON_ten_thousand_deep_is_refused_and_the_next_is_read()
    {
        await using var editor = await EditorStandIn.StartAsync();

        await editor.SendRawAsync(EditorStandIn.Framed(new string('[', 10_000) + new string(']', 10_000)));

        Assert.Equal(-32700, (int)editor.Next("answer to nobody")["params"]!["error"]!["code"]!);
        Assert.Null(await editor.AskAsync("textDocument/hover", At(Uri, 0, 0)));
    }

    [Theory]
    [InlineData("garbage\r\n\r\n")]
    [InlineData("Content-Length: -5\r\n\r\n{}")]
    [InlineData("Content-Length: x\r\n\r\n{}")]
    [InlineData("Content-Type: text\r\n\r\n{}")]
    [InlineData("Content-Length: 2147483648\r\n\r\n{}")]
    [InlineData("Content-Length: 2000000000\r\n\r\n{}")]
    public async Task A_head_that_cannot_be_read_ends_the_server_with_a_sentence(string bytes)
    {
        await using var editor = await EditorStandIn.StartAsync();

        await editor.SendRawAsync(Encoding.ASCII.GetBytes(bytes));

        Assert.False(await editor.Ended);
        Assert.Contains("cannot be read", Assert.Single(editor.Complaints), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Messages_cut_anywhere_and_glued_together_are_read()
    {
        await using var editor = await EditorStandIn.StartAsync();
        var open = new JsonObject { ["jsonrpc"] = "2.0", ["method"] = "textDocument/didOpen", ["params"] = new JsonObject { ["textDocument"] = new JsonObject { ["uri"] = Uri, ["languageId"] = "grovespec", ["version"] = 1, ["text"] = "planting \"Ærø 🌲\"\n" } } };
        var change = new JsonObject { ["jsonrpc"] = "2.0", ["method"] = "textDocument/didChange", ["params"] = new JsonObject { ["textDocument"] = new JsonObject { ["uri"] = Uri, ["version"] = 2 }, ["contentChanges"] = new JsonArray(new JsonObject { ["text"] = "planting \"🌲\"\nnonsense\n" }) } };
        byte[] glued = [.. EditorStandIn.Framed(open.ToJsonString()), .. EditorStandIn.Framed(change.ToJsonString())];

        for (var at = 0; at < glued.Length; at += 7)
        {
            await editor.SendRawAsync(glued[at..Math.Min(at + 7, glued.Length)]);
        }

        Assert.NotEmpty(editor.Findings(Uri, 2)["diagnostics"]!.AsArray());
    }

    [Fact]
    public async Task Cancelling_what_never_was_and_closing_what_was_never_open_do_nothing()
    {
        await using var editor = await EditorStandIn.StartAsync();

        await editor.TellAsync("$/cancelRequest", new JsonObject { ["id"] = 4711 });
        await editor.TellAsync("textDocument/didClose", new JsonObject { ["textDocument"] = new JsonObject { ["uri"] = Uri } });
        await editor.ReplaceAsync(Uri, "planting \"A\"\n", 3);

        Assert.Null(await editor.AskAsync("textDocument/hover", At(Uri, 0, 0)));
    }

    internal static JsonObject At(string uri, int line, int character) => new()
    {
        ["textDocument"] = new JsonObject { ["uri"] = uri },
        ["position"] = new JsonObject { ["line"] = line, ["character"] = character },
    };
}
