using System.Diagnostics;
using System.Text.Json.Nodes;
using Xunit;

namespace GroveSpec.LanguageServer.Tests;

/// <summary>Editors that do what the protocol does not foresee.</summary>
public sealed class OddEditorTests
{
    private const string Planting = "planting \"A\"\ntrunk A at 0, 0 mm diameter 20 mm height 200 mm\n";

    [Fact]
    public async Task A_document_opened_twice_is_the_one_opened_last()
    {
        await using var editor = await EditorStandIn.StartAsync();
        await editor.OpenAsync("file:///a.grove", "nonsense\n");
        await editor.OpenAsync("file:///a.grove", Planting, 2);

        Assert.DoesNotContain(editor.Findings("file:///a.grove", 2)["diagnostics"]!.AsArray(), one => (int)one!["severity"]! == 1);
    }

    [Fact]
    public async Task A_version_that_goes_back_is_taken_as_it_is_said()
    {
        await using var editor = await EditorStandIn.StartAsync();
        await editor.OpenAsync("file:///a.grove", Planting, 9);
        Assert.Equal(9, (int)editor.Findings("file:///a.grove", 9)["version"]!);

        await editor.ReplaceAsync("file:///a.grove", "nonsense\n", 3);

        var found = editor.Findings("file:///a.grove", 3);
        Assert.Equal(3, (int)found["version"]!);
        Assert.Contains(found["diagnostics"]!.AsArray(), one => (int)one!["severity"]! == 1);
    }

    [Theory]
    [InlineData("file:///plantings/%61%20b.grove", "file:///plantings/a%20b.grove")]
    [InlineData("FILE:///plantings/a%20b.grove", "file://localhost/plantings/a b.grove")]
    [InlineData("file:///plantings/%C3%A9.grove", "file:///plantings/é.grove")]
    [InlineData("file:///plantings/100%.grove", "file:///plantings/100%25.grove")]
    [InlineData("untitled:Untitled-1", "untitled:Untitled-1")]
    public async Task Two_ways_to_write_one_address_name_one_document(string one, string other)
    {
        await using var editor = await EditorStandIn.StartAsync();
        await editor.OpenAsync(one, Planting);

        Assert.NotNull(await editor.AskAsync("textDocument/hover", LifeTests.At(other, 1, 6)));
        Assert.Equal(one, (string?)editor.Findings(one, 1)["uri"]);
    }

    [Theory]
    [InlineData(99, 0)]
    [InlineData(1, 9_999)]
    [InlineData(-1, -1)]
    [InlineData(int.MaxValue, int.MaxValue)]
    public async Task A_place_beyond_the_text_is_answered_as_its_nearest(int line, int character)
    {
        await using var editor = await EditorStandIn.StartAsync();
        await editor.OpenAsync("file:///a.grove", Planting);

        foreach (var method in new[] { "textDocument/hover", "textDocument/completion", "textDocument/definition", "textDocument/signatureHelp" })
        {
            Assert.Null((await editor.AnswerAsync(method, LifeTests.At("file:///a.grove", line, character)))["error"]);
        }
    }

    [Fact]
    public async Task A_server_whose_editor_has_died_ends()
    {
        using var dead = Process.Start(new ProcessStartInfo("dotnet", "--version") { RedirectStandardOutput = true })!;
        await dead.WaitForExitAsync(TestContext.Current.CancellationToken);
        await using var editor = new EditorStandIn();
        await editor.AskAsync("initialize", new JsonObject { ["processId"] = dead.Id, ["rootUri"] = null, ["capabilities"] = new JsonObject() });

        Assert.False(await editor.Ended);
    }
}
