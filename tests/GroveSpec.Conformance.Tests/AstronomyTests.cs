using GroveSpec.Conformance.Tests.Outside;
using GroveSpec.Craft.Year;
using GroveSpec.Model.Quantities;
using Xunit;

namespace GroveSpec.Conformance.Tests;

/// <summary>Day lengths and seasons against an astronomical library (npm astronomy-engine), over latitudes from 66 south to 66 north and a hundred years.</summary>
public sealed class AstronomyTests
{
    [Fact]
    public void Equinoxes_and_solstices_of_a_hundred_years_come_within_a_minute()
    {
        // Meeus claims less than a minute for 1951 to 2050.
        var turns = Sky.Require().Turns;
        Assert.Equal(100, turns.Count);
        Assert.All(turns, year => Assert.All(Enum.GetValues<SolarTurn>(), turn =>
        {
            var apart = SolarTurns.MomentOf(turn, year.Year)!.Value - year.Moments[(int)turn];
            Assert.InRange(apart.TotalSeconds, -60, 60);
        }));
    }

    [Fact]
    public void Days_of_any_year_are_as_long_as_astronomy_says_within_eight_minutes_up_to_54_degrees()
    {
        // The model for any year, which knows only the day's number.
        var days = Sky.Require().Days.Where(day => Math.Abs(day.Latitude) <= 54).ToList();
        Assert.True(days.Count > 7000);
        Assert.All(days, day => Assert.InRange(DayLength.Of(new Angle(day.Latitude), day.Day.DayOfYear).TotalHours - day.Hours, -0.13, 0.13));
    }

    [Fact]
    public void Days_of_one_year_are_as_long_as_astronomy_says_within_eight_minutes_up_to_66_degrees()
    {
        var days = Sky.Require().Days;
        Assert.True(days.Count > 9000, $"{days.Count} days");
        Assert.All(days, day => Assert.InRange(DayLength.Of(new Angle(day.Latitude), day.Day).TotalHours - day.Hours, -0.13, 0.13));
    }
}
