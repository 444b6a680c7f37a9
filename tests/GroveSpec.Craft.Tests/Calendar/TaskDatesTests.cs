using CsCheck;
using GroveSpec.Craft.Calendar;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Sites;
using GroveSpec.Model.Species;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;
using NodaTime;
using Xunit;

namespace GroveSpec.Craft.Tests.Calendar;

public sealed class TaskDatesTests
{
    private static readonly Origin Here = new("test");

    [Fact]
    public void A_day_a_month_a_year_and_a_season_each_give_their_own_days()
    {
        Check([In(new Moment.Day(new(2027, 3, 4)))], "2027-03-04 to 2027-03-04");
        Check([In(new Moment.Month(new(2028, 2)))], "2028-02-01 to 2028-02-29");
        Check([In(new Moment.Year(2027))], "2027-01-01 to 2027-12-31");
        Check([In(new Moment.SeasonOfYear(SeasonPart.Late, Season.Autumn, 2026))], "2026-11-01 to 2026-11-30");
        Check([In(new Moment.SeasonOfYear(SeasonPart.Whole, Season.Winter, 2028))], "2027-12-01 to 2028-02-29");
    }

    [Fact]
    public void Seasons_turn_over_with_the_hemisphere()
    {
        var clauses = new[] { In(new Moment.SeasonOfYear(SeasonPart.Late, Season.Autumn, 2026)) };
        Assert.Equal("2026-05-01 to 2026-05-31", Said(TaskDates.Of(Planting(South(), Task("W", clauses)))[0]));
    }

    [Fact]
    public void A_stage_is_counted_from_the_frosts_of_the_site_and_one_that_was_seen_overrides_that_year()
    {
        // Last frost 2 May; common practice for a tree that drops its leaves: leaf-out from 21 days before to 7 after.
        var after = new[] { new TimeClause.After(new Moment.StageOfYear(Stage.LeafOut, 2027)) { Origin = Here } };
        Check(after, "2027-05-09 to open");
        var noted = Planting(North(), Task("R", after)) with { Seen = [new SeenStage(Stage.LeafOut, new(2027, 4, 22), Here)] };
        Assert.Equal("2027-04-22 to open", Said(TaskDates.Of(noted)[0]));
        var otherYear = noted with { Seen = [new SeenStage(Stage.LeafOut, new(2026, 4, 22), Here)] };

        // It came three days before the middle of its band, 25 April; of one year's notes half of that is taken, two whole days.
        Assert.Equal("2027-05-07 to open", Said(TaskDates.Of(otherYear)[0]));
    }

    [Fact]
    public void Stages_of_the_south_fall_in_its_own_spring_and_autumn()
    {
        // Last frost 10 September, first frost 20 May.
        var year = TreeYear.Of(Planting(South()), null);
        Assert.Equal(new DateInterval(new(2027, 8, 20), new(2027, 9, 17)), year.Onset(Stage.LeafOut, 2027));
        Assert.Equal(new DateInterval(new(2027, 5, 13), new(2027, 6, 10)), year.Onset(Stage.LeafFall, 2027));

        // The solstice is on 22 December 2027 at 02:42 UTC: computed with astronomy-engine.
        Assert.Equal(new DateInterval(new(2027, 12, 19), new(2027, 12, 25)), year.Onset(Stage.Midsummer, 2027));
    }

    [Fact]
    public void The_bands_of_a_profile_come_before_those_of_common_practice()
    {
        var profile = new SpeciesProfile
        {
            Name = "late-elm",
            Origin = Here,
            Stages = [new StageBand(Stage.LeafOut, FrostAnchor.LastFrost, 10, 20, "common practice", Here)],
        };
        var planting = Planting(North(), Task("R", In(new Moment.StageOfYear(Stage.LeafOut, 2027)))) with { Species = new("late-elm", Here), Profiles = [profile] };
        Assert.Equal(new LocalDate(2027, 5, 12), TaskDates.Of(planting)[0].Window?.Earliest);
    }

    [Fact]
    public void An_offset_counts_from_both_ends_of_the_task_it_follows()
    {
        var dated = TaskDates.Of(Planting(
            North(),
            Task("U", new TimeClause.Offset(6, 8, TimeUnit.Weeks, IsAfter: true, "W") { Origin = Here }),
            Task("W", In(new Moment.SeasonOfYear(SeasonPart.Late, Season.Autumn, 2026))),
            Task("S", new TimeClause.Offset(1, 2, TimeUnit.Months, IsAfter: false, "W") { Origin = Here })));
        Assert.Equal("2026-12-13 to 2027-01-25", Said(dated[0]));
        Assert.Equal("2026-09-01 to 2026-10-30", Said(dated[2]));
        Assert.Equal(["W"], dated[0].WaitsOn);
    }

    [Fact]
    public void A_done_date_corrects_what_follows_from_it()
    {
        var wire = Task("W", In(new Moment.SeasonOfYear(SeasonPart.Late, Season.Autumn, 2026))) with { Done = [new(new(2026, 11, 20), Here)] };
        var dated = TaskDates.Of(Planting(North(), wire, Task("U", new TimeClause.Offset(6, 8, TimeUnit.Weeks, IsAfter: true, "W") { Origin = Here })));
        Assert.Equal("2026-11-20 to 2026-11-20", Said(dated[0]));
        Assert.Equal("2027-01-01 to 2027-01-15", Said(dated[1]));
    }

    [Fact]
    public void All_that_is_said_holds_at_once()
    {
        // Bud-break of such a tree comes from 35 days before the last frost of 2 May on: from 28 March.
        Check(
            [In(new Moment.SeasonOfYear(SeasonPart.Early, Season.Spring, 2028)), new TimeClause.Before(new Moment.StageOfYear(Stage.BudBreak, 2028)) { Origin = Here }],
            "2028-03-01 to 2028-03-27");
        Check(
            [In(new Moment.Month(new(2028, 3))), new TimeClause.After(new Moment.Day(new(2028, 3, 9))) { Origin = Here }],
            "2028-03-10 to 2028-03-31");
        Check(
            [In(new Moment.Month(new(2028, 3))), new TimeClause.Before(new Moment.Day(new(2028, 3, 1))) { Origin = Here }],
            "Contradiction");
    }

    [Fact]
    public void Repeats_run_from_their_start_to_their_end_both_included()
    {
        var pinch = TaskDates.Of(Planting(North(), Task("P", Every(3, TimeUnit.Weeks), From(new(2027, 6, 1), new(2027, 7, 13)))))[0];
        Assert.Equal([new LocalDate(2027, 6, 1), new(2027, 6, 22), new(2027, 7, 13)], pinch.Repeats);
        Assert.False(pinch.RepeatsGoOn);
        Assert.Equal("2027-06-01 to 2027-07-13", Said(pinch));
    }

    [Fact]
    public void Repeats_without_a_start_begin_one_turn_after_the_task_they_look_after()
    {
        var dated = TaskDates.Of(Planting(
            North(),
            Task("W", In(new Moment.Day(new(2026, 11, 1)))),
            Task("L", Every(2, TimeUnit.Weeks), new TimeClause.Until(new Moment.OfTask("U")) { Origin = Here }) with { Target = new TaskTarget.OfTask(new("W", Here)) },
            Task("U", In(new Moment.Day(new(2026, 12, 13))))));
        Assert.Equal([new LocalDate(2026, 11, 15), new(2026, 11, 29), new(2026, 12, 13)], dated[1].Repeats);
        Assert.Equal(["U", "W"], dated[1].WaitsOn);
    }

    [Fact]
    public void Repeats_go_on_from_the_last_time_they_were_done()
    {
        var feed = Task("F", Every(1, TimeUnit.Months), From(new(2027, 5, 1), new(2027, 8, 1))) with { Done = [new(new(2027, 5, 1), Here), new(new(2027, 6, 5), Here)] };
        var dated = TaskDates.Of(Planting(North(), feed))[0];
        Assert.Equal([new LocalDate(2027, 7, 5)], dated.Repeats);
        Assert.Equal("2027-05-01 to 2027-07-05", Said(dated));
    }

    [Fact]
    public void A_months_end_stays_a_months_end()
    {
        var dated = TaskDates.Of(Planting(North(), Task("M", Every(1, TimeUnit.Months), From(new(2027, 1, 31), new(2027, 4, 30)))))[0];
        Assert.Equal([new LocalDate(2027, 1, 31), new(2027, 2, 28), new(2027, 3, 31), new(2027, 4, 30)], dated.Repeats);
    }

    [Fact]
    public void Endless_repeats_are_cut_and_say_so()
    {
        var daily = TaskDates.Of(Planting(North(), Task("D", Every(1, TimeUnit.Days), From(new(2027, 1, 1), new(9990, 1, 1)))))[0];
        Assert.Equal(TaskDates.MostRepeats, daily.Repeats.Length);
        Assert.True(daily.RepeatsGoOn);
    }

    [Fact]
    public void A_circle_and_what_hangs_on_it_have_no_date()
    {
        var dated = TaskDates.Of(Planting(North(), Task("A", After("B")), Task("B", After("C")), Task("C", After("A")), Task("D", After("A")), Task("E", After("E")), Task("F", After("nobody"))));
        Assert.Equal(
            [UndatedReason.Circle, UndatedReason.Circle, UndatedReason.Circle, UndatedReason.WaitsOnUndated, UndatedReason.Circle, UndatedReason.UnknownTask],
            dated.Select(task => task.Undated!.Value));
    }

    [Fact]
    public void What_cannot_be_dated_says_why()
    {
        Check([], "NoTime");
        Check([Every(2, TimeUnit.Weeks)], "NoStart");
        Check([new TimeClause.Offset(1, 1, TimeUnit.Days, IsAfter: true, "nobody") { Origin = Here }], "UnknownTask");
        Check([In(new Moment.Year(99999))], "OutOfCalendar");
        Check([From(new(2027, 5, 1), new(2027, 4, 1))], "Contradiction");
        var bare = Planting(null, Task("T", In(new Moment.StageOfYear(Stage.LeafFall, 2027))));
        Assert.Equal("UnknownStage", Said(TaskDates.Of(bare)[0]));
        var far = Planting(North(), Task("W", In(new Moment.Day(new(2027, 1, 1)))), Task("T", new TimeClause.Offset(1, int.MaxValue, TimeUnit.Years, IsAfter: true, "W") { Origin = Here }));
        Assert.Equal("OutOfCalendar", Said(TaskDates.Of(far)[1]));
    }

    [Fact]
    public void Only_a_branch_left_to_grow_is_growing_work()
    {
        var sacrifice = Task("S", From(new(2027, 5, 1), new(2029, 10, 1))) with { Kind = new(TaskKind.Sacrifice, Here) };
        Assert.True(TaskDates.Of(Planting(North(), sacrifice))[0].IsGrowing);
        Assert.False(TaskDates.Of(Planting(North(), Task("P", From(new(2027, 5, 1), new(2027, 6, 1)))))[0].IsGrowing);
    }

    [Fact]
    public void A_chain_of_a_hundred_thousand_tasks_is_dated_without_a_deep_stack()
    {
        var tasks = Enumerable.Range(0, 100_000).Select(index => index == 0
            ? Task("t0", In(new Moment.Day(new(2027, 1, 1))))
            : Task($"t{index}", new TimeClause.Offset(0, 0, TimeUnit.Days, IsAfter: true, $"t{index - 1}") { Origin = Here })).Reverse().ToArray();
        Assert.All(TaskDates.Of(Planting(North(), tasks)), task => Assert.Equal("2027-01-01 to 2027-01-01", Said(task)));
    }

    [Fact]
    public void Any_tasks_end_with_a_window_or_a_reason()
    {
        var moment = Gen.OneOf(
            Gen.Select(Gen.Int[1, 9999], Gen.Int[1, 12], (year, month) => (Moment)new Moment.Month(new(year, month))),
            Gen.Int[-5, 12000].Select(year => (Moment)new Moment.Year(year)),
            Gen.Select(Gen.Int[0, 6], Gen.Int[-1, 10001], (stage, year) => (Moment)new Moment.StageOfYear((Stage)stage, year)),
            Gen.Select(Gen.Int[0, 3], Gen.Int[2000, 2040], (season, year) => (Moment)new Moment.SeasonOfYear(SeasonPart.Mid, (Season)season, year)),
            Gen.Int[0, 12].Select(other => (Moment)new Moment.OfTask($"t{other}")));
        var clause = Gen.OneOf(
            moment.Select(at => (TimeClause)In(at)),
            moment.Select(at => (TimeClause)new TimeClause.After(at) { Origin = Here }),
            moment.Select(at => (TimeClause)new TimeClause.Before(at) { Origin = Here }),
            moment.Select(at => (TimeClause)new TimeClause.Until(at) { Origin = Here }),
            Gen.Select(moment, moment, (from, to) => (TimeClause)new TimeClause.FromTo(from, to) { Origin = Here }),
            Gen.Select(Gen.Int[1, 1000], Gen.Int[0, 3], (count, unit) => (TimeClause)Every(count, (TimeUnit)unit)),
            Gen.Select(Gen.Int, Gen.Int, Gen.Int[0, 3], Gen.Int[0, 12], (least, most, unit, other) => (TimeClause)new TimeClause.Offset(least, most, (TimeUnit)unit, most % 2 == 0, $"t{other}") { Origin = Here }));
        Gen.Select(clause.Array[0, 3].Array[1, 12], Gen.Bool).Sample((lists, south) =>
        {
            var dated = TaskDates.Of(Planting(south ? South() : North(), [.. lists.Select((clauses, index) => Task($"t{index}", clauses))]));
            Assert.All(dated, task =>
            {
                Assert.NotEqual(task.Window is null, task.Undated is null);
                Assert.True(task.Window is not { Earliest: { } earliest, Latest: { } latest } || earliest <= latest);
                Assert.True(task.Repeats.Length <= TaskDates.MostRepeats);
            });
        });
    }

    [Fact]
    public void A_span_that_starts_with_a_task_has_an_open_start_where_that_one_has_and_bounds_it_by_its_own_end()
    {
        var limit = new TimeClause.Until(new Moment.Year(2030)) { Origin = Here };
        var span = new TimeClause.FromTo(new Moment.OfTask("limit"), new Moment.Year(2026)) { Origin = Here };
        var endless = new TimeClause.FromTo(new Moment.OfTask("limit"), null) { Origin = Here };

        var dated = TaskDates.Of(Planting(North(), Task("limit", limit), Task("span", span), Task("endless", endless)));

        Assert.Equal("open to 2026-12-31", Said(dated[0]));
        Assert.Equal("open to 2026-12-31", Said(dated[1]));
        Assert.Equal("WaitsOnUndated", Said(dated[2]));
    }

    [Fact]
    public void What_must_come_before_a_task_narrows_that_task_as_well()
    {
        var dated = TaskDates.Of(Planting(
            North(),
            Task("W", In(new Moment.Month(new(2027, 5)))),
            Task("U", new TimeClause.Offset(6, 8, TimeUnit.Weeks, IsAfter: true, "W") { Origin = Here }, new TimeClause.Before(new Moment.Day(new(2027, 7, 1))) { Origin = Here }),
            Task("S", new TimeClause.Before(new Moment.OfTask("W")) { Origin = Here }, new TimeClause.After(new Moment.Day(new(2027, 5, 9))) { Origin = Here })));
        Assert.Equal(["2027-05-10 to 2027-05-19", "2027-06-21 to 2027-06-30", "2027-05-10 to 2027-05-19"], dated.Select(Said));
    }

    [Fact]
    public void One_task_may_be_bounded_from_both_sides_by_another()
    {
        var dated = TaskDates.Of(Planting(
            North(),
            Task("A", In(new Moment.Month(new(2027, 5))), new TimeClause.Before(new Moment.OfTask("B")) { Origin = Here }),
            Task("B", new TimeClause.Offset(2, 3, TimeUnit.Weeks, IsAfter: true, "A") { Origin = Here })));
        Assert.Equal(["2027-05-01 to 2027-05-31", "2027-05-15 to 2027-06-21"], dated.Select(Said));
    }

    [Fact]
    public void A_month_after_any_of_the_last_days_of_January_is_the_last_of_February()
    {
        var dated = TaskDates.Of(Planting(
            North(),
            Task("A", In(new Moment.Month(new(2027, 1)))),
            Task("B", new TimeClause.Offset(1, 1, TimeUnit.Months, IsAfter: true, "A") { Origin = Here }, new TimeClause.After(new Moment.Day(new(2027, 2, 27))) { Origin = Here })));
        Assert.Equal(["2027-01-28 to 2027-01-31", "2027-02-28 to 2027-02-28"], dated.Select(Said));
    }

    [Fact]
    public void What_cannot_hold_together_is_told_with_each_statement_and_the_rest_keeps_its_days()
    {
        var reckoning = TaskDates.Reckon(Planting(
            North(),
            Task("W", In(new Moment.Day(new(2026, 11, 1)))) with { Done = [new(new(2026, 11, 20), new("done"))] },
            Task("U", new TimeClause.Offset(6, 8, TimeUnit.Weeks, IsAfter: true, "W") { Origin = new("offset") }),
            Task("M", new TimeClause.After(new Moment.OfTask("U")) { Origin = new("after") }, new TimeClause.Before(new Moment.Day(new(2027, 1, 1))) { Origin = new("before") }),
            Task("F", In(new Moment.Month(new(2027, 5)))),
            Task("H", After("M"))));
        var conflict = Assert.Single(reckoning.Conflicts);
        Assert.Equal(["done", "offset", "after", "before"], conflict.Statements.Select(statement => statement.Origin.Id));

        // Six weeks after 20 November is 1 January; 31 December was the last day.
        Assert.Equal(1, conflict.DaysShort);
        Assert.Equal(["2026-11-20 to 2026-11-20", "2027-01-01 to 2027-01-15", "Contradiction", "2027-05-01 to 2027-05-31", "WaitsOnUndated"], reckoning.Tasks.Select(Said));
    }

    [Fact]
    public void What_was_done_keeps_its_day_though_the_plan_of_another_says_that_it_cannot_be()
    {
        var dated = TaskDates.Of(Planting(
            North(),
            Task("B", new TimeClause.Offset(2, 3, TimeUnit.Weeks, IsAfter: true, "A") { Origin = new("offset") }, new TimeClause.Before(new Moment.Day(new(2027, 5, 2))) { Origin = new("before") }),
            Task("C", new TimeClause.Offset(1, 1, TimeUnit.Days, IsAfter: true, "A") { Origin = new("day") }),
            Task("A", In(new Moment.Year(2027))) with { Done = [new(new(2027, 5, 1), new("done"))] }));
        Assert.Equal(["Contradiction", "2027-05-02 to 2027-05-02", "2027-05-01 to 2027-05-01"], dated.Select(Said));
    }

    [Fact]
    public void Two_things_that_cannot_be_are_told_apart()
    {
        var reckoning = TaskDates.Reckon(Planting(
            North(),
            Task("A", In(new Moment.Month(new(2027, 5))), new TimeClause.After(new Moment.Month(new(2027, 8))) { Origin = Here }),
            Task("B", In(new Moment.Month(new(2028, 5))), new TimeClause.After(new Moment.Month(new(2028, 8))) { Origin = Here }),
            Task("C", new TimeClause.Offset(2, 2, TimeUnit.Days, IsAfter: true, "D") { Origin = Here }, new TimeClause.Before(new Moment.OfTask("E")) { Origin = Here }),
            Task("D", In(new Moment.Year(2029))),
            Task("E", new TimeClause.Offset(1, 1, TimeUnit.Days, IsAfter: true, "D") { Origin = Here })));
        Assert.Equal(["A", "B", "C E"], reckoning.Conflicts.Select(conflict => string.Join(' ', conflict.Statements.Select(statement => statement.Task.Name))));
    }

    private static void Check(TimeClause[] clauses, string expected) => Assert.Equal(expected, Said(TaskDates.Of(Planting(North(), Task("T", clauses)))[0]));

    private static string Said(DatedTask task) => task.Window is { } window
        ? $"{Iso(window.Earliest)} to {Iso(window.Latest)}"
        : task.Undated.ToString()!;

    private static string Iso(LocalDate? date) => date is { } day ? NodaTime.Text.LocalDatePattern.Iso.Format(day) : "open";

    private static TimeClause.During In(Moment moment) => new(moment) { Origin = Here };

    private static TimeClause.After After(string task) => new(new Moment.OfTask(task)) { Origin = Here };

    private static TimeClause.Every Every(int count, TimeUnit unit) => new(count, unit) { Origin = Here };

    private static TimeClause.FromTo From(LocalDate start, LocalDate end) => new(new Moment.Day(start), new Moment.Day(end)) { Origin = Here };

    private static PlantingTask Task(string name, params TimeClause[] times) =>
        new() { Name = name, Origin = Here, Kind = new(TaskKind.Prune, Here), Times = [.. times] };

    private static Planting Planting(Site? site, params PlantingTask[] tasks) => new() { Site = site, Tasks = [.. tasks] };

    private static Site North() => Site(54.3, new(5, 2), new(11, 9));

    private static Site South() => Site(-41, new(9, 10), new(5, 20));

    private static Site Site(double latitude, AnnualDate last, AnnualDate first) => new()
    {
        Origin = Here,
        Latitude = new(new Angle(latitude), Here),
        LastFrost = new(last, Here),
        FirstFrost = new(first, Here),
    };
}
