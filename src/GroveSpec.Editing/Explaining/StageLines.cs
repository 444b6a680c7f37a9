using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Craft.Calendar;
using GroveSpec.Craft.Care;
using GroveSpec.Craft.Year;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Editing.Explaining;

/// <summary>Says when a stage comes, how wide its band is and where that comes from.</summary>
internal static class StageLines
{
    /// <summary>A stage of a year.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="task">The task that names it, for its trees; null for the planting's own species.</param>
    /// <param name="stage">The stage.</param>
    /// <param name="year">The year.</param>
    /// <returns>The lines of each species: its days, where they come from, and how long the days then are.</returns>
    public static ImmutableArray<string> Of(Planting planting, PlantingTask? task, Stage stage, int year)
    {
        ImmutableArray<TreeKind> kinds = task is null
            ? [WorkList.KindOf(planting, planting.Species?.Value)]
            : WorkList.Of(planting, [new DatedTask { Task = task }])[0].Kinds;
        var lines = ImmutableArray.CreateBuilder<string>();
        foreach (var kind in kinds)
        {
            var who = kinds.Length > 1 ? $"{kind.Said}: " : "";
            if (kind.Year.Coming(stage, year) is { } coming)
            {
                lines.Add(coming.DaysOfWidth == 0 ? $"{who}on {Day(coming.Days.Start)}." : string.Create(CultureInfo.InvariantCulture, $"{who}between {Day(coming.Days.Start)} and {Day(coming.Days.End)}, a band of {coming.DaysOfWidth} days."));
                lines.Add(coming.Account);
                if (planting.Site?.Latitude is { } latitude)
                {
                    lines.Add($"{who}the days are then {Hours(latitude.Value, coming.Days)} long.");
                }
            }
            else
            {
                lines.Add(kind.Year.Has(stage) ? $"{who}the site does not say the frost that it is counted from." : $"{who}{kind.Said} has no such stage.");
            }
        }

        return lines.ToImmutable();
    }

    private static string Hours(Angle latitude, DateInterval days)
    {
        var (first, last) = (DayLength.Of(latitude, days.Start).TotalHours, DayLength.Of(latitude, days.End).TotalHours);
        var (from, to) = (first.ToString("0.0", CultureInfo.InvariantCulture), last.ToString("0.0", CultureInfo.InvariantCulture));
        return from == to ? $"{from} hours" : $"{from} to {to} hours";
    }

    private static string Day(LocalDate day) => day.ToString("d MMMM uuuu", CultureInfo.InvariantCulture);
}
