using System.Collections.Immutable;
using GroveSpec.Craft.Year;
using GroveSpec.Model.Sites;
using NodaTime;

namespace GroveSpec.Craft.Care;

/// <summary>A species that is less hardy than its site is cold. Source: the zones of the USDA map; that roots in a container stand less than the zone says is from memory.</summary>
/// <param name="Kind">The species.</param>
/// <param name="Coldest">The coldest zone it is kept outdoors in.</param>
/// <param name="Site">The zone of the site.</param>
public sealed record Tenderness(TreeKind Kind, HardinessZone Coldest, HardinessZone Site)
{
    /// <summary>Holds a species against a site.</summary>
    /// <param name="kind">The species.</param>
    /// <param name="site">The site; null when the file gives none.</param>
    /// <returns>Both zones where the coldest nights of the site lie below those that the species stands; null otherwise, and where either zone is not known. A whole zone is taken with its colder half on the side of the species, its warmer on the side of the site, so that only what is certain is told.</returns>
    public static Tenderness? Of(TreeKind kind, Site? site)
    {
        if (site?.Zone is not { } stated || kind.Profile?.Hardiness is not { } hardiness)
        {
            return null;
        }

        var (zone, coldest) = (stated.Value, hardiness.Value.Coldest);
        var warmestOfSite = new HardinessZone(zone.Number, zone.Half ?? 'b');
        return ZoneBand.Of(warmestOfSite).Coldest.Celsius < ZoneBand.Of(coldest).Coldest.Celsius ? new Tenderness(kind, coldest, zone) : null;
    }

    /// <summary>The first frost that a shelter comes too late for.</summary>
    /// <param name="kind">The species.</param>
    /// <param name="shelters">The work that puts it under cover.</param>
    /// <returns>The usual first frost of that autumn and the first day of the shelter after it, of several the soonest; null where a shelter can begin in time, is open at its beginning, or where frost is not known.</returns>
    public static (LocalDate Frost, LocalDate Begins)? TooLate(TreeKind kind, ImmutableArray<Work> shelters)
    {
        (LocalDate Frost, LocalDate Begins)? late = null;
        foreach (var shelter in shelters)
        {
            if (shelter.Dated.Window is not { Earliest: { } begins })
            {
                return null;
            }

            // The frost of the autumn before it, unless a spring lies between.
            var frost = Enumerable.Range(begins.Year - 1, 3).Select(kind.Year.FirstFrost).OfType<LocalDate>().Where(day => day < begins).DefaultIfEmpty(LocalDate.MaxIsoValue).Max();
            var thaw = Enumerable.Range(begins.Year - 1, 3).Select(kind.Year.LastFrost).OfType<LocalDate>().Where(day => day < begins).DefaultIfEmpty(LocalDate.MinIsoValue).Max();
            if (frost > begins || thaw > frost)
            {
                return null;
            }

            late = late is { } sooner && sooner.Begins <= begins ? late : (frost, begins);
        }

        return late;
    }
}
