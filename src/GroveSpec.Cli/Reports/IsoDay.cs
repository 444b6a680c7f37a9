using NodaTime;

namespace GroveSpec.Cli.Reports;

/// <summary>Days as the language writes them, made without the calendar library's patterns, which cost a start.</summary>
internal static class IsoDay
{
    /// <summary>A day.</summary>
    /// <param name="day">The day.</param>
    /// <returns>Such as "2027-05-03".</returns>
    public static string Of(LocalDate day) => $"{day.Year:0000}-{day.Month:00}-{day.Day:00}";
}
