using CsCheck;
using GroveSpec.Binding;
using GroveSpec.Binding.Use;
using GroveSpec.Craft.Calendar;
using GroveSpec.Editing.Placing;
using GroveSpec.Syntax.Text;
using NodaTime;
using Xunit;

namespace GroveSpec.Editing.Tests;

/// <summary>Days that are moved by hand. The bands of stages are common practice, counted from the last frost on 3 May and the first on 1 November.</summary>
public sealed class TaskPlacingTests
{
    private const string Head = """
        planting  "Quiet corner"
        habit     group
        container oval 360 x 240 x 40 mm
        site      latitude 51 N, zone 8b, last frost 3 May, first frost 1 November
        trunk A   at -58, -22 mm   diameter 33 mm   height 410 mm
        task W1   wire on A in late autumn 2026

        """;

    [Theory]
    [InlineData("on 2027-05-05", 7, "on 2027-05-12")]
    [InlineData("on 2027-05-05", -5, "on 2027-04-30")]
    [InlineData("from 2027-05-05 to 2027-06-05", 30, "from 2027-06-04 to 2027-07-05")]
    [InlineData("from 2027-05-05 to 2027-06-05 \"a note\"", 1, "from 2027-05-06 to 2027-06-06 \"a note\"")]
    [InlineData("in late autumn 2026", 7, "from 2026-11-08 to 2026-12-07")]
    [InlineData("in 2027-02", 1, "from 2027-02-02 to 2027-03-01")]
    [InlineData("after 2027-05-05", 2, "after 2027-05-07")]
    [InlineData("before 2027-05-05", -2, "before 2027-05-03")]
    [InlineData("after 2027-05-05, before 2027-06-01", 10, "after 2027-05-15, before 2027-06-11")]
    [InlineData("every 2 weeks, from 2027-05-05 to 2027-06-05", 3, "every 2 weeks, from 2027-05-08 to 2027-06-08")]
    [InlineData("every 2 weeks, from 2027-05-05, until 2027-06-05", 3, "every 2 weeks, from 2027-05-08, until 2027-06-08")]
    [InlineData("in early spring 2027, after W1", 3, "from 2027-03-04 to 2027-04-03, after W1")]
    public void The_clauses_that_set_days_are_written_with_the_days_moved(string time, int days, string expected)
    {
        var (placement, moved) = Move($"task P1 prune on A {time}\n", days);
        Assert.False(placement.IsRefused, placement.Says);
        Assert.EndsWith($"task P1 prune on A {expected}\n", moved, StringComparison.Ordinal);
        Assert.StartsWith(Head, moved, StringComparison.Ordinal);
    }

    [Fact]
    public void What_followed_the_trees_year_follows_the_calendar_then_and_that_is_said()
    {
        // Leaf-out from 21 days before the last frost to 7 after it: surely begun on 10 May.
        var (placement, moved) = Move("task P1 prune on A after leaf-out 2027\n", 5);
        Assert.EndsWith("task P1 prune on A after 2027-05-14\n", moved, StringComparison.Ordinal);
        Assert.EndsWith("by the calendar now and no longer by the tree’s year", placement.Says, StringComparison.Ordinal);
        Assert.Equal(new LocalDate(2027, 5, 15), TaskDates.Of(Read(moved).Planting)[^1].Window!.Value.Earliest);
    }

    [Theory]
    [InlineData("task P1 unwire of W1 6 to 8 weeks after W1", "P1 follows other work")]
    [InlineData("task P1 prune on A", "P1 says no time yet")]
    [InlineData("task P1 prune on A on 2027-05-05 done 2027-05-07", "P1 is done")]
    [InlineData("task P1 feed on A every 2 weeks, from 2027-05-05 done 2027-05-07", "P1 was done already")]
    [InlineData("task P1 sacrifice on A in spring 2027", "P1 is left to grow")]
    [InlineData("task P2 prune on A on 2027-05-05", "There is no task P1")]
    public void What_cannot_be_moved_is_left_with_a_reason(string line, string reason)
    {
        var (placement, moved) = Move(line + "\n", 5);
        Assert.True(placement.IsRefused);
        Assert.StartsWith(reason, placement.Says, StringComparison.Ordinal);
        Assert.Equal(Head + line + "\n", moved);
    }

    [Fact]
    public void No_days_change_nothing()
    {
        var (placement, moved) = Move("task P1 prune on A in spring 2027\n", 0);
        Assert.Empty(placement.Edits);
        Assert.False(placement.IsRefused);
        Assert.EndsWith("in spring 2027\n", moved, StringComparison.Ordinal);
    }

    [Fact]
    public void The_window_is_moved_by_just_as_many_days_whatever_was_said()
    {
        string[] times = ["on 2027-05-05", "from 2027-05-05 to 2027-06-05", "in late autumn 2026", "in 2027-02", "after leaf-out 2027", "before leaf-fall 2027", "from leaf-out 2027 to leaf-fall 2027", "in midsummer 2028"];
        Gen.Select(Gen.Int[0, times.Length - 1], Gen.Int[-400, 400]).Sample(
            drawn =>
            {
                var (index, days) = drawn;
                var line = $"task P1 prune on A {times[index]}\n";
                var before = TaskDates.Of(Read(Head + line).Planting)[^1].Window!.Value;
                var after = TaskDates.Of(Read(Move(line, days).Text).Planting)[^1].Window!.Value;
                Assert.Equal(before.Earliest?.PlusDays(days), after.Earliest);
                Assert.Equal(before.Latest?.PlusDays(days), after.Latest);
            },
            iter: 300);
    }

    private static (Placement Placement, string Text) Move(string line, int days)
    {
        var text = Head + line;
        var placement = TaskPlacing.Move(Read(text), "P1", days);
        var moved = text;
        foreach (var edit in placement.Edits.OrderByDescending(edit => edit.Place.Span.Start))
        {
            moved = moved[..edit.Place.Span.Start] + edit.NewText + moved[edit.Place.Span.End..];
        }

        return (placement, moved);
    }

    private static Assessment Read(string text) => Assessment.Of("a.grove", SourceText.FromText(text), new NoFiles());
}
