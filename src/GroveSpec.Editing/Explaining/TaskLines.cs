using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Craft.Calendar;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Model;
using GroveSpec.Model.Tasks;
using NodaTime;
using NodaTime.Text;

namespace GroveSpec.Editing.Explaining;

/// <summary>Says when a task is due and what it waits on.</summary>
internal static class TaskLines
{
    private const int MostDays = 4;

    /// <summary>The days of a task.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="task">The task.</param>
    /// <returns>A line for each thing that is known.</returns>
    public static ImmutableArray<string> Of(Planting planting, PlantingTask task)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        var all = TaskDates.Of(planting);
        var dated = all.First(candidate => ReferenceEquals(candidate.Task, task));
        if (!task.Done.IsEmpty)
        {
            lines.Add($"Done on {string.Join(", ", task.Done.Select(done => Iso(done.Value)))}.");
        }

        if (dated.Window is { } window)
        {
            lines.Add(Say(window));
        }
        else
        {
            lines.Add($"It has no date: {TaskWords.Undated(dated)}.");
        }

        if (!dated.Repeats.IsEmpty)
        {
            var more = dated.Repeats.Length > MostDays || dated.RepeatsGoOn ? " and so on" : "";
            lines.Add($"Due on {string.Join(", ", dated.Repeats.Take(MostDays).Select(Iso))}{more}.");
        }

        if (!dated.WaitsOn.IsEmpty)
        {
            lines.Add($"It waits on {string.Join(", ", dated.WaitsOn)}.");
        }

        var followers = all.Where(other => other.WaitsOn.Contains(task.Name)).Select(other => other.Task.Name).ToList();
        if (followers.Count > 0)
        {
            lines.Add($"Waiting on it: {string.Join(", ", followers)}.");
        }

        return lines.ToImmutable();
    }

    private static string Say(TaskWindow window) => (window.Earliest, window.Latest) switch
    {
        ({ } from, { } to) when from == to => $"On {Iso(from)}.",
        ({ } from, { } to) => string.Create(CultureInfo.InvariantCulture, $"From {Iso(from)} to {Iso(to)}, {Period.DaysBetween(from, to) + 1} days."),
        ({ } from, null) => $"From {Iso(from)} on.",
        (null, { } to) => $"Until {Iso(to)}.",
        _ => "At any time.",
    };

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);
}
