using NodaTime;

namespace GroveSpec.Drawing.Timeline;

/// <summary>The days of a timeline across the page.</summary>
internal sealed class TimeAxis
{
    private const double LeastMonth = 17;
    private const double LeastSeason = 36;

    private readonly double pixelsPerDay;

    /// <summary>Spreads days over the page.</summary>
    /// <param name="days">The days; widened to whole months, seasons or years.</param>
    /// <param name="left">The left edge, in pixels.</param>
    /// <param name="right">The right edge.</param>
    public TimeAxis(DateInterval days, double left, double right)
    {
        Left = left;
        Right = right;
        var months = ((days.End.Year - days.Start.Year) * 12) + days.End.Month - days.Start.Month + 1;
        Grain = (right - left) / months >= LeastMonth ? TimeGrain.Month
            : (right - left) / months * 3 >= LeastSeason ? TimeGrain.Season
            : TimeGrain.Year;
        Start = Grain == TimeGrain.Year ? new LocalDate(days.Start.Year, 1, 1) : new LocalDate(days.Start.Year, days.Start.Month, 1);
        End = Grain == TimeGrain.Year ? new LocalDate(days.End.Year + 1, 1, 1) : new LocalDate(days.End.Year, days.End.Month, 1).PlusMonths(1);
        pixelsPerDay = (right - left) / Period.DaysBetween(Start, End);
    }

    /// <summary>Into what the axis is divided.</summary>
    public TimeGrain Grain { get; }

    /// <summary>The first day shown.</summary>
    public LocalDate Start { get; }

    /// <summary>The day after the last one shown.</summary>
    public LocalDate End { get; }

    /// <summary>The left edge.</summary>
    public double Left { get; }

    /// <summary>The right edge.</summary>
    public double Right { get; }

    /// <summary>How many years are shown, as a bare number.</summary>
    public double Years => Period.DaysBetween(Start, End) / 365.25;

    /// <summary>Where a day begins.</summary>
    /// <param name="day">The day.</param>
    /// <returns>Pixels from the left of the page, held within the axis.</returns>
    public double At(LocalDate day) => Math.Clamp(Left + (Period.DaysBetween(Start, day) * pixelsPerDay), Left, Right);

    /// <summary>Where a day is half over.</summary>
    /// <param name="day">The day.</param>
    /// <returns>Pixels from the left of the page, held within the axis.</returns>
    public double Noon(LocalDate day) => Math.Clamp(At(day) + (pixelsPerDay / 2), Left, Right);

    /// <summary>Whether a day is shown.</summary>
    /// <param name="day">The day.</param>
    /// <returns>True from the first to the last day shown.</returns>
    public bool Shows(LocalDate day) => day >= Start && day < End;

    /// <summary>The length of a stretch of days.</summary>
    /// <param name="days">How many.</param>
    /// <returns>Pixels.</returns>
    public double Length(int days) => days * pixelsPerDay;
}
