using GroveSpec.Craft.Calendar;
using GroveSpec.Craft.Care;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Roles;
using GroveSpec.Model.Species;
using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Craft.Wire;

/// <summary>
/// How a trunk thickens through the year. A season's growth follows a Gompertz curve that is steepest at the summer solstice, where the
/// growth of trees in cold climates is (Rossi and others 2006), and has nine tenths behind it as the leaves colour, or as an evergreen
/// comes to rest (common practice). What has no cold rest thickens evenly. How much a year brings is a wide band, from memory. It keeps what it has
/// worked out, so it belongs to one thread at a time.
/// </summary>
/// <param name="kind">The species.</param>
/// <param name="vigour">How the trunk is driven by its role; null for none.</param>
public sealed class Thickening(TreeKind kind, Vigour? vigour)
{
    private const double DaysOfYear = 365.25;

    // −ln(−ln 0.9): by how many steps of 1/κ nine tenths come after the steepest day.
    private const double StepsToNineTenths = 2.2504;
    private const int UsualDaysToNineTenths = 115;
    private const int FewestDaysToNineTenths = 45;
    private const int MostDaysAhead = 3 * 366;

    // Of each year the steepest day and the days of one step of the curve; null where the site does not tell.
    private readonly Dictionary<int, (LocalDate Steepest, double Step)?> curves = [];

    /// <summary>The least and the most by which the thickness grows in a year.</summary>
    /// <returns>Increments of the diameter.</returns>
    public (Length Least, Length Most) OfYear { get; } = Band(kind.Profile?.Growth?.Value, vigour);

    /// <summary>What is taken where one figure is needed: the middle of <see cref="OfYear"/>.</summary>
    public Length Usual => (OfYear.Least + OfYear.Most) * 0.5;

    /// <summary>How much of a year's growth comes between two days.</summary>
    /// <param name="from">The first.</param>
    /// <param name="to">The second, not before the first.</param>
    /// <returns>A share, above 1 over more than a year.</returns>
    public double ShareBetween(LocalDate from, LocalDate to) => ShareSince(from)(to);

    /// <summary>The day by which the thickness has grown by so much.</summary>
    /// <param name="from">The day from which on it is counted.</param>
    /// <param name="growth">The increment of the diameter, above zero.</param>
    /// <param name="ofYear">What a year brings.</param>
    /// <returns>The first such day; null where it takes three years or more, or the calendar ends.</returns>
    public LocalDate? DayOf(LocalDate from, Length growth, Length ofYear)
    {
        if (from.Year > 9990 || ofYear <= Length.Zero)
        {
            return null;
        }

        var share = growth / ofYear;
        var shareUntil = ShareSince(from);
        if (shareUntil(from.PlusDays(MostDaysAhead)) < share)
        {
            return null;
        }

        var (before, after) = (0, MostDaysAhead);
        while (after - before > 1)
        {
            var middle = (before + after) / 2;
            (before, after) = shareUntil(from.PlusDays(middle)) < share ? (middle, after) : (before, middle);
        }

        return from.PlusDays(after);
    }

    /// <summary>The days between two days on which the tree does not rest.</summary>
    /// <param name="year">The tree's year.</param>
    /// <param name="from">The first day, counted.</param>
    /// <param name="to">The day behind the last, not counted.</param>
    /// <returns>The days from bud-break to the coming of rest; all of them where the tree has no rest or its site no frosts. Negative where the second day comes first.</returns>
    public static int GrowingDays(TreeYear year, LocalDate from, LocalDate to)
    {
        var days = Period.DaysBetween(from, to);
        for (var number = from.Year - 1; number <= to.Year && days > 0; number++)
        {
            if (year.Onset(Stage.Dormant, number) is { } rest && NextBudBreak(year, rest.End) is { } wake)
            {
                days -= Math.Max(0, Period.DaysBetween(LocalDate.Max(from, rest.End), LocalDate.Min(to, wake)));
            }
        }

        return days;
    }

    private static LocalDate? NextBudBreak(TreeYear year, LocalDate after)
    {
        for (var number = after.Year; number <= after.Year + 1; number++)
        {
            if (year.Onset(Stage.BudBreak, number) is { } wake && wake.Start > after)
            {
                return wake.Start;
            }
        }

        return null;
    }

    /// <summary>Increments of the diameter in a container, in a year. Source: from memory; wide on purpose. A role that holds back halves them, one that pushes adds half (common practice).</summary>
    private static (Length Least, Length Most) Band(GrowthPace? pace, Vigour? vigour)
    {
        var (least, most) = pace switch
        {
            GrowthPace.Slow => (0.5, 1.5),
            GrowthPace.Medium => (1.0, 3.0),
            GrowthPace.Fast => (2.0, 5.0),
            _ => (0.5, 4.0),
        };
        var factor = vigour switch
        {
            Vigour.Restrain => 0.5,
            Vigour.Push => 1.5,
            _ => 1.0,
        };
        return (Length.FromMillimetres(least * factor), Length.FromMillimetres(most * factor));
    }

    /// <summary>How much of a year's growth comes between a day and others.</summary>
    private Func<LocalDate, double> ShareSince(LocalDate from)
    {
        if (kind.Year.Habit == LeafHabit.Tropical)
        {
            return day => Period.DaysBetween(from, day) / DaysOfYear;
        }

        var before = Grown(from);
        return day => Grown(day) - before;
    }

    /// <summary>The years' growth up to a day, counted from a year before it, so that differences of near days are exact enough.</summary>
    private double Grown(LocalDate day)
    {
        var grown = (double)day.Year;
        for (var number = day.Year - 2; number <= day.Year + 1; number++)
        {
            if (CurveOf(number) is var (steepest, step))
            {
                grown += Math.Exp(-Math.Exp(-Period.DaysBetween(steepest, day) / step)) - (number < day.Year ? 1 : 0);
            }
        }

        return grown;
    }

    private (LocalDate Steepest, double Step)? CurveOf(int year)
    {
        if (!curves.TryGetValue(year, out var curve))
        {
            curve = kind.Year.Onset(Stage.Midsummer, year) is { } midsummer
                ? (Middle(midsummer), Math.Max(DaysToNineTenths(Middle(midsummer)), FewestDaysToNineTenths) / StepsToNineTenths)
                : null;
            curves.Add(year, curve);
        }

        return curve;
    }

    private int DaysToNineTenths(LocalDate steepest)
    {
        var ending = kind.Year.Has(Stage.LeafColour) ? Stage.LeafColour : Stage.Dormant;

        // South of the equator the leaves colour in the calendar year behind that midsummer's.
        for (var number = steepest.Year; number <= steepest.Year + 1; number++)
        {
            if (kind.Year.Onset(ending, number) is { } last && Middle(last) > steepest)
            {
                return Period.DaysBetween(steepest, Middle(last));
            }
        }

        return UsualDaysToNineTenths;
    }

    private static LocalDate Middle(DateInterval days) => days.Start.PlusDays((days.Length - 1) / 2);
}
