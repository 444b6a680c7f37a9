using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using NodaTime;

namespace GroveSpec.Craft.Year;

/// <summary>
/// The usual mean temperature of each day of a year, from twelve monthly means: a smooth run through the year whose mean over each
/// month is the month's own. Source: M. D. Rymes and D. R. Myers, Mean preserving algorithm for smoothly interpolating averaged
/// data, Solar Energy 71 (2001), from memory: steps are smoothed by the mean of each day and its two neighbours, each month is put
/// back to its mean, and both are done again, as often as a month has days; the year's end meets its beginning.
/// </summary>
public sealed class DailyMeans
{
    private const int DaysOfYear = 365;
    private const int Rounds = 31;
    private const int CommonYear = 2001;

    private readonly double[] celsius;

    private DailyMeans(double[] celsius) => this.celsius = celsius;

    /// <summary>Days from months.</summary>
    /// <param name="monthlyMeans">Twelve means, January first.</param>
    /// <returns>The days; null where there are not twelve.</returns>
    public static DailyMeans? Of(ImmutableArray<Temperature> monthlyMeans)
    {
        if (monthlyMeans.IsDefault || monthlyMeans.Length != 12)
        {
            return null;
        }

        var (days, next) = (new double[DaysOfYear], new double[DaysOfYear]);
        var starts = new int[13];
        for (var month = 0; month < 12; month++)
        {
            starts[month + 1] = starts[month] + CalendarSystem.Iso.GetDaysInMonth(CommonYear, month + 1);
            Array.Fill(days, monthlyMeans[month].Celsius, starts[month], starts[month + 1] - starts[month]);
        }

        for (var round = 0; round < Rounds; round++)
        {
            for (var day = 0; day < DaysOfYear; day++)
            {
                next[day] = (days[(day + DaysOfYear - 1) % DaysOfYear] + days[day] + days[(day + 1) % DaysOfYear]) / 3;
            }

            for (var month = 0; month < 12; month++)
            {
                var span = next.AsSpan(starts[month]..starts[month + 1]);
                var sum = 0.0;
                foreach (var value in span)
                {
                    sum += value;
                }

                var missing = monthlyMeans[month].Celsius - (sum / span.Length);
                foreach (ref var value in span)
                {
                    value += missing;
                }
            }

            (days, next) = (next, days);
        }

        return new DailyMeans(days);
    }

    /// <summary>The usual mean of a day.</summary>
    /// <param name="day">The day, of any year; 29 February takes the mean of the 28th.</param>
    /// <returns>Its mean temperature.</returns>
    public Temperature On(LocalDate day)
    {
        var isPastLeapDay = CalendarSystem.Iso.IsLeapYear(day.Year) && (day.Month > 2 || (day.Month == 2 && day.Day == 29));
        return new Temperature(celsius[day.DayOfYear - 1 - (isPastLeapDay ? 1 : 0)]);
    }
}
