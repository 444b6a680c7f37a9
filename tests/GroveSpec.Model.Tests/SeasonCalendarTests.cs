using GroveSpec.Model.Times;
using NodaTime;
using Xunit;

namespace GroveSpec.Model.Tests;

public sealed class SeasonCalendarTests
{
    // The meteorological seasons: common practice.
    [Theory]
    [InlineData(Season.Spring, false, "2027-03-01", "2027-05-31")]
    [InlineData(Season.Summer, false, "2027-06-01", "2027-08-31")]
    [InlineData(Season.Autumn, false, "2027-09-01", "2027-11-30")]
    [InlineData(Season.Winter, false, "2026-12-01", "2027-02-28")]
    [InlineData(Season.Spring, true, "2027-09-01", "2027-11-30")]
    [InlineData(Season.Summer, true, "2026-12-01", "2027-02-28")]
    [InlineData(Season.Autumn, true, "2027-03-01", "2027-05-31")]
    [InlineData(Season.Winter, true, "2027-06-01", "2027-08-31")]
    public void A_season_has_three_months_that_turn_with_the_hemisphere(Season season, bool isSouthern, string first, string last)
    {
        var days = SeasonCalendar.Days(SeasonPart.Whole, season, 2027, isSouthern)!;
        Assert.Equal(first, NodaTime.Text.LocalDatePattern.Iso.Format(days.Start));
        Assert.Equal(last, NodaTime.Text.LocalDatePattern.Iso.Format(days.End));
    }

    [Fact]
    public void A_late_winter_ends_on_the_leap_day() =>
        Assert.Equal(new LocalDate(2028, 2, 29), SeasonCalendar.Days(SeasonPart.Late, Season.Winter, 2028, isSouthern: false)!.End);

    [Theory]
    [InlineData(SeasonPart.Early, 9)]
    [InlineData(SeasonPart.Mid, 10)]
    [InlineData(SeasonPart.Late, 11)]
    public void A_third_of_a_season_is_a_month(SeasonPart part, int month)
    {
        var days = SeasonCalendar.Days(part, Season.Autumn, 2026, isSouthern: false)!;
        Assert.Equal(new LocalDate(2026, month, 1), days.Start);
        Assert.Equal(month, days.End.Month);
    }

    [Fact]
    public void Years_at_the_end_of_the_calendar_have_no_seasons()
    {
        Assert.Null(SeasonCalendar.Days(SeasonPart.Whole, Season.Winter, 1, isSouthern: false));
        Assert.Null(SeasonCalendar.Days(SeasonPart.Whole, Season.Winter, 9998, isSouthern: false));
        Assert.Null(SeasonCalendar.FirstDay(new Moment.Year(9999), isSouthern: false));
    }

    [Fact]
    public void A_task_has_no_day_of_its_own() => Assert.Null(SeasonCalendar.UsualFirstDay(new Moment.OfTask("W1"), isSouthern: false));
}
