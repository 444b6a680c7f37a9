using GroveSpec.Model.Sites;
using GroveSpec.Model.Species;
using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Craft.Year;

/// <summary>The stages of a species as they usually come on a site, before anything was seen.</summary>
internal sealed class UsualStages
{
    private const int FirstYear = 3;
    private const int LastYear = 9996;
    private const int MostDaysFromAnchor = 366;
    private const string CommonPractice = "common practice";

    private readonly Site? site;
    private readonly bool isSouthern;
    private readonly Dictionary<Stage, UsualBand> bands = [];

    /// <summary>The stages of a species on a site.</summary>
    /// <param name="site">The site; without its frosts no stage but midsummer has days.</param>
    /// <param name="profile">The species' profile; without one, or without its leaf habit, a tree that drops its leaves is taken.</param>
    public UsualStages(Site? site, SpeciesProfile? profile)
    {
        this.site = site;
        isSouthern = site?.IsSouthern ?? false;
        Habit = profile?.Leaves?.Value ?? LeafHabit.Deciduous;
        IsHabitKnown = profile?.Leaves is not null;
        foreach (var (stage, anchor, earliest, latest) in OfHabit(Habit))
        {
            bands[stage] = new UsualBand(stage, anchor, earliest, latest, StageBasis.LeafHabit, CommonPractice);
        }

        foreach (var band in profile?.Stages ?? [])
        {
            bands[band.Stage] = new UsualBand(band.Stage, band.Anchor, band.Earliest, band.Latest, StageBasis.Profile, band.Source);
        }
    }

    /// <summary>How the tree carries its leaves.</summary>
    public LeafHabit Habit { get; }

    /// <summary>Whether a profile says so.</summary>
    public bool IsHabitKnown { get; }

    /// <summary>The band of a stage.</summary>
    /// <param name="stage">The stage.</param>
    /// <returns>Its band; null for a stage that this tree does not have, and for a band that cannot be.</returns>
    public UsualBand? Band(Stage stage) =>
        bands.TryGetValue(stage, out var band) && band.Earliest <= band.Latest
            && Math.Abs((long)band.Earliest) <= MostDaysFromAnchor && Math.Abs((long)band.Latest) <= MostDaysFromAnchor
            ? band
            : null;

    /// <summary>When a stage usually begins.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="year">The calendar year.</param>
    /// <returns>The earliest and the latest first day; null without a band or without the day it is counted from.</returns>
    public DateInterval? Days(Stage stage, int year) =>
        Band(stage) is { } band && AnchorDay(band.Anchor, year) is { } day ? new DateInterval(day.PlusDays(band.Earliest), day.PlusDays(band.Latest)) : null;

    /// <summary>The day of a year that bands are counted from.</summary>
    /// <param name="anchor">Which.</param>
    /// <param name="year">The calendar year of its spring, autumn or midsummer.</param>
    /// <returns>The day; null when the site does not say, and for a year that cannot be reckoned with.</returns>
    public LocalDate? AnchorDay(FrostAnchor anchor, int year) => year is < FirstYear or > LastYear ? null : anchor switch
    {
        // A mild northern site may have its first frost after the turn of the year, or its last one before it.
        FrostAnchor.LastFrost => site?.LastFrost?.Value is { } last ? last.InYear(!isSouthern && last.Month >= 9 ? year - 1 : year) : null,
        FrostAnchor.FirstFrost => site?.FirstFrost?.Value is { } first ? first.InYear(!isSouthern && first.Month <= 4 ? year + 1 : year) : null,
        _ => SolarTurns.DayOf(isSouthern ? SolarTurn.DecemberSolstice : SolarTurn.JuneSolstice, year) ?? new LocalDate(year, isSouthern ? 12 : 6, 21),
    };

    /// <summary>Bands for a tree whose profile has none. Source: common practice, in days from the site's average frosts. What keeps its leaves has no stage for losing them, and what has no cold rest has none but midsummer.</summary>
    private static ReadOnlySpan<(Stage Stage, FrostAnchor Anchor, int Earliest, int Latest)> OfHabit(LeafHabit habit) => habit switch
    {
        LeafHabit.DeciduousConifer => new[]
        {
            (Stage.BudBreak, FrostAnchor.LastFrost, -35, -14),
            (Stage.LeafOut, FrostAnchor.LastFrost, -21, 0),
            (Stage.HardenOff, FrostAnchor.LastFrost, 35, 56),
            (Stage.Midsummer, FrostAnchor.Solstice, -3, 3),
            (Stage.LeafColour, FrostAnchor.FirstFrost, -28, -7),
            (Stage.LeafFall, FrostAnchor.FirstFrost, -7, 14),
            (Stage.Dormant, FrostAnchor.FirstFrost, 14, 35),
        },
        LeafHabit.Evergreen or LeafHabit.Conifer => new[]
        {
            (Stage.BudBreak, FrostAnchor.LastFrost, -21, 0),
            (Stage.LeafOut, FrostAnchor.LastFrost, 0, 21),
            (Stage.HardenOff, FrostAnchor.LastFrost, 42, 70),
            (Stage.Midsummer, FrostAnchor.Solstice, -3, 3),
            (Stage.Dormant, FrostAnchor.FirstFrost, 0, 28),
        },
        LeafHabit.Tropical => new[] { (Stage.Midsummer, FrostAnchor.Solstice, -3, 3) },
        _ => new[]
        {
            (Stage.BudBreak, FrostAnchor.LastFrost, -35, -14),
            (Stage.LeafOut, FrostAnchor.LastFrost, -21, 7),
            (Stage.HardenOff, FrostAnchor.LastFrost, 28, 49),
            (Stage.Midsummer, FrostAnchor.Solstice, -3, 3),
            (Stage.LeafColour, FrostAnchor.FirstFrost, -28, -7),
            (Stage.LeafFall, FrostAnchor.FirstFrost, -7, 21),
            (Stage.Dormant, FrostAnchor.FirstFrost, 14, 42),
        },
    };
}
