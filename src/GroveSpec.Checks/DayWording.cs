using System.Globalization;
using NodaTime;

namespace GroveSpec.Checks;

/// <summary>Says days as a grower does.</summary>
public static class DayWording
{
    /// <summary>A day.</summary>
    /// <param name="day">The day.</param>
    /// <returns>Such as "3 May 2027".</returns>
    public static string Say(LocalDate day) => day.ToString("d MMMM uuuu", CultureInfo.InvariantCulture);

    /// <summary>A number of days.</summary>
    /// <param name="count">How many.</param>
    /// <returns>Such as "1 day".</returns>
    public static string Count(int count) => count == 1 ? "1 day" : $"{count} days";
}
