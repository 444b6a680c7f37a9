using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Craft.Year;

/// <summary>
/// The astronomical seasons, from one equinox or solstice to the next. What a file calls a season is three whole months
/// (see <see cref="SeasonCalendar"/>) and begins about three weeks sooner.
/// </summary>
/// <param name="Start">The moment at which the season begins.</param>
/// <param name="End">The moment at which the next one begins.</param>
public readonly record struct SeasonLimits(Instant Start, Instant End)
{
    /// <summary>The limits of a season.</summary>
    /// <param name="season">The season.</param>
    /// <param name="year">The year; the season that runs over the turn of the year belongs to the one in which it ends.</param>
    /// <param name="isSouthern">Whether the site lies south of the equator.</param>
    /// <returns>Its limits; null where an equinox or solstice of it cannot be reckoned.</returns>
    public static SeasonLimits? Of(Season season, int year, bool isSouthern)
    {
        var turned = isSouthern ? (Season)(((int)season + 2) % 4) : season;
        var (start, end) = turned switch
        {
            Season.Spring => (SolarTurns.MomentOf(SolarTurn.MarchEquinox, year), SolarTurns.MomentOf(SolarTurn.JuneSolstice, year)),
            Season.Summer => (SolarTurns.MomentOf(SolarTurn.JuneSolstice, year), SolarTurns.MomentOf(SolarTurn.SeptemberEquinox, year)),
            Season.Autumn => (SolarTurns.MomentOf(SolarTurn.SeptemberEquinox, year), SolarTurns.MomentOf(SolarTurn.DecemberSolstice, year)),
            _ => (SolarTurns.MomentOf(SolarTurn.DecemberSolstice, year - 1), SolarTurns.MomentOf(SolarTurn.MarchEquinox, year)),
        };
        return start is { } first && end is { } last ? new SeasonLimits(first, last) : null;
    }
}
