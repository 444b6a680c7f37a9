using NodaTime;

namespace GroveSpec.Model.Times;

/// <summary>
/// The months of each season: the meteorological ones, three whole months each, turned by half a year in the south.
/// Source: common practice of meteorology.
/// </summary>
public static class SeasonCalendar
{
    /// <summary>The first and last day of a season, or of a third of one.</summary>
    /// <param name="part">Which third, or the whole.</param>
    /// <param name="season">The season.</param>
    /// <param name="year">The year; the season that runs over the turn of the year belongs to the one in which it ends.</param>
    /// <param name="isSouthern">Whether the site lies south of the equator.</param>
    /// <returns>Both days inclusive; null where the year cannot be reckoned with.</returns>
    public static DateInterval? Days(SeasonPart part, Season season, int year, bool isSouthern)
    {
        if (year is < 2 or > 9997)
        {
            return null;
        }

        var turned = isSouthern ? (Season)(((int)season + 2) % 4) : season;
        var first = turned switch
        {
            Season.Spring => new YearMonth(year, 3),
            Season.Summer => new YearMonth(year, 6),
            Season.Autumn => new YearMonth(year, 9),
            _ => new YearMonth(year - 1, 12),
        };
        var (start, count) = part switch
        {
            SeasonPart.Early => (first, 1),
            SeasonPart.Mid => (first.PlusMonths(1), 1),
            SeasonPart.Late => (first.PlusMonths(2), 1),
            _ => (first, 3),
        };
        return new DateInterval(start.OnDayOfMonth(1), start.PlusMonths(count).OnDayOfMonth(1).PlusDays(-1));
    }

    /// <summary>The season that a day lies in.</summary>
    /// <param name="day">The day.</param>
    /// <param name="isSouthern">Whether the site lies south of the equator.</param>
    /// <returns>The season; null at the ends of the calendar.</returns>
    public static SeasonOfDay? SeasonOf(LocalDate day, bool isSouthern)
    {
        foreach (var year in (ReadOnlySpan<int>)[day.Year, day.Year + 1])
        {
            for (var season = Season.Spring; season <= Season.Winter; season++)
            {
                if (Days(SeasonPart.Whole, season, year, isSouthern) is { } days && days.Contains(day))
                {
                    return new SeasonOfDay(season, year, days);
                }
            }
        }

        return null;
    }

    /// <summary>The first and last day of a moment that needs neither a species nor another task to be known.</summary>
    /// <param name="moment">The moment.</param>
    /// <param name="isSouthern">Whether the site lies south of the equator.</param>
    /// <returns>Both days inclusive; null for stages and tasks.</returns>
    public static DateInterval? Days(Moment moment, bool isSouthern) => moment switch
    {
        Moment.Day day => new DateInterval(day.Date, day.Date),
        Moment.Month month => new DateInterval(month.Value.OnDayOfMonth(1), month.Value.OnDayOfMonth(1).PlusMonths(1).PlusDays(-1)),
        Moment.Year year when year.Number is >= 1 and <= 9998 => new DateInterval(new LocalDate(year.Number, 1, 1), new LocalDate(year.Number, 12, 31)),
        Moment.SeasonOfYear season => Days(season.Part, season.Season, season.Number, isSouthern),
        _ => null,
    };

    /// <summary>The first day of such a moment.</summary>
    /// <param name="moment">The moment.</param>
    /// <param name="isSouthern">Whether the site lies south of the equator.</param>
    /// <returns>The day; null for stages and tasks.</returns>
    public static LocalDate? FirstDay(Moment moment, bool isSouthern) => Days(moment, isSouthern)?.Start;

    /// <summary>
    /// The first day of a moment for telling whether a trunk is there yet: as <see cref="FirstDay"/>, and for a stage the
    /// month in which it usually begins in a temperate climate, turned by half a year in the south. Source: common practice.
    /// </summary>
    /// <param name="moment">The moment.</param>
    /// <param name="isSouthern">Whether the site lies south of the equator.</param>
    /// <returns>The day; null for tasks.</returns>
    public static LocalDate? UsualFirstDay(Moment moment, bool isSouthern)
    {
        if (moment is not Moment.StageOfYear { Number: >= 1 and <= 9998 } stage)
        {
            return FirstDay(moment, isSouthern);
        }

        var month = stage.Stage switch
        {
            Stage.BudBreak => 3,
            Stage.LeafOut => 4,
            Stage.HardenOff or Stage.Midsummer => 6,
            Stage.LeafColour => 10,
            Stage.LeafFall => 11,
            _ => 12,
        };
        return new LocalDate(stage.Number, isSouthern ? ((month + 5) % 12) + 1 : month, stage.Stage == Stage.Midsummer ? 21 : 1);
    }
}
