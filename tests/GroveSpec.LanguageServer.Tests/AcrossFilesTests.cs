using System.Text.Json.Nodes;
using Xunit;

namespace GroveSpec.LanguageServer.Tests;

/// <summary>Names and folders of several files that have to do with each other.</summary>
public sealed class AcrossFilesTests : IDisposable
{
    private const string Text = "planting \"P\"\nuse \"old-roles.grove\"\nuse \"roles.grove\"\ntrunk A at 0, 0 mm role main\ntrunk B at 90, 0 mm role own\nrole own { form stout }\n";

    private readonly ScratchFolder folder = new();

    public AcrossFilesTests()
    {
        folder.Write("old-roles.grove", "role lee { form slender }\n");
        folder.Write("roles.grove", "role main { form stout }\n");
    }

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("a.grove", 3, 25, "lee")]
    [InlineData("a.grove", 5, 6, "lee")]
    [InlineData("a.grove", 5, 6, "main")]
    [InlineData("roles.grove", 0, 6, "lee")]
    [InlineData("roles.grove", 0, 6, "own")]
    public async Task A_role_cannot_take_the_name_of_one_that_a_planting_has_from_another_file(string file, int line, int character, string name)
    {
        folder.Write("a.grove", Text);
        await using var editor = await EditorStandIn.StartAsync(folder: folder.Path);
        await editor.OpenAsync(folder.UriOf(file), folder.Read(file));

        var refusal = await editor.RefusedAsync("textDocument/rename", At(file, line, character, name));

        Assert.Contains($"a role called {name} already", (string)refusal["message"]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_role_may_take_a_name_that_none_of_its_plantings_knows()
    {
        folder.Write("a.grove", Text);
        folder.Write("b.grove", "planting \"B\"\nrole edge { form stout }\ntrunk A at 0, 0 mm role edge\n");
        await using var editor = await EditorStandIn.StartAsync(folder: folder.Path);
        await editor.OpenAsync(folder.UriOf("roles.grove"), folder.Read("roles.grove"));

        var edit = (await editor.AskAsync("textDocument/rename", At("roles.grove", 0, 6, "edge")))!;

        Assert.Equal([folder.UriOf("a.grove"), folder.UriOf("roles.grove")], edit["changes"]!.AsObject().Select(change => Uri.UnescapeDataString(change.Key)).Order(StringComparer.Ordinal).Select(change => new Uri(change).AbsoluteUri));
    }

    [Fact]
    public async Task A_use_goes_to_its_own_file_and_not_to_one_whose_name_ends_alike()
    {
        await using var editor = await EditorStandIn.StartAsync(folder: folder.Path);
        await editor.OpenAsync(folder.Write("a.grove", Text), Text);

        var found = Assert.Single((await editor.AskAsync("textDocument/definition", At("a.grove", 2, 7)))!.AsArray())!;
        var hover = (await editor.AskAsync("textDocument/hover", At("a.grove", 2, 7)))!;

        Assert.EndsWith("/roles.grove", (string)found["uri"]!, StringComparison.Ordinal);
        Assert.Contains("Gives 1 role, 0 tolerances and 0 profiles.", hover["contents"]!.ToJsonString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_folder_given_with_a_slash_at_its_end_is_taken_away_without_one()
    {
        await using var editor = new EditorStandIn();
        await editor.AskAsync("initialize", new JsonObject { ["processId"] = null, ["capabilities"] = new JsonObject(), ["workspaceFolders"] = new JsonArray(Folder("/")) });
        Assert.Equal(2, await CountAsync());

        await editor.TellAsync("workspace/didChangeWorkspaceFolders", new JsonObject { ["event"] = new JsonObject { ["added"] = new JsonArray(), ["removed"] = new JsonArray(Folder("")) } });
        Assert.Equal(0, await CountAsync());

        JsonObject Folder(string end) => new() { ["uri"] = new Uri(folder.Path).AbsoluteUri + end, ["name"] = "bench" };

        async Task<int> CountAsync() => (await editor.AskAsync("workspace/diagnostic", new JsonObject { ["previousResultIds"] = new JsonArray() }))!["items"]!.AsArray().Count;
    }

    private JsonObject At(string file, int line, int character, string? newName = null) => new()
    {
        ["textDocument"] = new JsonObject { ["uri"] = folder.UriOf(file) },
        ["position"] = new JsonObject { ["line"] = line, ["character"] = character },
        ["newName"] = newName,
    };
}
