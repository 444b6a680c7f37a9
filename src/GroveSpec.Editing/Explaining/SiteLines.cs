using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Binding;
using GroveSpec.Craft.Year;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Sites;
using NodaTime;

namespace GroveSpec.Editing.Explaining;

/// <summary>Says what follows from the site: its days, its seasons by the sun, its cold and its warmth.</summary>
internal static class SiteLines
{
    // Bases that degree days are commonly counted from: common practice.
    private static readonly Temperature CoolBase = new(5);
    private static readonly Temperature WarmBase = new(10);

    /// <summary>What follows from a site.</summary>
    /// <param name="assessment">The file; seasons are those of the year of the day it is shown on.</param>
    /// <returns>A line a fact; none where the file has no site.</returns>
    public static ImmutableArray<string> Of(Assessment assessment)
    {
        if (assessment.Planting.Site is not { } site)
        {
            return [];
        }

        var lines = ImmutableArray.CreateBuilder<string>();
        var year = assessment.State.Date?.Year;
        if (site.Latitude is { } latitude)
        {
            AddDays(lines, latitude.Value, site.IsSouthern);
        }

        if (year is { } number)
        {
            AddSeasons(lines, number, site.IsSouthern);
        }

        if (site.Zone is { } zone)
        {
            var band = ZoneBand.Of(zone.Value);
            lines.Add(string.Create(CultureInfo.InvariantCulture, $"Zone {zone.Value}: the coldest night of a year is on average between {band.Coldest.Celsius:0.0} and {band.Warmest.Celsius:0.0} °C. Roots in a container are less hardy than the top."));
        }

        if (site.MonthlyMeans is { } means && DailyMeans.Of(means.Value) is { } daily)
        {
            AddWarmth(lines, daily, site);
        }

        return lines.ToImmutable();
    }

    private static void AddDays(ImmutableArray<string>.Builder lines, Angle latitude, bool isSouthern)
    {
        // The 21st of June and of December, of any year.
        var (june, december) = (DayLength.Of(latitude, 172), DayLength.Of(latitude, 355));
        var (longest, shortest) = isSouthern ? (december, june) : (june, december);
        lines.Add($"The longest day, about 21 {(isSouthern ? "December" : "June")}, has {Hours(longest)} from sunrise to sunset; the shortest, about 21 {(isSouthern ? "June" : "December")}, {Hours(shortest)}.");
    }

    private static void AddSeasons(ImmutableArray<string>.Builder lines, int year, bool isSouthern)
    {
        if (SolarTurns.DayOf(SolarTurn.MarchEquinox, year) is { } march && SolarTurns.DayOf(SolarTurn.JuneSolstice, year) is { } june
            && SolarTurns.DayOf(SolarTurn.SeptemberEquinox, year) is { } september && SolarTurns.DayOf(SolarTurn.DecemberSolstice, year) is { } december)
        {
            string[] seasons = isSouthern ? ["autumn", "winter", "spring", "summer"] : ["spring", "summer", "autumn", "winter"];
            LocalDate[] days = [march, june, september, december];
            lines.Add($"By the sun, in {year}: {string.Join(", ", seasons.Zip(days, (season, day) => $"{season} from {Day(day)}"))}. What a file calls a season begins with the month.");
        }
    }

    private static void AddWarmth(ImmutableArray<string>.Builder lines, DailyMeans daily, Site site)
    {
        var all = new DateInterval(new LocalDate(2027, 1, 1), new LocalDate(2027, 12, 31));
        lines.Add(string.Create(CultureInfo.InvariantCulture, $"Warmth of a year, by the monthly means: {GrowingDegreeDays.Over(all, daily, CoolBase).DegreeDays:0} degree days above 5 °C, {GrowingDegreeDays.Over(all, daily, WarmBase).DegreeDays:0} above 10 °C."));
        if (site is { LastFrost: { } last, FirstFrost: { } first })
        {
            var (from, until) = (last.Value.InYear(2027), first.Value.InYear(2027));
            until = until < from ? first.Value.InYear(2028) : until;
            lines.Add(string.Create(CultureInfo.InvariantCulture, $"Between the frosts, {Period.DaysBetween(from, until)} days: {GrowingDegreeDays.Over(new DateInterval(from, until), daily, CoolBase).DegreeDays:0} degree days above 5 °C."));
        }
    }

    private static string Hours(Duration length)
    {
        var minutes = (int)Math.Round(length.TotalMinutes);
        return string.Create(CultureInfo.InvariantCulture, $"{minutes / 60} h {minutes % 60:00} min");
    }

    private static string Day(LocalDate day) => day.ToString("d MMMM", CultureInfo.InvariantCulture);
}
