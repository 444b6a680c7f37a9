using CsCheck;
using GroveSpec.Craft.Year;
using GroveSpec.Model.Quantities;
using NodaTime;
using Xunit;

namespace GroveSpec.Craft.Tests.Year;

public sealed class GrowingDegreeDaysTests
{
    [Theory]
    // McMaster and Wilhelm 1997: the two readings of one equation.
    [InlineData(15, 5, 10, 0, 2.5)]
    [InlineData(8, -4, 0, 2, 4)]
    [InlineData(20, 10, 10, 5, 5)]
    public void Both_methods_give_what_their_equations_say(double highest, double lowest, double floor, double meanFirst, double limitsFirst)
    {
        Assert.Equal(meanFirst, OfDay(lowest, highest, floor, DegreeDayMethod.MeanFirst));
        Assert.Equal(limitsFirst, OfDay(lowest, highest, floor, DegreeDayMethod.LimitsFirst));
        Assert.Equal(meanFirst, OfDay(highest, lowest, floor, DegreeDayMethod.MeanFirst));
        Assert.Equal(limitsFirst, OfDay(highest, lowest, floor, DegreeDayMethod.LimitsFirst));
    }

    [Fact]
    public void A_cap_is_put_on_the_highest_before_the_mean_is_taken()
    {
        // McMaster and Wilhelm 1997, with a cap of 30.
        Assert.Equal(15, OfDay(20, 35, 10, DegreeDayMethod.LimitsFirst, 30));
        Assert.Equal(17.5, OfDay(20, 35, 10, DegreeDayMethod.MeanFirst, 30));
        Assert.Equal(20, OfDay(30, 35, 10, DegreeDayMethod.MeanFirst, 30));
        Assert.Equal(0, OfDay(30, 35, 10, DegreeDayMethod.LimitsFirst, 5));
        Assert.Equal(0, OfDay(double.NaN, double.NaN, 10, DegreeDayMethod.LimitsFirst));
    }

    [Fact]
    public void Holding_the_limits_first_never_gives_less_than_taking_the_mean_first() =>
        Gen.Select(Gen.Double[-30, 45], Gen.Double[-30, 45], Gen.Double[0, 12]).Sample((one, other, floor) =>
            Assert.True(OfDay(one, other, floor, DegreeDayMethod.LimitsFirst) >= OfDay(one, other, floor, DegreeDayMethod.MeanFirst) - 1e-9));

    [Fact]
    public void The_days_of_each_month_have_the_months_mean_and_no_step_between_months() =>
        Gen.Double[-20, 30].Array[12].Sample(months =>
        {
            var days = Means(months);
            for (var month = 1; month <= 12; month++)
            {
                var count = CalendarSystem.Iso.GetDaysInMonth(2027, month);
                Assert.Equal(months[month - 1], Enumerable.Range(1, count).Average(day => days.On(new(2027, month, day)).Celsius), 1e-9);
            }

            var largest = Enumerable.Range(0, 12).Max(month => Math.Abs(months[month] - months[(month + 1) % 12]));
            for (var day = new LocalDate(2027, 1, 1); day.Year == 2027; day = day.PlusDays(1))
            {
                Assert.True(Math.Abs(days.On(day).Celsius - days.On(day.PlusDays(1)).Celsius) <= (largest * 0.25) + 1e-9);
            }
        });

    [Fact]
    public void A_year_of_one_temperature_is_that_temperature_every_day()
    {
        var days = Means([.. Enumerable.Repeat(14.0, 12)]);
        Assert.All(new DateInterval(new(2028, 1, 1), new(2028, 12, 31)), day => Assert.Equal(14, days.On(day).Celsius, 1e-9));
        Assert.Equal(30 * 4, GrowingDegreeDays.Over(new(new(2027, 6, 1), new(2027, 6, 30)), days, new(10)).DegreeDays, 1e-9);
        Assert.Equal(30 * 2, GrowingDegreeDays.Over(new(new(2027, 6, 1), new(2027, 6, 30)), days, new(10), new Temperature(12)).DegreeDays, 1e-9);
    }

    [Fact]
    public void A_leap_day_is_as_warm_as_the_day_before_and_the_year_ends_on_its_own_last_day()
    {
        var days = Means([-4, -2, 3, 8, 13, 17, 19, 18, 14, 9, 3, -2]);
        Assert.Equal(days.On(new(2028, 2, 28)), days.On(new(2028, 2, 29)));
        Assert.Equal(days.On(new(2027, 3, 1)), days.On(new(2028, 3, 1)));
        Assert.Equal(days.On(new(2027, 12, 31)), days.On(new(2028, 12, 31)));
    }

    [Fact]
    public void The_day_that_reaches_a_sum_is_the_first_by_whose_end_it_is_gathered()
    {
        var days = Means([.. Enumerable.Repeat(14.0, 12)]);
        Assert.Equal(new LocalDate(2027, 1, 10), GrowingDegreeDays.DayReaching(new(2027, 1, 1), new HeatSum(38), days, new(10)));
        Assert.Equal(new LocalDate(2027, 1, 1), GrowingDegreeDays.DayReaching(new(2027, 1, 1), new HeatSum(0), days, new(10)));
        Assert.Null(GrowingDegreeDays.DayReaching(new(2027, 1, 1), new HeatSum(1), days, new(20)));
    }

    [Fact]
    public void Fewer_than_twelve_months_make_no_year()
    {
        Assert.Null(DailyMeans.Of([]));
        Assert.Null(DailyMeans.Of(default));
        Assert.Null(DailyMeans.Of([.. Enumerable.Repeat(new Temperature(5), 11)]));
    }

    private static DailyMeans Means(double[] months) => DailyMeans.Of([.. months.Select(month => new Temperature(month))])!;

    private static double OfDay(double lowest, double highest, double floor, DegreeDayMethod method, double? cap = null) =>
        GrowingDegreeDays.OfDay(new(lowest), new(highest), new(floor), method, cap is { } most ? new Temperature(most) : null).DegreeDays;
}
