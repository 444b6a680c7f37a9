using GroveSpec.Model.Quantities;
using GroveSpec.Model.Readings;
using GroveSpec.Model.Sites;
using GroveSpec.Model.States;
using GroveSpec.Model.Times;
using GroveSpec.Model.Trunks;
using NodaTime;
using Xunit;

namespace GroveSpec.Model.Tests;

public sealed class PlantingStateTests
{
    private static readonly Moment SpringOf2028 = new Moment.SeasonOfYear(SeasonPart.Whole, Season.Spring, 2028);

    [Theory]
    [InlineData("2028-02-29", Presence.Planned)]
    [InlineData("2028-03-01", Presence.Standing)]
    public void A_planned_trunk_stands_from_the_first_day_of_its_moment(string date, Presence presence) =>
        Assert.Equal(presence, PresenceOf(new() { Name = "A", Origin = Origin.Default, Planned = State(SpringOf2028) }, date));

    [Theory]
    [InlineData("2028-08-31", Presence.Planned)]
    [InlineData("2028-09-01", Presence.Standing)]
    public void Seasons_turn_over_in_the_south(string date, Presence presence) =>
        Assert.Equal(presence, PresenceOf(new() { Name = "A", Origin = Origin.Default, Planned = State(SpringOf2028) }, date, -41));

    [Theory]
    [InlineData("2028-02-29", Presence.Standing)]
    [InlineData("2028-03-01", Presence.Removed)]
    public void A_removed_trunk_is_gone_from_the_first_day_of_its_moment(string date, Presence presence) =>
        Assert.Equal(presence, PresenceOf(new() { Name = "A", Origin = Origin.Default, Removed = State(SpringOf2028) }, date));

    [Theory]
    [InlineData("2030-10-31", 54, Presence.Standing)]
    [InlineData("2030-11-01", 54, Presence.Removed)]
    [InlineData("2030-04-30", -41, Presence.Standing)]
    [InlineData("2030-05-01", -41, Presence.Removed)]
    public void A_trunk_removed_at_a_stage_is_there_until_the_month_in_which_the_stage_usually_begins(string date, double latitude, Presence presence) =>
        Assert.Equal(presence, PresenceOf(new() { Name = "A", Origin = Origin.Default, Removed = State(new Moment.StageOfYear(Stage.LeafFall, 2030)) }, date, latitude));

    [Theory]
    [InlineData("2013-12-31", Presence.Planned)]
    [InlineData("2014-01-01", Presence.Standing)]
    public void A_trunk_stands_from_the_year_in_which_it_was_raised(string date, Presence presence) =>
        Assert.Equal(presence, PresenceOf(new() { Name = "A", Origin = Origin.Default, Raised = new Stated<int>(2014, Origin.Default) }, date));

    [Fact]
    public void Without_a_day_removed_trunks_are_out_and_planned_ones_planned()
    {
        Assert.Equal(Presence.Removed, PresenceOf(new() { Name = "A", Origin = Origin.Default, Removed = State(SpringOf2028) }, null));
        Assert.Equal(Presence.Planned, PresenceOf(new() { Name = "A", Origin = Origin.Default, Planned = State(SpringOf2028) }, null));
        Assert.Equal(Presence.Standing, PresenceOf(new() { Name = "A", Origin = Origin.Default, Raised = new Stated<int>(2014, Origin.Default) }, null));
    }

    [Fact]
    public void The_newest_reading_on_or_before_the_day_holds_whatever_the_order_of_the_file()
    {
        var planting = Read(("2026-10-30", 33), ("2024-10-30", 31), ("2025-10-30", 32));
        Assert.Equal(30, Diameter(planting, "2024-10-29"));
        Assert.Equal(31, Diameter(planting, "2024-10-30"));
        Assert.Equal(32, Diameter(planting, "2026-10-29"));
        Assert.Equal(33, Diameter(planting, "2026-10-30"));
        Assert.Equal(33, Diameter(planting, null));
    }

    [Fact]
    public void Of_a_thousand_readings_on_one_day_the_one_written_last_holds() =>
        Assert.Equal(1000, Diameter(Read([.. Enumerable.Range(1, 1000).Select(index => ("2026-10-30", index))]), null));

    [Fact]
    public void A_reading_of_one_size_leaves_the_others_as_they_were()
    {
        var planting = Read(("2026-10-30", 33));
        Assert.Equal(Length.FromMillimetres(300), planting.StateOn(null).Trunks[0].Height?.Value);
    }

    [Fact]
    public void The_newest_day_is_a_reading_a_task_that_was_done_or_a_stage_that_was_seen()
    {
        Assert.Null(new Planting().NewestDay);
        var planting = Read(("2024-10-30", 31)) with { Seen = [new SeenStage(Stage.LeafOut, new LocalDate(2025, 4, 22), Origin.Default)] };
        Assert.Equal(new LocalDate(2025, 4, 22), planting.NewestDay);
    }

    private static Stated<Moment> State(Moment moment) => new(moment, Origin.Default);

    private static LocalDate? Day(string? date) => date is null ? null : NodaTime.Text.LocalDatePattern.Iso.Parse(date).Value;

    private static Presence PresenceOf(Trunk trunk, string? date, double latitude = 54) => new Planting
    {
        Trunks = [trunk],
        Site = new Site { Origin = Origin.Default, Latitude = new Stated<Angle>(new Angle(latitude), Origin.Default) },
    }.StateOn(Day(date)).Trunks[0].Presence;

    private static Planting Read(params (string Date, int Millimetres)[] readings) => new()
    {
        Trunks = [new Trunk { Name = "A", Origin = Origin.Default, Diameter = Sized(30), Height = Sized(300) }],
        Measured = [.. readings.Select(reading => new MeasuredDay(Day(reading.Date)!.Value, [new TrunkReading { Trunk = "A", Origin = Origin.Default, Diameter = Sized(reading.Millimetres) }], Origin.Default))],
    };

    private static Stated<Length> Sized(int millimetres) => new(Length.FromMillimetres(millimetres), Origin.Default);

    private static double? Diameter(Planting planting, string? date) => planting.StateOn(Day(date)).Trunks[0].Diameter?.Value.Millimetres;
}
