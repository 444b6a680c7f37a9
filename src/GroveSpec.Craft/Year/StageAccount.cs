using System.Globalization;
using GroveSpec.Model.Species;
using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Craft.Year;

/// <summary>Says where the days of a stage come from.</summary>
internal static class StageAccount
{
    /// <summary>Of a stage that was seen.</summary>
    /// <param name="day">The day.</param>
    /// <returns>A sentence.</returns>
    public static string Seen(LocalDate day) => $"It was seen on {Day(day)}.";

    /// <summary>Of a band.</summary>
    /// <param name="band">The band.</param>
    /// <param name="anchor">The day it is counted from, in the year meant.</param>
    /// <param name="species">The species; null when none is named.</param>
    /// <param name="usual">The stages it is one of.</param>
    /// <returns>A sentence.</returns>
    public static string Usual(UsualBand band, LocalDate anchor, string? species, UsualStages usual)
    {
        var whose = band.Basis == StageBasis.Profile
            ? $"By the profile of {species} ({band.Source})"
            : $"By {band.Source} for {Tree(usual.Habit)}{(usual.IsHabitKnown ? "" : ", which is taken for want of a profile")},";
        var day = band.Anchor switch
        {
            FrostAnchor.LastFrost => $"the usual last frost, {Day(anchor)}",
            FrostAnchor.FirstFrost => $"the usual first frost, {Day(anchor)}",
            _ => $"the summer solstice, {Day(anchor)}",
        };
        return $"{whose} it begins {Span(band.Earliest, band.Latest)} {day}.";
    }

    /// <summary>Of a band that a stage seen in the same year moved.</summary>
    /// <param name="shift">By how many days, negative to earlier.</param>
    /// <param name="by">The stage.</param>
    /// <param name="day">When it was seen.</param>
    /// <returns>A sentence.</returns>
    public static string Moved(int shift, Stage by, LocalDate day) =>
        $"It is {Moved(shift)}, and the band is halved, because {Word(by)} was seen on {Day(day)}.";

    /// <summary>Of a band that the notes of other years moved.</summary>
    /// <param name="shift">By how many days, negative to earlier.</param>
    /// <param name="mean">How many days early or late stages of its kind came on average.</param>
    /// <param name="years">In how many years.</param>
    /// <returns>A sentence.</returns>
    public static string Moved(int shift, int mean, int years) =>
        $"It is {Moved(shift)}, because what was seen in {Count(years, "year")} came {Count(Math.Abs(mean), "day")} {(mean < 0 ? "early" : "late")} on average; of so few years only a part is taken.";

    private static string Moved(int shift) => shift == 0 ? "left where it is" : $"moved {Count(Math.Abs(shift), "day")} {(shift < 0 ? "earlier" : "later")}";

    private static string Span(int earliest, int latest) => (earliest, latest) switch
    {
        ( < 0, < 0) => $"{-earliest} to {Count(-latest, "day")} before",
        ( < 0, 0) => $"from {Count(-earliest, "day")} before to",
        ( < 0, _) => $"from {Count(-earliest, "day")} before to {Count(latest, "day")} after",
        (0, 0) => "on",
        _ => $"{earliest} to {Count(latest, "day")} after",
    };

    private static string Tree(LeafHabit habit) => habit switch
    {
        LeafHabit.Deciduous => "a tree that drops its leaves",
        LeafHabit.DeciduousConifer => "a conifer that drops its needles",
        LeafHabit.SemiEvergreen => "a tree that drops its leaves in hard winters",
        LeafHabit.Evergreen => "a tree that keeps its leaves",
        LeafHabit.Conifer => "a conifer that keeps its needles",
        _ => "a tree without a cold rest",
    };

    private static string Word(Stage stage) => stage switch
    {
        Stage.BudBreak => "bud-break",
        Stage.LeafOut => "leaf-out",
        Stage.HardenOff => "harden-off",
        Stage.Midsummer => "midsummer",
        Stage.LeafColour => "leaf-colour",
        Stage.LeafFall => "leaf-fall",
        _ => "the rest",
    };

    private static string Count(int number, string unit) => $"{number} {unit}{(number == 1 ? "" : "s")}";

    private static string Day(LocalDate day) => day.ToString("d MMMM uuuu", CultureInfo.InvariantCulture);
}
