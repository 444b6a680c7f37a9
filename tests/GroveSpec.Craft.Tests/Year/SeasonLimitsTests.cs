using GroveSpec.Craft.Year;
using GroveSpec.Model.Times;
using NodaTime;
using Xunit;

namespace GroveSpec.Craft.Tests.Year;

public sealed class SeasonLimitsTests
{
    [Theory]
    // Computed with astronomy-engine; to the minute.
    [InlineData(2025, "03-20 09:01", "06-21 02:42", "09-22 18:19", "12-21 15:03")]
    [InlineData(2026, "03-20 14:45", "06-21 08:25", "09-23 00:05", "12-21 20:50")]
    [InlineData(2027, "03-20 20:24", "06-21 14:10", "09-23 06:01", "12-22 02:42")]
    [InlineData(2028, "03-20 02:17", "06-20 20:01", "09-22 11:45", "12-21 08:20")]
    public void Equinoxes_and_solstices_come_within_a_minute(int year, params string[] expected)
    {
        for (var turn = SolarTurn.MarchEquinox; turn <= SolarTurn.DecemberSolstice; turn++)
        {
            var text = expected[(int)turn];
            var moment = Instant.FromUtc(year, int.Parse(text[..2]), int.Parse(text[3..5]), int.Parse(text[6..8]), int.Parse(text[9..]));
            Assert.InRange((SolarTurns.MomentOf(turn, year)!.Value - moment).TotalMinutes, -1, 1);
        }
    }

    [Fact]
    public void A_northern_summer_runs_from_the_June_solstice_to_the_September_equinox_and_a_southern_one_over_the_turn_of_the_year()
    {
        var north = SeasonLimits.Of(Season.Summer, 2027, isSouthern: false)!.Value;
        Assert.Equal(SolarTurns.MomentOf(SolarTurn.JuneSolstice, 2027), north.Start);
        Assert.Equal(SolarTurns.MomentOf(SolarTurn.SeptemberEquinox, 2027), north.End);
        var south = SeasonLimits.Of(Season.Summer, 2027, isSouthern: true)!.Value;
        Assert.Equal(SolarTurns.MomentOf(SolarTurn.DecemberSolstice, 2026), south.Start);
        Assert.Equal(SolarTurns.MomentOf(SolarTurn.MarchEquinox, 2027), south.End);
        Assert.Equal(south, SeasonLimits.Of(Season.Winter, 2027, isSouthern: false));
    }

    [Fact]
    public void Each_season_begins_within_the_first_month_of_what_a_file_calls_it()
    {
        for (var year = 1900; year <= 2150; year++)
        {
            foreach (var season in Enum.GetValues<Season>())
            {
                foreach (var isSouthern in new[] { false, true })
                {
                    var start = SeasonLimits.Of(season, year, isSouthern)!.Value.Start.InUtc().Date;
                    Assert.Contains(start, SeasonCalendar.Days(SeasonPart.Early, season, year, isSouthern)!);
                }
            }
        }
    }

    [Fact]
    public void Years_beyond_the_polynomials_have_none()
    {
        Assert.Null(SolarTurns.MomentOf(SolarTurn.MarchEquinox, 999));
        Assert.NotNull(SolarTurns.MomentOf(SolarTurn.MarchEquinox, 1000));
        Assert.NotNull(SolarTurns.MomentOf(SolarTurn.DecemberSolstice, 3000));
        Assert.Null(SolarTurns.DayOf(SolarTurn.DecemberSolstice, 3001));
        Assert.Null(SeasonLimits.Of(Season.Winter, 1000, isSouthern: false));
        Assert.NotNull(SeasonLimits.Of(Season.Winter, 1001, isSouthern: false));
    }
}
