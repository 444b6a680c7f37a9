using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Editing.Explaining;
using GroveSpec.Editing.Notes;
using GroveSpec.Syntax.Text;
using Xunit;

namespace GroveSpec.Editing.Tests;

/// <summary>What the editor says of a task's days. The bands of stages are common practice; the days are counted by hand from the frosts.</summary>
public sealed class TaskDaysTests
{
    private const string Year = """
        planting  "Quiet corner"
        habit     group
        container oval 360 x 240 x 40 mm
        site      latitude 51 N, zone 8b, last frost 3 May, first frost 1 November
        trunk A   at -58, -22 mm   diameter 33 mm   height 410 mm
        task W1   wire      on A   in late autumn 2026
        task L1   look-over of W1  every 2 weeks until U1
        task U1   unwire    of W1  6 to 8 weeks after W1
        task P1   prune     on A   after leaf-out 2027, before 2027-07
        task F1   feed      on A   from leaf-out 2027 to leaf-fall 2027
        task M1   measure   on A   on 2027-05-05
        task N1   photograph on A
        task D1   disbud    on A   after leaf-out 2026   done 2026-05-20
        task R1   repot     on A   after R9

        """;

    [Theory]
    [InlineData("W1", "From 2026-11-01 to 2026-11-30, 30 days.", "in late autumn 2026: 1 to 30 November 2026.", "Waiting on it: L1, U1.")]
    [InlineData("U1", "6 to 8 weeks after W1: W1 is due 1 to 30 November 2026.", "It waits on W1.")]
    [InlineData("L1", "until U1: U1 is due 13 December 2026 to 25 January 2027.")]
    [InlineData("P1", "after leaf-out 2027: begins 12 April to 10 May 2027. By common practice for a tree that drops its leaves", "before 2027-07: 1 to 31 July 2027.")]
    [InlineData("F1", "from leaf-out 2027 to leaf-fall 2027: leaf-out 2027 begins 12 April to 10 May 2027.", "from leaf-out 2027 to leaf-fall 2027: leaf-fall 2027 begins ")]
    [InlineData("M1", "On 2027-05-05.")]
    [InlineData("D1", "Done on 2026-05-20.")]
    [InlineData("N1", "It has no date: no time is written down.")]
    [InlineData("R1", "It has no date: waits on a task that is not written down.", "after R9: there is no task R9.")]
    public void A_task_says_what_each_thing_that_is_said_of_its_time_comes_to(string task, params string[] expected)
    {
        var known = Explainer.At(Read(Year), Year.IndexOf($"task {task} ", StringComparison.Ordinal) + 5)!;
        Assert.Equal($"Task {task}", known.Title);
        Assert.All(expected, line => Assert.Contains(known.Lines, said => said.StartsWith(line, StringComparison.Ordinal)));
    }

    [Fact]
    public void A_wire_says_what_to_cut_for_each_of_its_trunks()
    {
        // 150 mm at 50° are 150 / cos 50° = 233.4 mm.
        var wired = Year.Replace("in late autumn 2026\n", "in late autumn 2026 with aluminium 6 mm, span 50 to 200 mm\n", StringComparison.Ordinal);
        var known = Explainer.At(Read(wired), wired.IndexOf("task W1", StringComparison.Ordinal) + 5)!;
        var said = Assert.Single(known.Lines, line => line.StartsWith("On A: ", StringComparison.Ordinal));
        Assert.StartsWith("On A: Aluminium of 6 mm, ", said, StringComparison.Ordinal);
        Assert.Contains("233 mm round the trunk from 50 mm to 200 mm", said, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_done_no_longer_follows_from_its_plan()
    {
        var known = Explainer.At(Read(Year), Year.IndexOf("task D1", StringComparison.Ordinal) + 5)!;
        Assert.DoesNotContain(known.Lines, line => line.Contains("leaf-out", StringComparison.Ordinal));
    }

    [Fact]
    public void A_stage_that_was_seen_is_said_to_have_been()
    {
        var seen = Year + "seen leaf-out 2027-04-22\n";
        var known = Explainer.At(Read(seen), seen.IndexOf("task P1", StringComparison.Ordinal) + 5)!;
        Assert.Contains("after leaf-out 2027: begins 22 April 2027. It was seen on 22 April 2027.", known.Lines);
    }

    [Fact]
    public void Without_frosts_a_stage_says_that_nobody_tells_when_it_comes()
    {
        var bare = string.Join('\n', Year.Split('\n').Where(line => !line.StartsWith("site", StringComparison.Ordinal)));
        var known = Explainer.At(Read(bare), bare.IndexOf("task P1", StringComparison.Ordinal) + 5)!;
        Assert.Contains("after leaf-out 2027: the site or the species does not tell when leaf-out 2027 comes.", known.Lines);
    }

    [Fact]
    public void Behind_a_task_stands_when_it_is_due_unless_its_line_says_the_day_or_it_is_done()
    {
        var notes = InLineNotes.Of(Read(Year), new TextSpan(0, Year.Length)).ToDictionary(note => Year.Substring(note.Span.Start, 7), note => note.Text);
        Assert.Equal("1 to 30 November 2026", notes["task W1"]);
        Assert.Equal("13 December 2026 to 25 January 2027", notes["task U1"]);
        Assert.StartsWith("6 times, ", notes["task L1"], StringComparison.Ordinal);
        Assert.DoesNotContain("task M1", notes.Keys);
        Assert.DoesNotContain("task D1", notes.Keys);
        Assert.DoesNotContain("task N1", notes.Keys);
        Assert.DoesNotContain("task R1", notes.Keys);
    }

    private static Assessment Read(string text) => Assessment.Of("a.grove", SourceText.FromText(text), new NoFiles(), cancellation: TestContext.Current.CancellationToken);
}
