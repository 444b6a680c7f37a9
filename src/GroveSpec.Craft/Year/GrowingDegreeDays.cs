using GroveSpec.Model.Quantities;
using NodaTime;

namespace GroveSpec.Craft.Year;

/// <summary>Growing degree days. Source: McMaster and Wilhelm 1997, see <see cref="DegreeDayMethod"/>.</summary>
public static class GrowingDegreeDays
{
    /// <summary>The warmth of one day.</summary>
    /// <param name="lowest">The day's lowest temperature.</param>
    /// <param name="highest">Its highest; where it is below the lowest, the two are taken the other way round.</param>
    /// <param name="floor">The base below which nothing grows.</param>
    /// <param name="method">How base and cap are applied.</param>
    /// <param name="cap">The temperature above which more warmth makes no more growth; none where null. One below the base is taken as the base.</param>
    /// <returns>The warmth above the base; for a temperature that is no number, none.</returns>
    public static HeatSum OfDay(Temperature lowest, Temperature highest, Temperature floor, DegreeDayMethod method, Temperature? cap = null)
    {
        var most = Math.Max(floor.Celsius, cap?.Celsius ?? double.PositiveInfinity);
        var mean = method == DegreeDayMethod.LimitsFirst
            ? (Math.Clamp(lowest.Celsius, floor.Celsius, most) + Math.Clamp(highest.Celsius, floor.Celsius, most)) / 2
            : Math.Min((lowest.Celsius + highest.Celsius) / 2, most);
        return new HeatSum(mean > floor.Celsius ? mean - floor.Celsius : 0);
    }

    /// <summary>The warmth of some days on a site of which only monthly means are known. A day's lowest and highest are then both its mean, and both methods say the same: less than either would with the true ones while the mean is about the base.</summary>
    /// <param name="days">The days.</param>
    /// <param name="temperatures">The site's year.</param>
    /// <param name="floor">The base below which nothing grows.</param>
    /// <param name="cap">The temperature above which more warmth makes no more growth; none where null.</param>
    /// <returns>The warmth from the first to the last day, both inclusive.</returns>
    public static HeatSum Over(DateInterval days, DailyMeans temperatures, Temperature floor, Temperature? cap = null)
    {
        var sum = new HeatSum(0);
        foreach (var day in days)
        {
            var mean = temperatures.On(day);
            sum += OfDay(mean, mean, floor, DegreeDayMethod.LimitsFirst, cap);
        }

        return sum;
    }

    /// <summary>The day on which a warmth has been gathered.</summary>
    /// <param name="from">The first day that counts.</param>
    /// <param name="wanted">The warmth.</param>
    /// <param name="temperatures">The site's year.</param>
    /// <param name="floor">The base below which nothing grows.</param>
    /// <returns>The first day by whose end it has been gathered; null where a year is not enough.</returns>
    public static LocalDate? DayReaching(LocalDate from, HeatSum wanted, DailyMeans temperatures, Temperature floor)
    {
        var sum = new HeatSum(0);
        for (var count = 0; count < 366; count++)
        {
            var mean = temperatures.On(from.PlusDays(count));
            sum += OfDay(mean, mean, floor, DegreeDayMethod.LimitsFirst);
            if (sum >= wanted)
            {
                return from.PlusDays(count);
            }
        }

        return null;
    }
}
