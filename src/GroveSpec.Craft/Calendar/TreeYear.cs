using System.Collections.Immutable;
using GroveSpec.Model;
using GroveSpec.Model.Sites;
using GroveSpec.Model.Species;
using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Craft.Calendar;

/// <summary>
/// The year of one species on one site: when its stages begin. A stage that was seen begins on that day;
/// otherwise the bands of the species' profile are counted from the site's frosts and the solstice,
/// and where the profile has none, bands of common practice for its leaf habit.
/// </summary>
public sealed class TreeYear
{
    private const int FirstYear = 3;
    private const int LastYear = 9996;

    private readonly Site? site;
    private readonly bool isSouthern;
    private readonly ImmutableArray<SeenStage> seen;
    private readonly Dictionary<Stage, Band> bands = [];

    private TreeYear(Planting planting, SpeciesProfile? profile)
    {
        site = planting.Site;
        isSouthern = site?.IsSouthern ?? false;
        seen = planting.Seen;
        foreach (var band in UsualBands(profile?.Leaves?.Value ?? LeafHabit.Deciduous))
        {
            bands[band.Stage] = band;
        }

        foreach (var band in profile?.Stages ?? [])
        {
            bands[band.Stage] = new Band(band.Stage, band.Anchor, band.Earliest, band.Latest);
        }
    }

    /// <summary>The year of a species in a planting.</summary>
    /// <param name="planting">The planting, for its site, profiles and what was seen.</param>
    /// <param name="species">The species' name as written; where it has no profile, a tree that drops its leaves is taken.</param>
    /// <returns>Its year.</returns>
    public static TreeYear Of(Planting planting, string? species) => new(planting, planting.ProfileOf(species));

    /// <summary>When a stage begins.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="year">The calendar year in which it begins.</param>
    /// <returns>The earliest and latest first day; null without the frost date it is counted from, for a stage this tree does not have, and for a year that cannot be reckoned with.</returns>
    public DateInterval? Onset(Stage stage, int year)
    {
        foreach (var noted in seen)
        {
            if (noted.Stage == stage && noted.Date.Year == year)
            {
                return new DateInterval(noted.Date, noted.Date);
            }
        }

        if (year is < FirstYear or > LastYear || !bands.TryGetValue(stage, out var band) || band.Earliest > band.Latest
            || Math.Abs((long)band.Earliest) > 366 || Math.Abs((long)band.Latest) > 366)
        {
            return null;
        }

        return Anchor(band.Anchor, year) is { } day ? new DateInterval(day.PlusDays(band.Earliest), day.PlusDays(band.Latest)) : null;
    }

    /// <summary>The days on which a stage may be under way: from its earliest beginning to the day before the next stage can begin.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="year">The calendar year in which it begins.</param>
    /// <returns>The days; null where <see cref="Onset"/> is.</returns>
    public DateInterval? Days(Stage stage, int year)
    {
        if (Onset(stage, year) is not { } onset)
        {
            return null;
        }

        if (stage == Stage.Midsummer)
        {
            return onset;
        }

        LocalDate? next = null;
        for (var other = Stage.BudBreak; other <= Stage.Dormant; other++)
        {
            for (var later = year; later <= year + 1 && other != Stage.Midsummer; later++)
            {
                if (Onset(other, later) is { } candidate && candidate.Start > onset.Start && (next is null || candidate.Start < next))
                {
                    next = candidate.Start;
                }
            }
        }

        var end = next is { } following ? LocalDate.Max(onset.End, following.PlusDays(-1)) : onset.End;
        return new DateInterval(onset.Start, end);
    }

    /// <summary>The last frost of spring.</summary>
    /// <param name="year">The calendar year of that spring.</param>
    /// <returns>The day; null when the site does not say.</returns>
    public LocalDate? LastFrost(int year) => year is < FirstYear or > LastYear ? null : Anchor(FrostAnchor.LastFrost, year);

    /// <summary>The first frost of autumn.</summary>
    /// <param name="year">The calendar year of that autumn.</param>
    /// <returns>The day; null when the site does not say.</returns>
    public LocalDate? FirstFrost(int year) => year is < FirstYear or > LastYear ? null : Anchor(FrostAnchor.FirstFrost, year);

    /// <summary>The stages one after another, each from the middle of its band to the middle of the next one's; midsummer, a day rather than a span, is left out.</summary>
    /// <param name="days">The days to cover.</param>
    /// <returns>Every stage that has a day among them, in order of time and cut to them; empty without frost dates.</returns>
    public ImmutableArray<StageSpan> Spans(DateInterval days)
    {
        var onsets = new List<(LocalDate Day, Stage Stage)>();
        for (var year = days.Start.Year - 1; year <= days.End.Year + 1; year++)
        {
            for (var stage = Stage.BudBreak; stage <= Stage.Dormant; stage++)
            {
                if (stage != Stage.Midsummer && Onset(stage, year) is { } onset)
                {
                    onsets.Add((onset.Start.PlusDays((onset.Length - 1) / 2), stage));
                }
            }
        }

        onsets.Sort((left, right) => left.Day != right.Day ? left.Day.CompareTo(right.Day) : left.Stage.CompareTo(right.Stage));
        var spans = ImmutableArray.CreateBuilder<StageSpan>();
        for (var index = 0; index + 1 < onsets.Count; index++)
        {
            var span = new TaskWindow(onsets[index].Day, onsets[index + 1].Day.PlusDays(-1)).Intersect(new TaskWindow(days.Start, days.End));
            if (span is { Earliest: { } start, Latest: { } end } && onsets[index].Day < onsets[index + 1].Day)
            {
                spans.Add(new StageSpan(onsets[index].Stage, new DateInterval(start, end)));
            }
        }

        return spans.ToImmutable();
    }

    private LocalDate? Anchor(FrostAnchor anchor, int year) => anchor switch
    {
        // A mild northern site may have its first frost after the turn of the year, or its last one before it.
        FrostAnchor.LastFrost => site?.LastFrost?.Value is { } last ? last.InYear(!isSouthern && last.Month >= 9 ? year - 1 : year) : null,
        FrostAnchor.FirstFrost => site?.FirstFrost?.Value is { } first ? first.InYear(!isSouthern && first.Month <= 4 ? year + 1 : year) : null,
        _ => new LocalDate(year, isSouthern ? 12 : 6, 21),
    };

    /// <summary>Bands for a tree without a profile of its own. Source: common practice, in days from the site's average frosts.</summary>
    private static ReadOnlySpan<Band> UsualBands(LeafHabit habit) => habit switch
    {
        LeafHabit.DeciduousConifer => new Band[]
        {
            new(Stage.BudBreak, FrostAnchor.LastFrost, -35, -14),
            new(Stage.LeafOut, FrostAnchor.LastFrost, -21, 0),
            new(Stage.HardenOff, FrostAnchor.LastFrost, 35, 56),
            new(Stage.Midsummer, FrostAnchor.Solstice, -3, 3),
            new(Stage.LeafColour, FrostAnchor.FirstFrost, -28, -7),
            new(Stage.LeafFall, FrostAnchor.FirstFrost, -7, 14),
            new(Stage.Dormant, FrostAnchor.FirstFrost, 14, 35),
        },
        LeafHabit.Evergreen or LeafHabit.Conifer => new Band[]
        {
            new(Stage.BudBreak, FrostAnchor.LastFrost, -21, 0),
            new(Stage.LeafOut, FrostAnchor.LastFrost, 0, 21),
            new(Stage.HardenOff, FrostAnchor.LastFrost, 42, 70),
            new(Stage.Midsummer, FrostAnchor.Solstice, -3, 3),
            new(Stage.Dormant, FrostAnchor.FirstFrost, 0, 28),
        },
        LeafHabit.Tropical => new Band[] { new(Stage.Midsummer, FrostAnchor.Solstice, -3, 3) },
        _ => new Band[]
        {
            new(Stage.BudBreak, FrostAnchor.LastFrost, -35, -14),
            new(Stage.LeafOut, FrostAnchor.LastFrost, -21, 7),
            new(Stage.HardenOff, FrostAnchor.LastFrost, 28, 49),
            new(Stage.Midsummer, FrostAnchor.Solstice, -3, 3),
            new(Stage.LeafColour, FrostAnchor.FirstFrost, -28, -7),
            new(Stage.LeafFall, FrostAnchor.FirstFrost, -7, 21),
            new(Stage.Dormant, FrostAnchor.FirstFrost, 14, 42),
        },
    };

    private readonly record struct Band(Stage Stage, FrostAnchor Anchor, int Earliest, int Latest);
}
