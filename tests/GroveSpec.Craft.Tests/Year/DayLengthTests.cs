using CsCheck;
using GroveSpec.Craft.Year;
using GroveSpec.Model.Quantities;
using NodaTime;
using Xunit;

namespace GroveSpec.Craft.Tests.Year;

public sealed class DayLengthTests
{
    [Theory]
    // Forsythe and others 1995, the CBM model, worked out apart from this project; to its last digit.
    [InlineData(40, 79, 12.092)]
    [InlineData(40, 172, 15.016)]
    [InlineData(40, 355, 9.324)]
    [InlineData(51.5, 79, 12.098)]
    [InlineData(51.5, 172, 16.640)]
    [InlineData(51.5, 355, 7.826)]
    [InlineData(60, 79, 12.112)]
    [InlineData(60, 172, 18.870)]
    [InlineData(60, 355, 5.867)]
    public void It_is_what_the_published_model_gives(double latitude, int day, double hours) =>
        Assert.Equal(hours, DayLength.Of(new Angle(latitude), day).TotalHours, 0.001);

    [Theory]
    // astronomy-engine, for 2025.
    [InlineData(40, 79, 12.148)]
    [InlineData(40, 172, 15.016)]
    [InlineData(40, 355, 9.328)]
    [InlineData(51.5, 79, 12.184)]
    [InlineData(51.5, 172, 16.638)]
    [InlineData(51.5, 355, 7.830)]
    [InlineData(60, 79, 12.231)]
    [InlineData(60, 172, 18.866)]
    [InlineData(60, 355, 5.871)]
    public void It_is_near_what_astronomy_says(double latitude, int day, double hours) =>
        Assert.Equal(hours, DayLength.Of(new Angle(latitude), day).TotalHours, 0.13);

    [Fact]
    public void A_day_of_one_year_is_within_minutes_of_that_day_of_any_year() =>
        Gen.Select(Gen.Double[-54, 54], Gen.Int[0, 36_000]).Sample((latitude, day) =>
        {
            var date = new LocalDate(1951, 1, 1).PlusDays(day);
            Assert.InRange(DayLength.Of(new Angle(latitude), date).TotalHours - DayLength.Of(new Angle(latitude), date.DayOfYear).TotalHours, -0.14, 0.14);
        });

    [Fact]
    public void A_day_of_one_year_beyond_the_polar_circles_has_no_night_in_summer_and_no_sun_in_winter()
    {
        Assert.Equal(24, DayLength.Of(new Angle(70), new LocalDate(2027, 6, 21)).TotalHours, 1e-9);
        Assert.Equal(0, DayLength.Of(new Angle(-70), new LocalDate(2027, 6, 21)).TotalHours, 1e-9);
        Assert.Equal(24, DayLength.Of(new Angle(-200), new LocalDate(2027, 12, 21)).TotalHours, 1e-9);
        Assert.InRange(DayLength.Of(new Angle(50), new LocalDate(1, 1, 1)).TotalHours, 7, 9);
        Assert.InRange(DayLength.Of(new Angle(50), new LocalDate(9999, 12, 31)).TotalHours, 6, 10);
    }

    [Fact]
    public void Beyond_the_polar_circles_the_sun_does_not_set_in_summer_nor_rise_in_winter()
    {
        Assert.Equal(24, DayLength.Of(new Angle(70), 172).TotalHours);
        Assert.Equal(0, DayLength.Of(new Angle(70), 355).TotalHours);
        Assert.Equal(0, DayLength.Of(new Angle(-70), 172).TotalHours);
        Assert.Equal(24, DayLength.Of(new Angle(-90), 355).TotalHours);
        Assert.Equal(DayLength.Of(new Angle(90), 172), DayLength.Of(new Angle(200), 172));
    }

    [Fact]
    public void Both_hemispheres_together_have_a_day_and_what_the_suns_disc_and_refraction_add() =>
        Gen.Select(Gen.Double[0, 60], Gen.Int[1, 366]).Sample((latitude, day) =>
            Assert.InRange(DayLength.Of(new Angle(latitude), day).TotalHours + DayLength.Of(new Angle(-latitude), day).TotalHours, 24, 24.8));
}
