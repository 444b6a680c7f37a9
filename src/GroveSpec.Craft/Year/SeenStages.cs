using System.Collections.Immutable;
using GroveSpec.Model.Sites;
using GroveSpec.Model.Species;
using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Craft.Year;

/// <summary>
/// What the stages that were seen say of other stages and other years. Stages counted from the same day of the site's year come
/// early or late together: a warm spring brings bud-break and leaf-out forward, but says nothing of the autumn. Source: common practice.
/// </summary>
internal sealed class SeenStages
{
    /// <summary>A stage that came further than this from the middle of its band stands for itself and moves nothing else.</summary>
    public const int MostDaysMoved = 60;

    private readonly Dictionary<(int Year, Stage Stage), LocalDate> days = [];
    private readonly Dictionary<(int Year, FrostAnchor Anchor), List<(Stage Stage, int Shift)>> shifts = [];

    /// <summary>Reads the notes.</summary>
    /// <param name="seen">The notes, in the order written; of two of one stage in one year the first counts.</param>
    /// <param name="usual">The stages, as they usually come, of the species they were seen on.</param>
    public SeenStages(ImmutableArray<SeenStage> seen, UsualStages usual)
    {
        foreach (var note in seen)
        {
            var year = YearOf(note, usual);
            if (!days.TryAdd((year, note.Stage), note.Date) || note.Stage == Stage.Midsummer
                || usual.Band(note.Stage) is not { } band || usual.Days(note.Stage, year) is not { } expected)
            {
                continue;
            }

            var shift = DaysFromMiddle(note.Date, expected);
            if (Math.Abs(shift) <= MostDaysMoved)
            {
                if (!shifts.TryGetValue((year, band.Anchor), out var list))
                {
                    shifts.Add((year, band.Anchor), list = []);
                }

                list.Add((note.Stage, shift));
            }
        }
    }

    /// <summary>The day on which a stage was seen.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="year">The year it belongs to.</param>
    /// <returns>The day; null when it was not seen.</returns>
    public LocalDate? Day(Stage stage, int year) => days.TryGetValue((year, stage), out var day) ? day : null;

    /// <summary>How much a stage is moved by what was seen in its own year.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="anchor">The day its band is counted from.</param>
    /// <param name="year">The year.</param>
    /// <returns>The shift of the stage itself, as seen on another species, or of the last seen before it, else of the first seen after it, and which that was; null when none of its kind was seen.</returns>
    public (int Shift, Stage By)? InYear(Stage stage, FrostAnchor anchor, int year)
    {
        if (stage == Stage.Midsummer || !shifts.TryGetValue((year, anchor), out var list))
        {
            return null;
        }

        (int Shift, Stage By)? before = null;
        (int Shift, Stage By)? after = null;
        foreach (var (seen, shift) in list)
        {
            if (seen <= stage && (before is null || seen > before.Value.By))
            {
                before = (shift, seen);
            }

            if (seen > stage && (after is null || seen < after.Value.By))
            {
                after = (shift, seen);
            }
        }

        return before ?? after;
    }

    /// <summary>How much the site differs, by the notes of all years.</summary>
    /// <param name="stage">The stage that is asked for.</param>
    /// <param name="anchor">The day its band is counted from.</param>
    /// <returns>
    /// The shift to take, how many days early or late its kind came on average, and of how many years there are notes; none without.
    /// Of n years the part n / (n + 1) of the average is taken, so that one odd year does not make the site: common practice for few readings.
    /// </returns>
    public (int Shift, int Mean, int Years)? OverYears(Stage stage, FrostAnchor anchor)
    {
        if (stage == Stage.Midsummer)
        {
            return null;
        }

        var (sum, years) = (0.0, 0);
        foreach (var ((_, counted), list) in shifts)
        {
            if (counted == anchor)
            {
                sum += list.Average(one => one.Shift);
                years++;
            }
        }

        return years == 0 ? null : (Whole(sum / (years + 1)), Whole(sum / years), years);
    }

    // At the turn of the year a stage may come in the neighbouring calendar year: it belongs to the year whose band it is nearest to.
    private static int YearOf(SeenStage note, UsualStages usual)
    {
        var (nearest, least) = (note.Date.Year, int.MaxValue);
        foreach (var year in new[] { note.Date.Year, note.Date.Year - 1, note.Date.Year + 1 })
        {
            if (usual.Days(note.Stage, year) is { } expected && Math.Abs(DaysFromMiddle(note.Date, expected)) is var apart && apart < least)
            {
                (nearest, least) = (year, apart);
            }
        }

        return nearest;
    }

    private static int DaysFromMiddle(LocalDate day, DateInterval expected) =>
        Period.DaysBetween(expected.Start, day) - ((expected.Length - 1) / 2);

    private static int Whole(double days) => (int)Math.Round(days, MidpointRounding.AwayFromZero);
}
