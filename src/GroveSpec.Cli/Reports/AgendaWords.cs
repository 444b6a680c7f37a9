using GroveSpec.Checks;
using GroveSpec.Craft.Calendar;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Model.Times;

namespace GroveSpec.Cli.Reports;

/// <summary>What lies before a grower, in words.</summary>
internal static class AgendaWords
{
    /// <summary>The heading over the tasks of a term.</summary>
    /// <param name="agenda">The agenda.</param>
    /// <param name="term">The term.</param>
    /// <returns>A few words, such as "Later in November 2026".</returns>
    public static string Heading(Agenda agenda, AgendaTerm term) => (term, agenda.Day) switch
    {
        (AgendaTerm.Overdue, { } day) => $"Overdue on {DayWords.Day(day)}",
        (AgendaTerm.Now, { } day) => $"Due now, on {DayWords.Day(day)}",
        (AgendaTerm.Month, { } day) => $"Later in {DayWords.Month(day.Month)} {day.Year}",
        (AgendaTerm.Season, _) when agenda.Season is { } season => $"Later in the {Season(season.Season)}, until {DayWords.Day(season.Days.End)}",
        (AgendaTerm.Year, { } day) => $"Later in {day.Year}",
        (AgendaTerm.Later, { } day) => agenda.Season is { } season && season.Days.End.Year > day.Year ? $"After {DayWords.Day(season.Days.End)}" : $"After {day.Year}",
        (AgendaTerm.Later, null) => "Work with a date",
        (AgendaTerm.Undated, _) => "Without a date",
        _ => "Done, or over",
    };

    /// <summary>A term as programs read it.</summary>
    /// <param name="term">The term.</param>
    /// <returns>A word.</returns>
    public static string Word(AgendaTerm term) => term switch
    {
        AgendaTerm.Overdue => "overdue",
        AgendaTerm.Now => "now",
        AgendaTerm.Month => "month",
        AgendaTerm.Season => "season",
        AgendaTerm.Year => "year",
        AgendaTerm.Later => "later",
        AgendaTerm.Undated => "undated",
        _ => "done",
    };

    /// <summary>When a task is due, seen from the day.</summary>
    /// <param name="entry">The task.</param>
    /// <returns>Words such as "1 to 14 January 2027, 13 days of slack".</returns>
    public static string When(AgendaEntry entry)
    {
        var dated = entry.Dated;
        if (!entry.HeldUpBy.IsEmpty)
        {
            return $"{TaskWords.When(dated)} by the plan, but it waits on {string.Join(" and ", entry.HeldUpBy)}, which {(entry.HeldUpBy.Length == 1 ? "is" : "are")} overdue";
        }

        if (entry.TurnsMissed > 0)
        {
            var (first, turns) = (dated.Repeats[0], entry.TurnsMissed);
            var next = entry.TurnsMissed < dated.Repeats.Length ? $"; next {DayWords.Day(entry.Next!.Value.First)}" : "";
            return turns == 1
                ? $"1 turn not marked as done, {DayWords.Day(first)}{next}"
                : $"{turns} turns not marked as done, the first {DayWords.Day(first)}{next}";
        }

        if (entry.Term == AgendaTerm.Overdue)
        {
            return $"{TaskWords.When(dated)}, {DayWording.Count(entry.DaysOver)} over";
        }

        if (!dated.Repeats.IsEmpty && entry.Term != AgendaTerm.Done)
        {
            return $"{DayWords.Day(entry.Next!.Value.First)}; {TaskWords.When(dated)}";
        }

        return entry.Term is AgendaTerm.Done or AgendaTerm.Undated || dated.Slack is not > 0
            ? TaskWords.When(dated)
            : $"{TaskWords.When(dated)}, {DayWording.Count(dated.Slack.Value)} of slack";
    }

    /// <summary>A season's name.</summary>
    /// <param name="season">The season.</param>
    /// <returns>Its word.</returns>
    public static string Season(Season season) => season switch
    {
        Model.Times.Season.Spring => "spring",
        Model.Times.Season.Summer => "summer",
        Model.Times.Season.Autumn => "autumn",
        _ => "winter",
    };
}
