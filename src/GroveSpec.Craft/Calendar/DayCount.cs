using GroveSpec.Model.Quantities;
using NodaTime;

namespace GroveSpec.Craft.Calendar;

/// <summary>Counting on from a day without leaving the years 1 to 9998.</summary>
internal static class DayCount
{
    private const int LastYear = 9998;

    /// <summary>The number of the first day that can be reckoned with: 1 January of year 2.</summary>
    public static int FirstDay { get; } = NumberOf(new LocalDate(2, 1, 1));

    /// <summary>The number of the last day that can be reckoned with: 31 December of year 9997.</summary>
    public static int LastDay { get; } = NumberOf(new LocalDate(9997, 12, 31));

    /// <summary>A day as a number, so that the next day has the next one.</summary>
    /// <param name="day">The day.</param>
    /// <returns>The days since 1 January of year 1.</returns>
    public static int NumberOf(LocalDate day) => day.ToDateOnly().DayNumber;

    /// <summary>The day of a number.</summary>
    /// <param name="number">Days since 1 January of year 1.</param>
    /// <returns>The day.</returns>
    public static LocalDate DayOf(int number) => LocalDate.FromDateOnly(DateOnly.FromDayNumber(number));

    /// <summary>The number of the day so many units later. It never falls as <paramref name="from"/> rises.</summary>
    /// <param name="from">The number of a day from <see cref="FirstDay"/> to <see cref="LastDay"/>.</param>
    /// <param name="count">How many, negative for earlier.</param>
    /// <param name="unit">Of what.</param>
    /// <returns>Its number; one beyond <see cref="FirstDay"/> or <see cref="LastDay"/> for all that lies beyond them.</returns>
    public static int Shift(int from, int count, TimeUnit unit)
    {
        var days = unit switch
        {
            TimeUnit.Days => from + (long)count,
            TimeUnit.Weeks => from + (7L * count),
            _ => Shift(DayOf(from), count, unit) is { } day ? NumberOf(day) : count < 0 ? FirstDay - 1 : LastDay + 1,
        };
        return (int)Math.Clamp(days, FirstDay - 1, LastDay + 1);
    }

    /// <summary>The first day from which so many units lead to a day or beyond it.</summary>
    /// <param name="to">The number of that day, from <see cref="FirstDay"/> to <see cref="LastDay"/>.</param>
    /// <param name="count">How many units, negative for earlier.</param>
    /// <param name="unit">Of what.</param>
    /// <returns>Its number; one beyond the days that can be reckoned with for all that lies beyond them.</returns>
    public static int FirstLeadingTo(int to, int count, TimeUnit unit)
    {
        var from = Shift(to, -count, unit);
        while (from >= FirstDay && from <= LastDay && Shift(from, count, unit) < to)
        {
            from++;
        }

        while (from > FirstDay && from <= LastDay && Shift(from - 1, count, unit) >= to)
        {
            from--;
        }

        return from;
    }

    /// <summary>The last day from which so many units lead no further than to a day.</summary>
    /// <param name="to">The number of that day, from <see cref="FirstDay"/> to <see cref="LastDay"/>.</param>
    /// <param name="count">How many units, negative for earlier.</param>
    /// <param name="unit">Of what.</param>
    /// <returns>Its number; one beyond the days that can be reckoned with for all that lies beyond them.</returns>
    public static int LastLeadingTo(int to, int count, TimeUnit unit)
    {
        var from = Shift(to, -count, unit);
        while (from >= FirstDay && from <= LastDay && Shift(from, count, unit) > to)
        {
            from--;
        }

        while (from >= FirstDay && from < LastDay && Shift(from + 1, count, unit) <= to)
        {
            from++;
        }

        return from;
    }

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
