using NodaTime;

namespace GroveSpec.Craft.Care;

/// <summary>The half year in which elms are not pruned. Source: Alberta allows it from 1 October to 31 March; south of the equator the half year is turned round.</summary>
public static class ElmSeason
{
    /// <summary>Whether some of the days lie in that half year.</summary>
    /// <param name="days">The days.</param>
    /// <param name="isSouthern">Whether the site lies south of the equator.</param>
    /// <returns>True when one of them does.</returns>
    public static bool Touches(DateInterval days, bool isSouthern)
    {
        for (var year = days.Start.Year - 1; year <= days.End.Year; year++)
        {
            var start = new LocalDate(year, isSouthern ? 10 : 4, 1);
            if (days.Start < start.PlusMonths(6) && days.End >= start)
            {
                return true;
            }
        }

        return false;
    }
}
