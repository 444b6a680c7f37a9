using System.Collections.Immutable;
using GroveSpec.Craft.Year;
using GroveSpec.Model;
using GroveSpec.Model.Species;
using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Craft.Calendar;

/// <summary>
/// The year of one species on one site: when its stages begin. A stage that was seen begins on that day;
/// otherwise the bands of the species' profile are counted from the site's frosts and the solstice,
/// and where the profile has none, bands of common practice for its leaf habit. What was seen moves the other stages of that year,
/// and less so those of other years. It keeps what it has worked out, so it belongs to one thread at a time.
/// </summary>
public sealed class TreeYear
{
    private readonly string? species;
    private readonly bool isSpeciesSeen;
    private readonly UsualStages usual;
    private readonly SeenStages seen;
    private readonly Dictionary<long, StageOnset?> comings = [];
    private readonly Dictionary<long, DateInterval?> underWay = [];

    private TreeYear(Planting planting, string? species)
    {
        this.species = species;
        usual = new UsualStages(planting.Site, planting.ProfileOf(species));

        // Stages are noted of the planting's own species. Of another one they tell whether the year is early, but not the day.
        isSpeciesSeen = planting.Species is null || species is null || species == planting.Species.Value.Value;
        seen = new SeenStages(planting.Seen, isSpeciesSeen ? usual : new UsualStages(planting.Site, planting.ProfileOf(planting.Species?.Value)));
    }

    /// <summary>The year of a species in a planting.</summary>
    /// <param name="planting">The planting, for its site, profiles and what was seen.</param>
    /// <param name="species">The species' name as written; where it has no profile, a tree that drops its leaves is taken.</param>
    /// <returns>Its year.</returns>
    public static TreeYear Of(Planting planting, string? species) => new(planting, species);

    /// <summary>How the tree carries its leaves; what drops them is taken where no profile says.</summary>
    public LeafHabit Habit => usual.Habit;

    /// <summary>Whether the tree has a stage at all, whatever the site.</summary>
    /// <param name="stage">The stage.</param>
    /// <returns>False for one that neither its profile nor its leaf habit has.</returns>
    public bool Has(Stage stage) => usual.Band(stage) is not null;

    /// <summary>When a stage begins, and where that comes from.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="year">The calendar year in which it begins.</param>
    /// <returns>Its days with their source; null where <see cref="Onset"/> is.</returns>
    public StageOnset? Coming(Stage stage, int year)
    {
        var key = KeyOf(stage, year);
        if (!comings.TryGetValue(key, out var coming))
        {
            comings.Add(key, coming = Reckon(stage, year));
        }

        return coming;
    }

    /// <summary>When a stage begins.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="year">The calendar year in which it begins.</param>
    /// <returns>The earliest and latest first day; null without the frost date it is counted from, for a stage this tree does not have, and for a year that cannot be reckoned with.</returns>
    public DateInterval? Onset(Stage stage, int year) => Coming(stage, year)?.Days;

    /// <summary>The days on which a stage may be under way: from its earliest beginning to the day before the next stage can begin.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="year">The calendar year in which it begins.</param>
    /// <returns>The days; null where <see cref="Onset"/> is.</returns>
    public DateInterval? Days(Stage stage, int year)
    {
        var key = KeyOf(stage, year);
        if (!underWay.TryGetValue(key, out var known))
        {
            underWay.Add(key, known = UnderWay(stage, year));
        }

        return known;
    }

    /// <summary>The last frost of spring.</summary>
    /// <param name="year">The calendar year of that spring.</param>
    /// <returns>The day; null when the site does not say.</returns>
    public LocalDate? LastFrost(int year) => usual.AnchorDay(FrostAnchor.LastFrost, year);

    /// <summary>The first frost of autumn.</summary>
    /// <param name="year">The calendar year of that autumn.</param>
    /// <returns>The day; null when the site does not say.</returns>
    public LocalDate? FirstFrost(int year) => usual.AnchorDay(FrostAnchor.FirstFrost, year);

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

    /// <summary>One number for both: a table looks it up several times as fast as the pair.</summary>
    private static long KeyOf(Stage stage, int year) => ((long)year << 8) | (byte)stage;

    private DateInterval? UnderWay(Stage stage, int year)
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

    private StageOnset? Reckon(Stage stage, int year)
    {
        if (isSpeciesSeen && seen.Day(stage, year) is { } noted)
        {
            return new StageOnset { Stage = stage, Days = new DateInterval(noted, noted), Basis = StageBasis.Seen, Source = "seen", Account = StageAccount.Seen(noted) };
        }

        if (usual.Band(stage) is not { } band || usual.AnchorDay(band.Anchor, year) is not { } anchor)
        {
            return null;
        }

        var account = StageAccount.Usual(band, anchor, species, usual);
        var coming = new StageOnset { Stage = stage, Days = new DateInterval(anchor.PlusDays(band.Earliest), anchor.PlusDays(band.Latest)), Basis = band.Basis, Source = band.Source, Account = account };
        if (seen.InYear(stage, band.Anchor, year) is var (shift, by))
        {
            var day = seen.Day(by, year)!.Value;
            return coming with { Days = Narrowed(coming.Days, shift, stage, by, day), DaysMoved = shift, MovedBy = by, Account = $"{account} {StageAccount.Moved(shift, by, day)}" };
        }

        return seen.OverYears(stage, band.Anchor) is { Shift: not 0 } site
            ? coming with
            {
                Days = new DateInterval(coming.Days.Start.PlusDays(site.Shift), coming.Days.End.PlusDays(site.Shift)),
                DaysMoved = site.Shift,
                YearsOfNotes = site.Years,
                Account = $"{account} {StageAccount.Moved(site.Shift, site.Mean, site.Years)}",
            }
            : coming;
    }

    /// <summary>A band moved and halved about its middle by a stage of the same year; it stays behind an earlier stage that was seen, and before a later one.</summary>
    private DateInterval Narrowed(DateInterval band, int shift, Stage stage, Stage by, LocalDate day)
    {
        var width = band.Length - 1;
        var narrowed = (width + 1) / 2;
        var start = band.Start.PlusDays(shift + ((width - narrowed) / 2));
        var end = start.PlusDays(narrowed);
        if (!isSpeciesSeen)
        {
            return new DateInterval(start, end);
        }

        return stage > by
            ? new DateInterval(LocalDate.Max(start, day.PlusDays(1)), LocalDate.Max(end, day.PlusDays(1)))
            : new DateInterval(LocalDate.Min(start, day.PlusDays(-1)), LocalDate.Min(end, day.PlusDays(-1)));
    }
}
