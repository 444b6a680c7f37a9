using Xunit;

namespace GroveSpec.LanguageServer.Tests;

/// <summary>Requests about the drawings beside the text, with what their answers say.</summary>
public sealed class PictureTests : RowHouse
{
    [Fact]
    public async Task A_trunk_that_is_dragged_in_the_plan_stands_where_it_was_let_go()
    {
        var drawn = (await Editor.AskAsync("grovespec/draw", Of(("view", "plan"))))!;
        Assert.StartsWith("<svg", ((string)drawn["svg"]!)[((string)drawn["svg"]!).IndexOf("<svg", StringComparison.Ordinal)..], StringComparison.Ordinal);
        Assert.Equal(["A", "B", "C"], drawn["trunks"]!.AsArray().Select(trunk => (string?)trunk!["name"]));
        Assert.Contains(drawn["places"]!.AsArray(), place => (string?)place!["origin"] == "trunk:B" && Slice(place["selection"]!) == "B");

        var here = (await Editor.AskAsync("grovespec/step", Of(("view", "plan"), ("version", 1), ("trunk", "B"), ("right", 0), ("back", 0))))!;
        Assert.Empty(here["edits"]!.AsArray());
        var there = (await Editor.AskAsync("grovespec/drag", Of(("view", "plan"), ("version", 1), ("trunk", "B"), ("x", (double)here["x"]!), ("y", (double)here["y"]! - 40))))!;
        var edit = Assert.Single(there["edits"]!.AsArray())!;
        Assert.Equal("at 0, 2 mm", Slice(edit["range"]!));
        Assert.Matches(@"^at 0, \d+ mm$", (string)edit["newText"]!);

        var guides = (string)(await Editor.AskAsync("grovespec/guides", Of(("view", "plan"), ("version", 1), ("trunk", "B"))))!["svg"]!;
        Assert.Contains("class=\"free\"", guides, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"strip\"", guides, StringComparison.Ordinal);
        Assert.Equal(-32801, (int)(await Editor.RefusedAsync("grovespec/drag", Of(("view", "plan"), ("version", 7), ("trunk", "B"), ("x", 1), ("y", 1))))["code"]!);
    }

    [Fact]
    public async Task A_trunk_from_which_tape_readings_place_another_stays_and_why_is_said()
    {
        const string Taped = Text + "\ntrunk G\ntape A to G 50 mm\ntape B to G 50 mm\ntape C to G 101 mm\ntrunk F at 30, 90 mm\ntape A to F 127 mm\n";
        await Editor.ReplaceAsync(Uri, Taped, 2);

        var held = (await Editor.AskAsync("grovespec/drag", Of(("view", "plan"), ("version", 2), ("trunk", "A"), ("x", 10), ("y", 10))))!;
        Assert.Empty(held["edits"]!.AsArray());
        Assert.StartsWith("Tape readings from A place G, which would seem to move with A, so A stays where it is: ", (string)held["refusal"]!, StringComparison.Ordinal);

        // F has a place of its own, which its reading only checks.
        var free = (await Editor.AskAsync("grovespec/step", Of(("view", "plan"), ("version", 2), ("trunk", "F"), ("right", 3), ("back", 0))))!;
        Assert.Equal("at 33, 90 mm", (string?)Assert.Single(free["edits"]!.AsArray())!["newText"]);
    }

    [Fact]
    public async Task A_top_that_is_dragged_in_the_view_from_the_front_changes_height_and_lean()
    {
        var stepped = (await Editor.AskAsync("grovespec/step", Of(("view", "front"), ("version", 1), ("trunk", "B"), ("right", 5), ("back", 10))))!;

        Assert.Equal(["height 230 mm", "   lean 5 deg toward 90 deg"], stepped["edits"]!.AsArray().Select(edit => (string?)edit!["newText"]));
        var dragged = (await Editor.AskAsync("grovespec/drag", Of(("view", "front"), ("version", 1), ("trunk", "B"), ("x", (double)stepped["x"]!), ("y", (double)stepped["y"]!))))!;
        Assert.Equal(stepped["edits"]!.ToJsonString(), dragged["edits"]!.ToJsonString());
    }

    [Fact]
    public async Task The_sheet_of_wire_shows_the_wired_trunks_and_where_they_are_stated()
    {
        var drawn = (await Editor.AskAsync("grovespec/draw", Of(("view", "wiring"))))!;
        Assert.Contains("gs-wiring", (string)drawn["svg"]!, StringComparison.Ordinal);
        Assert.Equal(["B", "C"], drawn["trunks"]!.AsArray().Select(trunk => (string?)trunk!["name"]));
        Assert.Contains(drawn["places"]!.AsArray(), place => (string?)place!["origin"] == "task:W1" && Slice(place["selection"]!) == "W1");
    }

    [Fact]
    public async Task A_task_that_is_dragged_in_the_timeline_is_due_on_the_days_where_it_was_let_go()
    {
        var drawn = (await Editor.AskAsync("grovespec/draw", Of(("view", "timeline"))))!;
        Assert.Equal(["W1", "U1"], drawn["tasks"]!.AsArray().Select(task => (string?)task!["name"]));
        Assert.Empty((await Editor.AskAsync("grovespec/draw", Of(("view", "plan"))))!["tasks"]!.AsArray());
        var wire = drawn["tasks"]![0]!;
        Assert.Equal("W1, wire on B, C: 1 to 30 November 2026", (string)wire["summary"]!);

        var stepped = (await Editor.AskAsync("grovespec/stepTask", Of(("version", 1), ("task", "W1"), ("days", 7))))!;
        var edit = Assert.Single(stepped["edits"]!.AsArray())!;
        Assert.Equal("in late autumn 2026", Slice(edit["range"]!));
        Assert.Equal("from 2026-11-08 to 2026-12-07", (string)edit["newText"]!);

        // Let go where it was taken it stays; the plate is as wide as its months, so that some place to the right is just a week away.
        Assert.Empty((await Editor.AskAsync("grovespec/dragTask", Of(("version", 1), ("task", "W1"), ("x", (double)wire["x"]!))))!["edits"]!.AsArray());
        var reached = new List<string>();
        for (var pixels = 1; pixels < 120; pixels++)
        {
            var dragged = (await Editor.AskAsync("grovespec/dragTask", Of(("version", 1), ("task", "W1"), ("x", (double)wire["x"]! + pixels))))!;
            reached.AddRange(dragged["edits"]!.AsArray().Select(one => (string)one!["newText"]!));
        }

        Assert.Contains("from 2026-11-08 to 2026-12-07", reached);
        var refused = (await Editor.AskAsync("grovespec/stepTask", Of(("version", 1), ("task", "U1"), ("days", 7))))!;
        Assert.Empty(refused["edits"]!.AsArray());
        Assert.StartsWith("U1 follows other work", (string)refused["refusal"]!, StringComparison.Ordinal);
        Assert.Equal(-32801, (int)(await Editor.RefusedAsync("grovespec/dragTask", Of(("version", 7), ("task", "W1"), ("x", 1))))["code"]!);
    }
}
