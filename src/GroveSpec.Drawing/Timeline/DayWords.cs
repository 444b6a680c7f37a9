using NodaTime;

namespace GroveSpec.Drawing.Timeline;

/// <summary>Days in words.</summary>
public static class DayWords
{
    private static readonly string[] Months =
        ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

    /// <summary>A month's name.</summary>
    /// <param name="month">From 1 to 12.</param>
    /// <returns>The whole name.</returns>
    public static string Month(int month) => Months[month - 1];

    /// <summary>A day: "9 May 2027".</summary>
    /// <param name="day">The day.</param>
    /// <returns>The words.</returns>
    public static string Day(LocalDate day) => $"{day.Day} {Month(day.Month)} {day.Year}";

    /// <summary>Days from one to another, saying what they share once: "1 to 30 November 2026".</summary>
    /// <param name="from">The first.</param>
    /// <param name="to">The last.</param>
    /// <returns>The words.</returns>
    public static string Range(LocalDate from, LocalDate to) =>
        from == to ? Day(from)
        : from.Year != to.Year ? $"{Day(from)} to {Day(to)}"
        : from.Month != to.Month ? $"{from.Day} {Month(from.Month)} to {Day(to)}"
        : $"{from.Day} to {Day(to)}";

    /// <summary>The same in little room and without the year, unless they are a year or more apart: "1–30 Nov", "27 Nov – 3 Jan", "1 Mar 2029 – 31 Mar 2030".</summary>
    /// <param name="from">The first.</param>
    /// <param name="to">The last.</param>
    /// <returns>The words.</returns>
    internal static string Brief(LocalDate from, LocalDate to) =>
        from == to ? $"{from.Day} {Month(from.Month)[..3]}"
        : to >= from.PlusMonths(11) ? $"{from.Day} {Month(from.Month)[..3]} {from.Year} – {to.Day} {Month(to.Month)[..3]} {to.Year}"
        : from.Month == to.Month && from.Year == to.Year ? $"{from.Day}–{to.Day} {Month(to.Month)[..3]}"
        : $"{from.Day} {Month(from.Month)[..3]} – {to.Day} {Month(to.Month)[..3]}";
}
