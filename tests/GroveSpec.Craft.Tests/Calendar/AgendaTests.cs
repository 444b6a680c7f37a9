using CsCheck;
using GroveSpec.Craft.Calendar;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Sites;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;
using NodaTime;
using Xunit;

namespace GroveSpec.Craft.Tests.Calendar;

public sealed class AgendaTests
{
    private static readonly Origin Here = new("test");

    [Theory]
    [InlineData("2026-10-14", "2026-10-20", "2026-10-21", AgendaTerm.Overdue)]
    [InlineData("2026-10-14", "2026-10-21", "2026-10-21", AgendaTerm.Now)]
    [InlineData("2026-10-21", "2026-10-30", "2026-10-21", AgendaTerm.Now)]
    [InlineData("2026-10-22", "2026-10-30", "2026-10-21", AgendaTerm.Month)]
    [InlineData("2026-10-31", "2026-11-30", "2026-10-21", AgendaTerm.Month)]
    [InlineData("2026-11-01", "2026-11-30", "2026-10-21", AgendaTerm.Season)]
    [InlineData("2026-11-30", "2026-12-30", "2026-10-21", AgendaTerm.Season)]
    [InlineData("2026-12-01", "2026-12-30", "2026-10-21", AgendaTerm.Year)]
    [InlineData("2026-12-31", "2027-01-30", "2026-10-21", AgendaTerm.Year)]
    [InlineData("2027-01-01", "2027-01-30", "2026-10-21", AgendaTerm.Later)]
    [InlineData("2027-02-28", "2027-03-30", "2026-12-21", AgendaTerm.Season)]
    [InlineData("2027-03-01", "2027-03-30", "2026-12-21", AgendaTerm.Later)]
    public void A_window_belongs_to_the_nearest_term_it_begins_in(string from, string to, string day, AgendaTerm expected)
    {
        var entry = Assert.Single(Agenda.Of(Planting(North(), Task("T", From(Day(from), Day(to)))), Day(day)).Entries);
        Assert.Equal(expected, entry.Term);
        Assert.Equal(new TaskWindow(Day(from), Day(to)), entry.Next);
    }

    [Fact]
    public void The_season_of_a_day_turns_over_with_the_hemisphere()
    {
        var north = Agenda.Of(Planting(North()), new(2026, 12, 21)).Season!.Value;
        var south = Agenda.Of(Planting(South()), new(2026, 12, 21)).Season!.Value;
        Assert.Equal((Season.Winter, 2027, new DateInterval(new(2026, 12, 1), new(2027, 2, 28))), (north.Season, north.Year, north.Days));
        Assert.Equal((Season.Summer, 2027, new DateInterval(new(2026, 12, 1), new(2027, 2, 28))), (south.Season, south.Year, south.Days));
    }

    [Fact]
    public void Overdue_work_says_by_how_many_days_and_work_that_is_done_is_not_overdue()
    {
        var late = Task("T", From(new(2026, 3, 1), new(2026, 3, 31)));
        var entry = Agenda.Of(Planting(North(), late), new(2026, 4, 10)).Entries[0];
        Assert.Equal((AgendaTerm.Overdue, 10), (entry.Term, entry.DaysOver));
        Assert.Equal(AgendaTerm.Done, Agenda.Of(Planting(North(), Done(late, new(2026, 4, 5))), new(2026, 4, 10)).Entries[0].Term);
    }

    [Fact]
    public void What_is_marked_as_done_later_is_not_done_yet()
    {
        var work = Planting(North(), Done(Task("T", From(new(2026, 3, 1), new(2026, 3, 31))), new(2026, 3, 20)));
        Assert.Equal(AgendaTerm.Month, Agenda.Of(work, new(2026, 3, 19)).Entries[0].Term);
        Assert.Equal(AgendaTerm.Done, Agenda.Of(work, new(2026, 3, 20)).Entries[0].Term);
    }

    [Fact]
    public void Turns_that_are_over_are_counted_and_the_next_one_is_told()
    {
        var feed = Planting(North(), Task("F", Every(2, TimeUnit.Weeks), From(new(2027, 5, 1), new(2027, 6, 30))));
        var entry = Agenda.Of(feed, new(2027, 5, 20)).Entries[0];
        Assert.Equal((AgendaTerm.Overdue, 2, 19, new TaskWindow(new LocalDate(2027, 5, 29), new LocalDate(2027, 5, 29))), (entry.Term, entry.TurnsMissed, entry.DaysOver, entry.Next));

        // On the very day of a turn it is due, not missed.
        var first = Agenda.Of(feed, new(2027, 5, 1)).Entries[0];
        Assert.Equal((AgendaTerm.Now, 0), (first.Term, first.TurnsMissed));

        // Marked as done, the turns before are no longer asked for.
        var marked = Planting(North(), Done(feed.Tasks[0], new(2027, 5, 15)));
        Assert.Equal(AgendaTerm.Month, Agenda.Of(marked, new(2027, 5, 20)).Entries[0].Term);
    }

    [Fact]
    public void Looking_after_wire_is_over_once_the_wire_is_off()
    {
        var wire = Done(Task("W", From(new(2026, 11, 1), new(2026, 11, 30))), new(2026, 11, 8));
        var look = Task("L", Every(2, TimeUnit.Weeks), new TimeClause.Until(new Moment.OfTask("U")) { Origin = Here }) with { Target = new TaskTarget.OfTask(new("W", Here)) };
        var off = Task("U", new TimeClause.Offset(6, 8, TimeUnit.Weeks, IsAfter: true, "W") { Origin = Here });
        Assert.Equal("Overdue Month", Terms(Planting(North(), wire, look, off), new(2026, 12, 1), "L", "U"));
        Assert.Equal("Done Done", Terms(Planting(North(), wire, look, Done(off, new(2026, 12, 28))), new(2027, 1, 2), "L", "U"));

        // Seen from before the wire came off, it goes on.
        Assert.Equal("Overdue Season", Terms(Planting(North(), wire, look, Done(off, new(2027, 1, 28))), new(2026, 12, 1), "L", "U"));
    }

    [Fact]
    public void What_follows_from_overdue_work_is_said_to_wait_on_it()
    {
        var wire = Task("W", From(new(2026, 11, 1), new(2026, 11, 30)));
        var off = Task("U", new TimeClause.Offset(6, 8, TimeUnit.Weeks, IsAfter: true, "W") { Origin = Here });
        var before = Task("B", new TimeClause.Before(new Moment.OfTask("W")) { Origin = Here }, In(new Moment.Year(2026)));
        var entries = Agenda.Of(Planting(North(), wire, off, before), new(2027, 3, 1)).Entries;
        Assert.Equal(["W"], entries.Single(entry => entry.Dated.Task.Name == "U").HeldUpBy);
        Assert.Empty(entries.Single(entry => entry.Dated.Task.Name == "W").HeldUpBy);
        Assert.Empty(entries.Single(entry => entry.Dated.Task.Name == "B").HeldUpBy);
        var inTime = Agenda.Of(Planting(North(), wire, off), new(2026, 11, 30)).Entries;
        Assert.All(inTime, entry => Assert.Empty(entry.HeldUpBy));
    }

    [Fact]
    public void A_branch_left_to_grow_is_never_overdue()
    {
        var branch = Task("S", From(new(2025, 5, 1), new(2026, 11, 1))) with { Kind = new(TaskKind.Sacrifice, Here) };
        Assert.Equal("Now", Terms(Planting(North(), branch), new(2026, 11, 1), "S"));
        Assert.Equal("Done", Terms(Planting(North(), branch), new(2026, 11, 2), "S"));
    }

    [Fact]
    public void Slack_is_what_lies_between_the_earliest_and_the_latest_day()
    {
        Assert.Equal(30, TaskDates.Of(Planting(North(), Task("T", From(new(2026, 3, 1), new(2026, 3, 31)))))[0].Slack);
        Assert.Equal(0, TaskDates.Of(Planting(North(), Task("T", In(new Moment.Day(new(2026, 3, 1))))))[0].Slack);
        Assert.Null(TaskDates.Of(Planting(North(), Task("T", new TimeClause.After(new Moment.Day(new(2026, 3, 1))) { Origin = Here })))[0].Slack);
        Assert.Null(TaskDates.Of(Planting(North(), Done(Task("T", From(new(2026, 3, 1), new(2026, 3, 31))), new(2026, 3, 5))))[0].Slack);
        Assert.Null(TaskDates.Of(Planting(North(), Task("T", Every(1, TimeUnit.Weeks), From(new(2026, 3, 1), new(2026, 3, 31)))))[0].Slack);
    }

    [Fact]
    public void Without_a_day_work_is_sorted_by_date_alone()
    {
        var work = Planting(North(), Task("late", In(new Moment.Year(2030))), Task("none"), Task("soon", In(new Moment.Year(2020))), Done(Task("done"), new(2019, 1, 1)));
        Assert.Equal(["soon Later", "late Later", "none Undated", "done Done"], Agenda.Of(work, null).Entries.Select(entry => $"{entry.Dated.Task.Name} {entry.Term}"));
    }

    [Fact]
    public void Every_task_stands_in_it_once_in_the_order_of_terms_and_days()
    {
        var day = new LocalDate(2027, 6, 15);
        var gen = Gen.Select(Gen.Int[-500, 500], Gen.Int[0, 200], Gen.Int[0, 4], Gen.Int[0, 40]);
        gen.Array[0, 12].Sample(drawn =>
        {
            var tasks = drawn.Select((one, index) =>
            {
                var (begin, length, kind, every) = one;
                var span = From(day.PlusDays(begin), day.PlusDays(begin + length));
                return kind switch
                {
                    0 => Task($"T{index}", span),
                    1 => Done(Task($"T{index}", span), day.PlusDays(begin)),
                    2 => Task($"T{index}", span, Every(1 + every, TimeUnit.Days)),
                    3 => Task($"T{index}"),
                    _ => Task($"T{index}", span) with { Kind = new(TaskKind.Sacrifice, Here) },
                };
            }).ToArray();
            var entries = Agenda.Of(Planting(North(), tasks), day).Entries;
            Assert.Equal(tasks.Select(task => task.Name).Order(StringComparer.Ordinal), entries.Select(entry => entry.Dated.Task.Name).Order(StringComparer.Ordinal));
            Assert.Equal(entries.Select(entry => entry.Term).Order(), entries.Select(entry => entry.Term));
            foreach (var entry in entries)
            {
                Assert.Equal(entry.Dated.Window is null, entry.Term == AgendaTerm.Undated);
                Assert.Equal(entry.Term == AgendaTerm.Overdue, entry.DaysOver > 0);
                Assert.Equal(entry.Dated.Repeats.Count(turn => turn < day), entry.TurnsMissed);
            }
        });
    }

    private static string Terms(Planting planting, LocalDate day, params string[] names)
    {
        var entries = Agenda.Of(planting, day).Entries.ToDictionary(entry => entry.Dated.Task.Name);
        return string.Join(' ', names.Select(name => entries[name].Term));
    }

    private static LocalDate Day(string iso) => NodaTime.Text.LocalDatePattern.Iso.Parse(iso).Value;

    private static TimeClause.During In(Moment moment) => new(moment) { Origin = Here };

    private static TimeClause.Every Every(int count, TimeUnit unit) => new(count, unit) { Origin = Here };

    private static TimeClause.FromTo From(LocalDate start, LocalDate end) => new(new Moment.Day(start), new Moment.Day(end)) { Origin = Here };

    private static PlantingTask Task(string name, params TimeClause[] times) =>
        new() { Name = name, Origin = Here, Kind = new(TaskKind.Prune, Here), Times = [.. times] };

    private static PlantingTask Done(PlantingTask task, LocalDate day) => task with { Done = [new(day, Here)] };

    private static Planting Planting(Site? site, params PlantingTask[] tasks) => new() { Site = site, Tasks = [.. tasks] };

    private static Site North() => new() { Origin = Here, Latitude = new(new Angle(54.3), Here), LastFrost = new(new(5, 2), Here), FirstFrost = new(new(11, 9), Here) };

    private static Site South() => new() { Origin = Here, Latitude = new(new Angle(-41), Here), LastFrost = new(new(9, 10), Here), FirstFrost = new(new(5, 20), Here) };
}
