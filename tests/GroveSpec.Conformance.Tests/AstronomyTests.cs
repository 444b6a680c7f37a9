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
    public void Days_are_as_long_as_astronomy_says_within_eight_minutes_up_to_54_degrees()
    {
        var days = Sky.Require().Days.Where(day => Math.Abs(day.Latitude) <= 54).ToList();
        Assert.True(days.Count > 7000);
        Assert.All(days, day => Assert.InRange(DayLength.Of(new Angle(day.Latitude), day.Day).TotalHours - day.Hours, -0.13, 0.13));
    }

    [Fact]
    public void Up_to_66_degrees_days_are_as_long_as_astronomy_says_of_a_day_at_most_two_days_off()
    {
        // Towards the polar circles a day makes a difference of many minutes; what is left at the equator is the sun's own disc, under 20 seconds.
        const double Rest = 0.005;
        Assert.All(Sky.Require().Days, day =>
        {
            var about = Enumerable.Range(-2, 5).Select(shift => DayLength.Of(new Angle(day.Latitude), day.Day.PlusDays(shift)).TotalHours).ToList();
            Assert.InRange(day.Hours, about.Min() - Rest, about.Max() + Rest);
        });
    }
}
