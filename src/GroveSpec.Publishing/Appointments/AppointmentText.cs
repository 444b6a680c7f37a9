using System.Text;
using GroveSpec.Binding;
using GroveSpec.Craft.Calendar;
using GroveSpec.Drawing;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Model.Tasks;

namespace GroveSpec.Publishing.Appointments;

/// <summary>What an event says of its task. Names and notes come through as the grower wrote them, but for characters that the format has no place for.</summary>
internal static class AppointmentText
{
    /// <summary>What a planting is called.</summary>
    /// <param name="planting">The planting.</param>
    /// <returns>Its name; its file's where it has none.</returns>
    public static string NameOf(Assessment planting) => planting.Planting.Name?.Value ?? planting.File;

    /// <summary>An event's heading: what is done, to which trunks, and in which planting.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="entry">The task.</param>
    /// <returns>One line, such as "unwire on B, C (Salt Bank)".</returns>
    public static string Summary(Assessment planting, AgendaEntry entry)
    {
        var task = entry.Dated.Task;
        var state = entry.Term switch
        {
            AgendaTerm.Done when !task.Done.IsEmpty => "done: ",
            AgendaTerm.Overdue => "overdue: ",
            _ => "",
        };
        return Harmless($"{state}{TaskWords.Work(planting.Planting, task)} ({NameOf(planting)})").Replace('\n', ' ');
    }

    /// <summary>An event's text: the task's name, when it may be done, the grower's note, and the cautions for such work.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="entry">The task.</param>
    /// <returns>Lines.</returns>
    public static string Description(Assessment planting, AgendaEntry entry)
    {
        var task = entry.Dated.Task;
        var lines = new List<string> { $"{task.Name}: {TaskWords.When(entry.Dated)}." };
        if (!entry.HeldUpBy.IsEmpty)
        {
            lines.Add($"It waits on {string.Join(" and ", entry.HeldUpBy)}, which {(entry.HeldUpBy.Length == 1 ? "is" : "are")} overdue; these are the days of the plan.");
        }
        else if (entry.TurnsMissed > 0)
        {
            lines.Add($"Not marked as done: {entry.TurnsMissed} {(entry.TurnsMissed == 1 ? "turn" : "turns")}, the first of them on {DayWords.Day(entry.Dated.Repeats[0])}.");
        }
        else if (entry.Term == AgendaTerm.Overdue)
        {
            lines.Add($"Its last day was {DayWords.Day(entry.Dated.Window!.Value.Last)}, and it is not marked as done.");
        }

        if (task.Note is { } note)
        {
            lines.Add(note.Value);
        }

        lines.AddRange(Cautions.Of(planting.Planting, [task]));
        return Harmless(string.Join('\n', lines));
    }

    /// <summary>The kind of work, for programs that sort by it.</summary>
    /// <param name="task">The task.</param>
    /// <returns>A word or two.</returns>
    public static string Category(PlantingTask task) => Harmless(TaskWords.Kind(task)).Replace('\n', ' ');

    /// <summary>A text without characters that iCalendar has no place for (RFC 5545, section 3.1: controls but the tab and the line end) or that are half a character.</summary>
    /// <param name="text">Any text.</param>
    /// <returns>The text, line ends as one character, with U+FFFD for each that was left out.</returns>
    public static string Harmless(string text)
    {
        var kept = new StringBuilder(text.Length);
        foreach (var rune in text.Replace("\r\n", "\n", StringComparison.Ordinal).EnumerateRunes())
        {
            kept.Append(rune.Value == '\r' ? "\n" : Rune.IsControl(rune) && rune.Value is not ('\n' or '\t') ? "\uFFFD" : rune.ToString());
        }

        return kept.ToString();
    }
}
