using GroveSpec.Model.Quantities;
using NodaTime;

namespace GroveSpec.Craft.Calendar;

/// <summary>Counting on from a day without leaving the years 1 to 9998.</summary>
internal static class DayCount
{
    private const int LastYear = 9998;

    /// <summary>The day so many units later.</summary>
    /// <param name="from">The day.</param>
    /// <param name="count">How many, negative for earlier.</param>
    /// <param name="unit">Of what.</param>
    /// <returns>The day, the month's last where it has no such day; null beyond the years that can be reckoned with.</returns>
    public static LocalDate? Shift(LocalDate from, long count, TimeUnit unit)
    {
        // A coarse guard first, wide of the mark by less than a year, keeps NodaTime from overflowing.
        var years = unit switch
        {
            TimeUnit.Days => count / 365.0,
            TimeUnit.Weeks => count / 52.0,
            TimeUnit.Months => count / 12.0,
            _ => count,
        };
        if (from.Year + years is < 2 or > LastYear)
        {
            return null;
        }

        return unit switch
        {
            TimeUnit.Days => from.PlusDays((int)count),
            TimeUnit.Weeks => from.PlusWeeks((int)count),
            TimeUnit.Months => from.PlusMonths((int)count),
            _ => from.PlusYears((int)count),
        };
    }
}
