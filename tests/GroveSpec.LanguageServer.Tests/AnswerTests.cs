using System.Text.Json.Nodes;
using Xunit;

namespace GroveSpec.LanguageServer.Tests;

/// <summary>Every request, with what its answer says.</summary>
public sealed class AnswerTests : IAsyncLifetime
{
    private const string Text = """
        # A 🌲 wood
        planting "Row House"
        habit group
        species larix-kaempferi
        container oval 400 x 300 x 40 mm
        viewed from 180 deg, at 1100 mm, eye 160 mm, near

        trunk A at -60, 0 mm diameter 20 mm height 300 mm role main
        trunk B at 0, 2 mm girth 44 mm height 220 mm role lee
        trunk C at 70, 0 mm diameter 16 mm height 180 mm

        role main { form stout vigour push }
        role lee { form slender vigour steady }
        task W1 wire on B C in late autumn 2026
        task U1 unwire of W1 6 to 8 weeks after W1
        measured 2026-10-30 {
          A diameter 21 mm
        }
        """;

    private readonly ScratchFolder folder = new();
    private EditorStandIn editor = null!;
    private string uri = "";

    public async ValueTask InitializeAsync()
    {
        uri = folder.Write("a.grove", Text);
        editor = await EditorStandIn.StartAsync(
            new JsonObject
            {
                ["workspace"] = new JsonObject { ["workspaceEdit"] = new JsonObject { ["documentChanges"] = true } },
                ["textDocument"] = new JsonObject
                {
                    ["completion"] = new JsonObject { ["completionItem"] = new JsonObject { ["snippetSupport"] = true } },
                    ["documentSymbol"] = new JsonObject { ["hierarchicalDocumentSymbolSupport"] = true },
                },
            },
            folder.Path);
        await editor.OpenAsync(uri, Text);
    }

    public async ValueTask DisposeAsync()
    {
        await editor.DisposeAsync();
        folder.Dispose();
    }

    [Fact]
    public void Findings_name_their_place_their_check_their_weight_and_the_other_trunks()
    {
        var found = editor.Findings(uri, 1)["diagnostics"]!.AsArray().Single(one => (string?)one!["code"] == "three-in-line")!;

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
        await editor.OpenAsync("untitled:grid", "planting \"Grid\"\nhabit group\ncontainer rectangle 400 x 300 x 40 mm\n" + string.Concat(trunks));

        var last = editor.Findings("untitled:grid", 1)["diagnostics"]!.AsArray().Last(one => (string?)one!["code"] == "three-in-line")!;

        Assert.Single(System.Text.RegularExpressions.Regex.Matches((string)last["message"]!, "more of this kind"));
    }

    [Fact]
    public async Task An_editor_that_asks_for_findings_is_told_when_nothing_changed_and_is_sent_none_from_then_on()
    {
        editor.Findings(uri, 1);
        var report = (await editor.AskAsync("textDocument/diagnostic", Of()))!;
        Assert.Equal("full", (string?)report["kind"]);
        Assert.NotEmpty(report["items"]!.AsArray());
        Assert.Empty(editor.Findings(uri, 1)["diagnostics"]!.AsArray());

        var again = Of();
        again["previousResultId"] = (string?)report["resultId"];
        Assert.Equal("unchanged", (string?)(await editor.AskAsync("textDocument/diagnostic", again))!["kind"]);
    }

    [Fact]
    public async Task The_workspace_is_looked_at_with_files_that_nobody_opened()
    {
        folder.Write("below/b.grove", "nonsense\n");
        folder.Write(".hidden/c.grove", "nonsense\n");

        var reports = (await editor.AskAsync("workspace/diagnostic", new JsonObject { ["previousResultIds"] = new JsonArray(), ["workDoneToken"] = "w" }))!["items"]!.AsArray();

        Assert.Equal([uri, folder.UriOf("below/b.grove")], reports.Select(report => (string?)report!["uri"]), Addresses.AreSame);
        Assert.NotEmpty(reports[1]!["items"]!.AsArray());
        Assert.Equal("begin", (string?)editor.Next("$/progress")["params"]!["value"]!["kind"]);
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
        var hover = (await editor.AskAsync("textDocument/hover", Place(at, into)))!;

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

        Assert.Equal(8, (int)Assert.Single((await editor.AskAsync("textDocument/definition", at))!.AsArray())!["range"]!["start"]!["line"]!);
        var references = at.DeepClone().AsObject();
        references["context"] = new JsonObject { ["includeDeclaration"] = false };
        Assert.Equal(13, (int)Assert.Single((await editor.AskAsync("textDocument/references", references))!.AsArray())!["range"]!["start"]!["line"]!);
        Assert.Equal([3, 2], (await editor.AskAsync("textDocument/documentHighlight", at))!.AsArray().Select(one => (int)one!["kind"]!));
    }

    [Fact]
    public async Task A_role_is_renamed_in_the_file_that_describes_it_and_in_every_planting_that_uses_it()
    {
        folder.Write("roles.grove", "role lead { form stout }\n");
        var one = folder.Write("one.grove", "planting \"One\"\nuse \"roles.grove\"\ntrunk A at 0, 0 mm diameter 20 mm height 200 mm role lead\n");
        folder.Write("two.grove", "planting \"Two\"\nuse \"roles.grove\"\ntrunk X at 0, 0 mm diameter 20 mm height 200 mm role lead\n");
        folder.Write("three.grove", "planting \"Three\"\ntrunk X at 0, 0 mm diameter 20 mm height 200 mm role lead\nrole lead { form slender }\n");
        await editor.OpenAsync(one, folder.Read("one.grove"));
        var at = LifeTests.At(one, 2, folder.Read("one.grove").Split('\n')[2].IndexOf("lead", StringComparison.Ordinal));

        Assert.Equal("lead", (string?)(await editor.AskAsync("textDocument/prepareRename", at))!["placeholder"]);
        at["newName"] = "first";
        var changes = (await editor.AskAsync("textDocument/rename", at))!["documentChanges"]!.AsArray();

        Assert.Equal([one, folder.UriOf("roles.grove"), folder.UriOf("two.grove")], changes.Select(change => (string?)change!["textDocument"]!["uri"]), Addresses.AreSame);
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

        var refusal = await editor.RefusedAsync("textDocument/rename", asked);

        Assert.Equal(-32803, (int)refusal["code"]!);
        Assert.Contains(reason, (string)refusal["message"]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_place_without_a_name_cannot_be_renamed() =>
        Assert.Equal(-32803, (int)(await editor.RefusedAsync("textDocument/prepareRename", Place("diameter 20", 2)))["code"]!);

    [Fact]
    public async Task Symbols_give_the_outline_and_are_found_over_all_files()
    {
        var symbols = (await editor.AskAsync("textDocument/documentSymbol", Of()))!.AsArray();
        Assert.Equal(["Row House", "A", "B", "C", "main", "lee", "W1", "U1", "measured 2026-10-30"], symbols.Select(symbol => (string?)symbol!["name"]));
        Assert.Equal("A", (string?)Assert.Single(symbols[^1]!["children"]!.AsArray())!["name"]);

        folder.Write("b.grove", "planting \"Other\"\ntrunk Meadow at 0, 0 mm\n");
        var found = Assert.Single((await editor.AskAsync("workspace/symbol", new JsonObject { ["query"] = "MDW" }))!.AsArray())!;
        Assert.Equal("Meadow", (string?)found["name"]);
        Assert.Equal("Other", (string?)found["containerName"]);
    }

    [Fact]
    public async Task Blocks_and_runs_of_lines_fold()
    {
        var folds = (await editor.AskAsync("textDocument/foldingRange", Of()))!.AsArray();

        Assert.Contains(folds, fold => (int)fold!["startLine"]! == 7 && (int)fold["endLine"]! == 9);
        Assert.Contains(folds, fold => (int)fold!["startLine"]! == 15 && (int)fold["endLine"]! == 17);
    }

    [Fact]
    public async Task A_selection_grows_from_a_number_to_its_clause_its_line_and_the_file()
    {
        var asked = Of();
        asked["positions"] = new JsonArray(Place("girth 44", 7)["position"]!.DeepClone());

        var range = Assert.Single((await editor.AskAsync("textDocument/selectionRange", asked))!.AsArray())!;
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
        var full = (await editor.AskAsync("textDocument/semanticTokens/full", Of()))!;
        var words = Decode(full["data"]!.AsArray());
        Assert.Contains(("trunk", 0, 0), words);
        Assert.Contains(("B", 1, 1), words);
        Assert.Contains(("B", 1, 0), words);
        Assert.Contains(("main", 2, 1), words);
        Assert.Contains(("mm", 8, 0), words);
        Assert.Contains(("# A 🌲 wood", 10, 0), words);

        await editor.ReplaceAsync(uri, Text.Replace("girth 44", "girth 4412", StringComparison.Ordinal), 2);
        var asked = Of();
        asked["previousResultId"] = (string?)full["resultId"];
        var edit = Assert.Single((await editor.AskAsync("textDocument/semanticTokens/full/delta", asked))!["edits"]!.AsArray())!;
        Assert.InRange((int)edit["deleteCount"]!, 1, 10);

        var range = Of();
        range["range"] = new JsonObject { ["start"] = new JsonObject { ["line"] = 7, ["character"] = 0 }, ["end"] = new JsonObject { ["line"] = 7, ["character"] = 99 } };
        Assert.InRange((await editor.AskAsync("textDocument/semanticTokens/range", range))!["data"]!.AsArray().Count, 5, full["data"]!.AsArray().Count / 4);
    }

    [Fact]
    public async Task Notes_in_the_line_give_the_diameter_of_a_girth_and_the_nearest_gap()
    {
        var asked = Of();
        asked["range"] = new JsonObject { ["start"] = new JsonObject { ["line"] = 8, ["character"] = 0 }, ["end"] = new JsonObject { ["line"] = 8, ["character"] = 99 } };

        var notes = (await editor.AskAsync("textDocument/inlayHint", asked))!.AsArray();

        Assert.Equal(["⌀ 14 mm", "60 mm to A"], notes.Select(note => (string?)note!["label"]));
        await editor.TellAsync("workspace/didChangeConfiguration", new JsonObject { ["settings"] = new JsonObject { ["grovespec"] = new JsonObject { ["hints"] = false } } });
        Assert.Empty((await editor.AskAsync("textDocument/inlayHint", asked))!.AsArray());
    }

    [Fact]
    public async Task Lenses_count_findings_and_name_the_trunks_of_a_role()
    {
        var lenses = (await editor.AskAsync("textDocument/codeLens", Of()))!.AsArray().Select(lens => (string)lens!["command"]!["title"]!).ToList();

        Assert.StartsWith("3 trunks stand · ", lenses[0], StringComparison.Ordinal);
        Assert.Equal("1 trunk: A", lenses[1]);
    }

    [Fact]
    public async Task Formatting_gives_what_tidy_gives_and_of_a_range_only_its_lines()
    {
        var asked = Of();
        asked["options"] = new JsonObject { ["tabSize"] = 3, ["insertSpaces"] = false };
        var tidy = Syntax.Printing.Tidy.Format(Syntax.Parsing.GroveParser.Parse(Syntax.Text.SourceText.FromText(Text)));

        Assert.Equal(tidy, Apply(Text, (await editor.AskAsync("textDocument/formatting", asked))!.AsArray()));

        asked["range"] = new JsonObject { ["start"] = new JsonObject { ["line"] = 7, ["character"] = 0 }, ["end"] = new JsonObject { ["line"] = 7, ["character"] = 5 } };
        Assert.All((await editor.AskAsync("textDocument/rangeFormatting", asked))!.AsArray(), edit => Assert.Equal(7, (int)edit!["range"]!["start"]!["line"]!));

        var typed = Place("trunk C", 0);
        typed["ch"] = "\n";
        typed["options"] = asked["options"]!.DeepClone();
        Assert.All((await editor.AskAsync("textDocument/onTypeFormatting", typed))!.AsArray(), edit => Assert.Equal(8, (int)edit!["range"]!["start"]!["line"]!));
    }

    [Fact]
    public async Task A_use_links_to_its_file_and_goes_there()
    {
        folder.Write("roles.grove", "role lead { form stout }\n");
        var one = folder.Write("one.grove", "planting \"One\"\nuse \"roles.grove\"\nuse \"../elsewhere.grove\"\n");
        await editor.OpenAsync(one, folder.Read("one.grove"));

        var link = Assert.Single((await editor.AskAsync("textDocument/documentLink", new JsonObject { ["textDocument"] = new JsonObject { ["uri"] = one } }))!.AsArray())!;

        Assert.True(Addresses.AreSame.Equals(folder.UriOf("roles.grove"), (string?)link["target"]));
        Assert.True(Addresses.AreSame.Equals(folder.UriOf("roles.grove"), (string?)Assert.Single((await editor.AskAsync("textDocument/definition", LifeTests.At(one, 1, 7)))!.AsArray())!["uri"]));
    }

    [Fact]
    public async Task The_form_of_a_statement_is_shown_with_the_part_that_is_written()
    {
        var help = (await editor.AskAsync("textDocument/signatureHelp", Place("height 220", 7)))!;

        var form = help["signatures"]![0]!;
        var span = form["parameters"]![(int)help["activeParameter"]!]!["label"]!.AsArray();
        Assert.Equal("height 200 mm", ((string)form["label"]!)[(int)span[0]!..(int)span[1]!]);
    }

    [Fact]
    public async Task The_move_that_is_offered_clears_the_line_and_raises_nothing_new()
    {
        var before = editor.Findings(uri, 1)["diagnostics"]!.AsArray();
        var line = before.Single(one => (string?)one!["code"] == "three-in-line")!;
        var asked = Of();
        asked["range"] = line["range"]!.DeepClone();
        asked["context"] = new JsonObject { ["diagnostics"] = new JsonArray(line.DeepClone()) };

        var actions = (await editor.AskAsync("textDocument/codeAction", asked))!.AsArray();

        var move = actions[0]!;
        Assert.Matches(@"^move [ABC] \d+(\.\d)? mm toward \d+ deg$", (string)move["title"]!);
        Assert.StartsWith("let three-in-line of A, B and C stand", (string)actions[1]!["title"]!, StringComparison.Ordinal);
        var edits = Assert.Single(move["edit"]!["documentChanges"]!.AsArray())!;
        Assert.Equal(1, (int)edits["textDocument"]!["version"]!);
        await editor.ReplaceAsync(uri, Apply(Text, edits["edits"]!.AsArray()), 2);
        var after = editor.Findings(uri, 2)["diagnostics"]!.AsArray();
        Assert.True(after.Count < before.Count);
        Assert.DoesNotContain(after, one => (string?)one!["code"] == "three-in-line");
    }

    [Fact]
    public async Task The_acceptance_that_is_offered_lets_the_finding_stand()
    {
        var line = editor.Findings(uri, 1)["diagnostics"]!.AsArray().Single(one => (string?)one!["code"] == "three-in-line")!;
        var asked = Of();
        asked["range"] = line["range"]!.DeepClone();
        asked["context"] = new JsonObject { ["diagnostics"] = new JsonArray(line.DeepClone()) };

        var accept = (await editor.AskAsync("textDocument/codeAction", asked))!.AsArray()[1]!;
        await editor.ReplaceAsync(uri, Apply(Text, accept["edit"]!["documentChanges"]![0]!["edits"]!.AsArray()), 2);

        Assert.DoesNotContain(editor.Findings(uri, 2)["diagnostics"]!.AsArray(), one => (string?)one!["code"] == "three-in-line");
    }

    [Fact]
    public async Task A_trunk_that_is_dragged_in_the_plan_stands_where_it_was_let_go()
    {
        var drawn = (await editor.AskAsync("grovespec/draw", Of(("view", "plan"))))!;
        Assert.StartsWith("<svg", ((string)drawn["svg"]!)[((string)drawn["svg"]!).IndexOf("<svg", StringComparison.Ordinal)..], StringComparison.Ordinal);
        Assert.Equal(["A", "B", "C"], drawn["trunks"]!.AsArray().Select(trunk => (string?)trunk!["name"]));
        Assert.Contains(drawn["places"]!.AsArray(), place => (string?)place!["origin"] == "trunk:B" && Slice(place["selection"]!) == "B");

        var here = (await editor.AskAsync("grovespec/step", Of(("view", "plan"), ("version", 1), ("trunk", "B"), ("right", 0), ("back", 0))))!;
        Assert.Empty(here["edits"]!.AsArray());
        var there = (await editor.AskAsync("grovespec/drag", Of(("view", "plan"), ("version", 1), ("trunk", "B"), ("x", (double)here["x"]!), ("y", (double)here["y"]! - 40))))!;
        var edit = Assert.Single(there["edits"]!.AsArray())!;
        Assert.Equal("at 0, 2 mm", Slice(edit["range"]!));
        Assert.Matches(@"^at 0, \d+ mm$", (string)edit["newText"]!);

        var guides = (string)(await editor.AskAsync("grovespec/guides", Of(("view", "plan"), ("version", 1), ("trunk", "B"))))!["svg"]!;
        Assert.Contains("class=\"free\"", guides, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"strip\"", guides, StringComparison.Ordinal);
        Assert.Equal(-32801, (int)(await editor.RefusedAsync("grovespec/drag", Of(("view", "plan"), ("version", 7), ("trunk", "B"), ("x", 1), ("y", 1))))["code"]!);
    }

    [Fact]
    public async Task A_top_that_is_dragged_in_the_view_from_the_front_changes_height_and_lean()
    {
        var stepped = (await editor.AskAsync("grovespec/step", Of(("view", "front"), ("version", 1), ("trunk", "B"), ("right", 5), ("back", 10))))!;

        Assert.Equal(["height 230 mm", "   lean 5 deg toward 90 deg"], stepped["edits"]!.AsArray().Select(edit => (string?)edit!["newText"]));
        var dragged = (await editor.AskAsync("grovespec/drag", Of(("view", "front"), ("version", 1), ("trunk", "B"), ("x", (double)stepped["x"]!), ("y", (double)stepped["y"]!))))!;
        Assert.Equal(stepped["edits"]!.ToJsonString(), dragged["edits"]!.ToJsonString());
    }

    [Fact]
    public async Task The_sheet_of_wire_shows_the_wired_trunks_and_where_they_are_stated()
    {
        var drawn = (await editor.AskAsync("grovespec/draw", Of(("view", "wiring"))))!;
        Assert.Contains("gs-wiring", (string)drawn["svg"]!, StringComparison.Ordinal);
        Assert.Equal(["B", "C"], drawn["trunks"]!.AsArray().Select(trunk => (string?)trunk!["name"]));
        Assert.Contains(drawn["places"]!.AsArray(), place => (string?)place!["origin"] == "task:W1" && Slice(place["selection"]!) == "W1");
    }

    [Fact]
    public async Task A_task_that_is_dragged_in_the_timeline_is_due_on_the_days_where_it_was_let_go()
    {
        var drawn = (await editor.AskAsync("grovespec/draw", Of(("view", "timeline"))))!;
        Assert.Equal(["W1", "U1"], drawn["tasks"]!.AsArray().Select(task => (string?)task!["name"]));
        Assert.Empty((await editor.AskAsync("grovespec/draw", Of(("view", "plan"))))!["tasks"]!.AsArray());
        var wire = drawn["tasks"]![0]!;
        Assert.Equal("W1, wire on B, C: 1 to 30 November 2026", (string)wire["summary"]!);

        var stepped = (await editor.AskAsync("grovespec/stepTask", Of(("version", 1), ("task", "W1"), ("days", 7))))!;
        var edit = Assert.Single(stepped["edits"]!.AsArray())!;
        Assert.Equal("in late autumn 2026", Slice(edit["range"]!));
        Assert.Equal("from 2026-11-08 to 2026-12-07", (string)edit["newText"]!);

        // Let go where it was taken it stays; the plate is as wide as its months, so that some place to the right is just a week away.
        Assert.Empty((await editor.AskAsync("grovespec/dragTask", Of(("version", 1), ("task", "W1"), ("x", (double)wire["x"]!))))!["edits"]!.AsArray());
        var reached = new List<string>();
        for (var pixels = 1; pixels < 120; pixels++)
        {
            var dragged = (await editor.AskAsync("grovespec/dragTask", Of(("version", 1), ("task", "W1"), ("x", (double)wire["x"]! + pixels))))!;
            reached.AddRange(dragged["edits"]!.AsArray().Select(one => (string)one!["newText"]!));
        }

        Assert.Contains("from 2026-11-08 to 2026-12-07", reached);
        var refused = (await editor.AskAsync("grovespec/stepTask", Of(("version", 1), ("task", "U1"), ("days", 7))))!;
        Assert.Empty(refused["edits"]!.AsArray());
        Assert.StartsWith("U1 follows other work", (string)refused["refusal"]!, StringComparison.Ordinal);
        Assert.Equal(-32801, (int)(await editor.RefusedAsync("grovespec/dragTask", Of(("version", 7), ("task", "W1"), ("x", 1))))["code"]!);
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
        await editor.ReplaceAsync(uri, text, 50);
        var list = (await editor.AskAsync("textDocument/completion", LifeTests.At(uri, text.Split('\n').Length - 1, line.Length)))!;
        return [.. list["items"]!.AsArray().Select(item => (string)item!["label"]!)];
    }

    private JsonObject Of(params (string Name, JsonNode? Value)[] more)
    {
        var parameters = new JsonObject { ["textDocument"] = new JsonObject { ["uri"] = uri } };
        foreach (var (name, value) in more)
        {
            parameters[name] = value;
        }

        return parameters;
    }

    private JsonObject Place(string at, int into)
    {
        var before = Text[..(Text.IndexOf(at, StringComparison.Ordinal) + into)].Split('\n');
        return LifeTests.At(uri, before.Length - 1, before[^1].Length);
    }

    private static string Slice(JsonNode range)
    {
        var (start, end) = (Offset(Text, range["start"]!), Offset(Text, range["end"]!));
        return Text[start..end];
    }

    private static int Offset(string text, JsonNode position) => text.Split('\n').Take((int)position["line"]!).Sum(line => line.Length + 1) + (int)position["character"]!;

    private static string Apply(string text, JsonArray edits)
    {
        foreach (var edit in edits.OrderByDescending(edit => Offset(text, edit!["range"]!["start"]!)))
        {
            text = string.Concat(text.AsSpan(0, Offset(text, edit!["range"]!["start"]!)), (string)edit["newText"]!, text.AsSpan(Offset(text, edit["range"]!["end"]!)));
        }

        return text;
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
