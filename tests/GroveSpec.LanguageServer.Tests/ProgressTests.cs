using System.Text.Json;
using System.Text.Json.Nodes;
using GroveSpec.LanguageServer.Features;
using GroveSpec.LanguageServer.Features.WorkspaceFiles;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;
using GroveSpec.LanguageServer.Transport;
using Xunit;

namespace GroveSpec.LanguageServer.Tests;

public sealed class ProgressTests
{
    [Theory]
    [InlineData("workspace/diagnostic", """{ "previousResultIds": [], "workDoneToken": "w" }""")]
    [InlineData("workspace/symbol", """{ "query": "", "workDoneToken": "w" }""")]
    [InlineData("textDocument/references", """{ "textDocument": { "uri": "ROLES" }, "position": { "line": 0, "character": 6 }, "context": { "includeDeclaration": true }, "workDoneToken": "w" }""")]
    [InlineData("textDocument/rename", """{ "textDocument": { "uri": "ROLES" }, "position": { "line": 0, "character": 6 }, "newName": "elder", "workDoneToken": "w" }""")]
    public async Task Work_on_all_plantings_tells_how_far_it_has_come(string method, string parameters)
    {
        using var folder = new ScratchFolder();
        var roles = Write(folder, 3);
        await using var editor = await EditorStandIn.StartAsync(folder: folder.Path);
        await editor.OpenAsync(roles, folder.Read("roles.grove"));
        await editor.AskAsync(method, JsonNode.Parse(parameters.Replace("ROLES", roles, StringComparison.Ordinal)));

        Assert.Equal(["begin", "roles.grove", "a0.grove", "a1.grove", "a2.grove", "end"], Enumerable.Range(0, 6).Select(_ => Step(editor)));
    }

    [Fact]
    public async Task Without_a_token_nothing_is_told()
    {
        using var folder = new ScratchFolder();
        Write(folder, 3);
        await using var editor = await EditorStandIn.StartAsync(folder: folder.Path);
        await editor.AskAsync("workspace/symbol", JsonNode.Parse("""{ "query": "" }"""));
        await editor.LeaveAsync();
        await editor.Ended;

        Assert.DoesNotContain(editor.Rest(), message => (string?)message["method"] == "$/progress");
    }

    [Theory]
    [InlineData("\"w\"")]
    [InlineData("7")]
    public void Work_that_the_grower_calls_off_ends_with_the_next_planting(string token)
    {
        using var folder = new ScratchFolder();
        Write(folder, 3);
        using var session = new Session(new NobodyThere());
        session.Begin(new InitializeParams(new ClientCapabilities(), RootUri: folder.UriOf("")));
        var known = JsonDocument.Parse(token).RootElement;
        using var work = new WorkProgress(session, known, "Looking", TestContext.Current.CancellationToken);
        using var plantings = PlantingFiles.All(session, work).GetEnumerator();
        Assert.True(plantings.MoveNext());

        WorkProgress.CallOff(session, new WorkDoneProgressCancelParams(known.Clone()));

        Assert.Throws<OperationCanceledException>(() => plantings.MoveNext());
        Assert.False(TestContext.Current.CancellationToken.IsCancellationRequested);
    }

    [Fact]
    public async Task Work_that_was_called_off_is_answered_as_such()
    {
        var method = Method.Asked<WorkspaceSymbolParams, WorkspaceSymbol[]>(
            static () => ProtocolContext.Default.WorkspaceSymbolParams,
            static () => ProtocolContext.Default.WorkspaceSymbolArray,
            (_, _) => throw new OperationCanceledException());

        var refused = await Assert.ThrowsAsync<RequestException>(() => method(JsonDocument.Parse("""{ "query": "" }""").RootElement, TestContext.Current.CancellationToken));

        Assert.Equal(-32800, refused.Code);
    }

    [Fact]
    public async Task Calling_off_what_never_was_changes_nothing()
    {
        await using var editor = await EditorStandIn.StartAsync();
        await editor.TellAsync("window/workDoneProgress/cancel", JsonNode.Parse("""{ "token": "never" }"""));
        await editor.TellAsync("window/workDoneProgress/cancel", JsonNode.Parse("""{ "token": { "odd": [] } }"""));
        await editor.TellAsync("window/workDoneProgress/cancel", null);

        Assert.NotNull(await editor.AskAsync("workspace/symbol", JsonNode.Parse("""{ "query": "" }""")));
    }

    private static string Write(ScratchFolder folder, int plantings)
    {
        for (var index = 0; index < plantings; index++)
        {
            folder.Write($"a{index}.grove", $"planting \"A{index}\"\nuse \"roles.grove\"\ntrunk A at 0, 0 mm diameter 20 mm height 200 mm role main\n");
        }

        return folder.Write("roles.grove", "role main { form stout }\n");
    }

    private static string Step(EditorStandIn editor)
    {
        var value = editor.Next("$/progress")["params"]!["value"]!;
        return (string?)value["message"] ?? (string)value["kind"]!;
    }
}
