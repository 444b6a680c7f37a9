using System.Text.Json.Nodes;
using Xunit;

namespace GroveSpec.LanguageServer.Tests;

/// <summary>Every request about the text, with what its answer says.</summary>
public sealed class AnswerTests : RowHouse
{
    [Fact]
    public void Findings_name_their_place_their_check_their_weight_and_the_other_trunks()
    {
        var found = Editor.Findings(Uri, 1)["diagnostics"]!.AsArray().Single(one => (string?)one!["code"] == "three-in-line")!;

        Assert.Equal(2, (int)found["severity"]!);
        Assert.Equal("grovespec", (string?)found["source"]);
        Assert.Equal(8, (int)found["range"]!["start"]!["line"]!);
        Assert.Equal("at 0, 2 mm", Slice(found["range"]!));
        Assert.Equal([7, 9], found["relatedInformation"]!.AsArray().Select(place => (int)place!["location"]!["range"]!["start"]!["line"]!).Order());
        Assert.Contains("mm off the straight line", (string)found["message"]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task How_many_of_a_kind_are_not_told_is_said_once()
    {
        var trunks = Enumerable.Range(0, 12).Select(index => $"trunk T{index} at {(index % 4 * 50) - 75}, {(index / 4 * 50) - 50} mm diameter 12 mm height 200 mm\n");
        await Editor.OpenAsync("untitled:grid", "planting \"Grid\"\nhabit group\ncontainer rectangle 400 x 300 x 40 mm\n" + string.Concat(trunks));

        var last = Editor.Findings("untitled:grid", 1)["diagnostics"]!.AsArray().Last(one => (string?)one!["code"] == "three-in-line")!;

        Assert.Single(System.Text.RegularExpressions.Regex.Matches((string)last["message"]!, "more of this kind"));
    }

    [Fact]
    public async Task An_editor_that_asks_for_findings_is_told_when_nothing_changed_and_is_sent_none_from_then_on()
    {
        Editor.Findings(Uri, 1);
        var report = (await Editor.AskAsync("textDocument/diagnostic", Of()))!;
        Assert.Equal("full", (string?)report["kind"]);
        Assert.NotEmpty(report["items"]!.AsArray());
        Assert.Empty(Editor.Findings(Uri, 1)["diagnostics"]!.AsArray());

        var again = Of();
        again["previousResultId"] = (string?)report["resultId"];
        Assert.Equal("unchanged", (string?)(await Editor.AskAsync("textDocument/diagnostic", again))!["kind"]);
    }

    [Fact]
    public async Task The_workspace_is_looked_at_with_files_that_nobody_opened()
    {
        Folder.Write("below/b.grove", "nonsense\n");
        Folder.Write(".hidden/c.grove", "nonsense\n");

        var reports = (await Editor.AskAsync("workspace/diagnostic", new JsonObject { ["previousResultIds"] = new JsonArray(), ["workDoneToken"] = "w" }))!["items"]!.AsArray();

        Assert.Equal([Uri, Folder.UriOf("below/b.grove")], reports.Select(report => (string?)report!["uri"]), Addresses.AreSame);
        Assert.NotEmpty(reports[1]!["items"]!.AsArray());
        Assert.Equal("begin", (string?)Editor.Next("$/progress")["params"]!["value"]!["kind"]);
    }

    [Theory]
    [InlineData("trunk B", 6, "Trunk B", "girth of 44 mm", "In the view: number 2 of 3", "A 60 mm", "number 3 of 3 by diameter", "number 2 of 3 by height")]
    [InlineData("role main {", 5, "Role main", "stout", "Played by A")]
    [InlineData("task U1", 5, "Task U1", "2026-", "It waits on W1")]
    [InlineData("larix-kaempferi", 2, "Species larix-kaempferi", "Leaves: deciduous-conifer", "Stage")]
    [InlineData("300 mm role", 1, "300 mm", "30 cm", "11.811 in")]
    [InlineData("habit group", 1, "habit", "how the trunks belong together")]
    public async Task Hover_tells_what_is_computed(string at, int into, params string[] expected)
    {
        var hover = (await Editor.AskAsync("textDocument/hover", Place(at, into)))!;

        Assert.Equal("markdown", (string?)hover["contents"]!["kind"]);
        foreach (var piece in expected.Where(piece => piece != "Stage"))
        {
            Assert.Contains(piece, (string)hover["contents"]!["value"]!, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public async Task Definition_references_and_highlights_find_every_place_of_a_trunk()
    {
        var at = Place("wire on B", 8);

        Assert.Equal(8, (int)Assert.Single((await Editor.AskAsync("textDocument/definition", at))!.AsArray())!["range"]!["start"]!["line"]!);
        var references = at.DeepClone().AsObject();
        references["context"] = new JsonObject { ["includeDeclaration"] = false };
        Assert.Equal(13, (int)Assert.Single((await Editor.AskAsync("textDocument/references", references))!.AsArray())!["range"]!["start"]!["line"]!);
        Assert.Equal([3, 2], (await Editor.AskAsync("textDocument/documentHighlight", at))!.AsArray().Select(one => (int)one!["kind"]!));
    }

    [Fact]
    public async Task A_role_is_renamed_in_the_file_that_describes_it_and_in_every_planting_that_uses_it()
    {
        Folder.Write("roles.grove", "role lead { form stout }\n");
        var one = Folder.Write("one.grove", "planting \"One\"\nuse \"roles.grove\"\ntrunk A at 0, 0 mm diameter 20 mm height 200 mm role lead\n");
        Folder.Write("two.grove", "planting \"Two\"\nuse \"roles.grove\"\ntrunk X at 0, 0 mm diameter 20 mm height 200 mm role lead\n");
        Folder.Write("three.grove", "planting \"Three\"\ntrunk X at 0, 0 mm diameter 20 mm height 200 mm role lead\nrole lead { form slender }\n");
        await Editor.OpenAsync(one, Folder.Read("one.grove"));
        var at = LifeTests.At(one, 2, Folder.Read("one.grove").Split('\n')[2].IndexOf("lead", StringComparison.Ordinal));

        Assert.Equal("lead", (string?)(await Editor.AskAsync("textDocument/prepareRename", at))!["placeholder"]);
        at["newName"] = "first";
        var changes = (await Editor.AskAsync("textDocument/rename", at))!["documentChanges"]!.AsArray();

        Assert.Equal([one, Folder.UriOf("roles.grove"), Folder.UriOf("two.grove")], changes.Select(change => (string?)change!["textDocument"]!["uri"]), Addresses.AreSame);
        Assert.All(changes, change => Assert.Equal("first", (string?)Assert.Single(change!["edits"]!.AsArray())!["newText"]));
    }

    [Theory]
    [InlineData("trunk B", 6, "trunk", "no word of the language")]
    [InlineData("trunk B", 6, "A", "already")]
    [InlineData("trunk B", 6, "two words", "one word")]
    [InlineData("trunk B", 6, "", "one word")]
    [InlineData("trunk B", 6, "7", "begins with a letter")]
    [InlineData("role main {", 5, "lee", "already")]
    public async Task A_name_that_cannot_be_given_is_refused_with_a_reason(string at, int into, string name, string reason)
    {
        var asked = Place(at, into);
        asked["newName"] = name;

        var refusal = await Editor.RefusedAsync("textDocument/rename", asked);

        Assert.Equal(-32803, (int)refusal["code"]!);
        Assert.Contains(reason, (string)refusal["message"]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_place_without_a_name_cannot_be_renamed() =>
        Assert.Equal(-32803, (int)(await Editor.RefusedAsync("textDocument/prepareRename", Place("diameter 20", 2)))["code"]!);

    [Fact]
    public async Task Symbols_give_the_outline_and_are_found_over_all_files()
    {
        var symbols = (await Editor.AskAsync("textDocument/documentSymbol", Of()))!.AsArray();
        Assert.Equal(["Row House", "A", "B", "C", "main", "lee", "W1", "U1", "measured 2026-10-30"], symbols.Select(symbol => (string?)symbol!["name"]));
        Assert.Equal("A", (string?)Assert.Single(symbols[^1]!["children"]!.AsArray())!["name"]);

        Folder.Write("b.grove", "planting \"Other\"\ntrunk Meadow at 0, 0 mm\n");
        var found = Assert.Single((await Editor.AskAsync("workspace/symbol", new JsonObject { ["query"] = "MDW" }))!.AsArray())!;
        Assert.Equal("Meadow", (string?)found["name"]);
        Assert.Equal("Other", (string?)found["containerName"]);
    }

    [Fact]
    public async Task Blocks_and_runs_of_lines_fold()
    {
        var folds = (await Editor.AskAsync("textDocument/foldingRange", Of()))!.AsArray();

        Assert.Contains(folds, fold => (int)fold!["startLine"]! == 7 && (int)fold["endLine"]! == 9);
        Assert.Contains(folds, fold => (int)fold!["startLine"]! == 15 && (int)fold["endLine"]! == 17);
    }

    [Fact]
    public async Task A_selection_grows_from_a_number_to_its_clause_its_line_and_the_file()
    {
        var asked = Of();
        asked["positions"] = new JsonArray(Place("girth 44", 7)["position"]!.DeepClone());

        var range = Assert.Single((await Editor.AskAsync("textDocument/selectionRange", asked))!.AsArray())!;
        var grown = new List<string>();
        for (var at = range; at is not null; at = at["parent"])
        {
            grown.Add(Slice(at["range"]!));
        }

        Assert.Equal(["44", "girth 44 mm", "trunk B at 0, 2 mm girth 44 mm height 220 mm role lee", Text], grown);
    }

    [Fact]
    public async Task Tokens_class_words_and_a_change_sends_only_what_differs()
    {
        var full = (await Editor.AskAsync("textDocument/semanticTokens/full", Of()))!;
        var words = Decode(full["data"]!.AsArray());
        Assert.Contains(("trunk", 0, 0), words);
        Assert.Contains(("B", 1, 1), words);
        Assert.Contains(("B", 1, 0), words);
        Assert.Contains(("main", 2, 1), words);
        Assert.Contains(("mm", 8, 0), words);
        Assert.Contains(("# A 🌲 wood", 10, 0), words);

        await Editor.ReplaceAsync(Uri, Text.Replace("girth 44", "girth 4412", StringComparison.Ordinal), 2);
        var asked = Of();
        asked["previousResultId"] = (string?)full["resultId"];
        var edit = Assert.Single((await Editor.AskAsync("textDocument/semanticTokens/full/delta", asked))!["edits"]!.AsArray())!;
        Assert.InRange((int)edit["deleteCount"]!, 1, 10);

        var range = Of();
        range["range"] = new JsonObject { ["start"] = new JsonObject { ["line"] = 7, ["character"] = 0 }, ["end"] = new JsonObject { ["line"] = 7, ["character"] = 99 } };
        Assert.InRange((await Editor.AskAsync("textDocument/semanticTokens/range", range))!["data"]!.AsArray().Count, 5, full["data"]!.AsArray().Count / 4);
    }

    [Fact]
    public async Task Notes_in_the_line_give_the_diameter_of_a_girth_and_the_nearest_gap()
    {
        var asked = Of();
        asked["range"] = new JsonObject { ["start"] = new JsonObject { ["line"] = 8, ["character"] = 0 }, ["end"] = new JsonObject { ["line"] = 8, ["character"] = 99 } };

        var notes = (await Editor.AskAsync("textDocument/inlayHint", asked))!.AsArray();

        Assert.Equal(["⌀ 14 mm", "60 mm to A"], notes.Select(note => (string?)note!["label"]));
        await Editor.TellAsync("workspace/didChangeConfiguration", new JsonObject { ["settings"] = new JsonObject { ["grovespec"] = new JsonObject { ["hints"] = false } } });
        Assert.Empty((await Editor.AskAsync("textDocument/inlayHint", asked))!.AsArray());
    }

    [Fact]
    public async Task Lenses_count_findings_and_name_the_trunks_of_a_role()
    {
        var lenses = (await Editor.AskAsync("textDocument/codeLens", Of()))!.AsArray().Select(lens => (string)lens!["command"]!["title"]!).ToList();

        Assert.StartsWith("3 trunks stand · ", lenses[0], StringComparison.Ordinal);
        Assert.Equal("1 trunk: A", lenses[1]);
    }

    [Fact]
    public async Task Formatting_gives_what_tidy_gives_and_of_a_range_only_its_lines()
    {
        var asked = Of();
        asked["options"] = new JsonObject { ["tabSize"] = 3, ["insertSpaces"] = false };
        var tidy = Syntax.Printing.Tidy.Format(Syntax.Parsing.GroveParser.Parse(Syntax.Text.SourceText.FromText(Text)));

        Assert.Equal(tidy, Apply(Text, (await Editor.AskAsync("textDocument/formatting", asked))!.AsArray()));

        asked["range"] = new JsonObject { ["start"] = new JsonObject { ["line"] = 7, ["character"] = 0 }, ["end"] = new JsonObject { ["line"] = 7, ["character"] = 5 } };
        Assert.All((await Editor.AskAsync("textDocument/rangeFormatting", asked))!.AsArray(), edit => Assert.Equal(7, (int)edit!["range"]!["start"]!["line"]!));

        var typed = Place("trunk C", 0);
        typed["ch"] = "\n";
        typed["options"] = asked["options"]!.DeepClone();
        Assert.All((await Editor.AskAsync("textDocument/onTypeFormatting", typed))!.AsArray(), edit => Assert.Equal(8, (int)edit!["range"]!["start"]!["line"]!));
    }

    [Fact]
    public async Task A_use_links_to_its_file_and_goes_there()
    {
        Folder.Write("roles.grove", "role lead { form stout }\n");
        var one = Folder.Write("one.grove", "planting \"One\"\nuse \"roles.grove\"\nuse \"../elsewhere.grove\"\n");
        await Editor.OpenAsync(one, Folder.Read("one.grove"));

        var link = Assert.Single((await Editor.AskAsync("textDocument/documentLink", new JsonObject { ["textDocument"] = new JsonObject { ["uri"] = one } }))!.AsArray())!;

        Assert.True(Addresses.AreSame.Equals(Folder.UriOf("roles.grove"), (string?)link["target"]));
        Assert.True(Addresses.AreSame.Equals(Folder.UriOf("roles.grove"), (string?)Assert.Single((await Editor.AskAsync("textDocument/definition", LifeTests.At(one, 1, 7)))!.AsArray())!["uri"]));
    }

    [Fact]
    public async Task The_form_of_a_statement_is_shown_with_the_part_that_is_written()
    {
        var help = (await Editor.AskAsync("textDocument/signatureHelp", Place("height 220", 7)))!;

        var form = help["signatures"]![0]!;
        var span = form["parameters"]![(int)help["activeParameter"]!]!["label"]!.AsArray();
        Assert.Equal("height 200 mm", ((string)form["label"]!)[(int)span[0]!..(int)span[1]!]);
    }

    [Fact]
    public async Task The_move_that_is_offered_clears_the_line_and_raises_nothing_new()
    {
        var before = Editor.Findings(Uri, 1)["diagnostics"]!.AsArray();
        var line = before.Single(one => (string?)one!["code"] == "three-in-line")!;
        var asked = Of();
        asked["range"] = line["range"]!.DeepClone();
        asked["context"] = new JsonObject { ["diagnostics"] = new JsonArray(line.DeepClone()) };

        var actions = (await Editor.AskAsync("textDocument/codeAction", asked))!.AsArray();

        var move = actions[0]!;
        Assert.Matches(@"^move [ABC] \d+(\.\d)? mm toward \d+ deg$", (string)move["title"]!);
        Assert.StartsWith("let three-in-line of A, B and C stand", (string)actions[1]!["title"]!, StringComparison.Ordinal);
        var edits = Assert.Single(move["edit"]!["documentChanges"]!.AsArray())!;
        Assert.Equal(1, (int)edits["textDocument"]!["version"]!);
        await Editor.ReplaceAsync(Uri, Apply(Text, edits["edits"]!.AsArray()), 2);
        var after = Editor.Findings(Uri, 2)["diagnostics"]!.AsArray();
        Assert.True(after.Count < before.Count);
        Assert.DoesNotContain(after, one => (string?)one!["code"] == "three-in-line");
    }

    [Fact]
    public async Task The_acceptance_that_is_offered_lets_the_finding_stand()
    {
        var line = Editor.Findings(Uri, 1)["diagnostics"]!.AsArray().Single(one => (string?)one!["code"] == "three-in-line")!;
        var asked = Of();
        asked["range"] = line["range"]!.DeepClone();
        asked["context"] = new JsonObject { ["diagnostics"] = new JsonArray(line.DeepClone()) };

        var accept = (await Editor.AskAsync("textDocument/codeAction", asked))!.AsArray()[1]!;
        await Editor.ReplaceAsync(Uri, Apply(Text, accept["edit"]!["documentChanges"]![0]!["edits"]!.AsArray()), 2);

        Assert.DoesNotContain(Editor.Findings(Uri, 2)["diagnostics"]!.AsArray(), one => (string?)one!["code"] == "three-in-line");
    }

    [Fact]
    public async Task Completion_knows_the_place()
    {
        Assert.Equal(["aluminium", "copper"], await CompleteAsync("task X1 wire on A in winter 2027 with "));
        Assert.Equal(["D"], await CompleteAsync("trunk "));
        Assert.Contains("trunk", await CompleteAsync(""));
        Assert.Equal(["main", "lee"], await CompleteAsync("trunk D at 1, 1 mm role "));
        Assert.Contains("mm", await CompleteAsync("trunk D at 1, 1 mm height 12 "));
        Assert.DoesNotContain("height", await CompleteAsync("trunk D at 1, 1 mm height 12 mm "));
        Assert.Contains("three-in-line", await CompleteAsync("accept "));
        Assert.Contains("leaf-out", await CompleteAsync("seen "));
        Assert.Contains("late", await CompleteAsync("task X1 prune on all in "));
        Assert.Contains("weeks", await CompleteAsync("task X1 feed on all every 2 "));
        Assert.Contains("larix-kaempferi", await CompleteAsync("trunk D species "));
        Assert.Contains("look-over", await CompleteAsync("task X1 "));
        Assert.Contains("W1", await CompleteAsync("task X1 unwire of "));
        Assert.Equal(["stout", "balanced", "slender"], (await CompleteAsync("role x { form ")).OrderByDescending(word => word == "stout"));
        Assert.Empty(await CompleteAsync("concept \"he said "));
        Assert.Empty(await CompleteAsync("# a note "));
    }

    private async Task<List<string>> CompleteAsync(string line)
    {
        var text = $"{Text}\n{line}";
        await Editor.ReplaceAsync(Uri, text, 50);
        var list = (await Editor.AskAsync("textDocument/completion", LifeTests.At(Uri, text.Split('\n').Length - 1, line.Length)))!;
        return [.. list["items"]!.AsArray().Select(item => (string)item!["label"]!)];
    }

    private static List<(string Word, int Class, int Marks)> Decode(JsonArray data)
    {
        var words = new List<(string, int, int)>();
        var lines = Text.Split('\n');
        int line = 0, character = 0;
        for (var index = 0; index < data.Count; index += 5)
        {
            character = (int)data[index]! == 0 ? character + (int)data[index + 1]! : (int)data[index + 1]!;
            line += (int)data[index]!;
            words.Add((lines[line].Substring(character, (int)data[index + 2]!), (int)data[index + 3]!, (int)data[index + 4]!));
        }

        return words;
    }
}
