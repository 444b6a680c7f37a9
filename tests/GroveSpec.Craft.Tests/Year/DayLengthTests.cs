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
    public void The_first_of_March_is_a_day_later_in_a_leap_year() =>
        Assert.Equal(DayLength.Of(new Angle(50), 61), DayLength.Of(new Angle(50), new LocalDate(2028, 3, 1)));

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
