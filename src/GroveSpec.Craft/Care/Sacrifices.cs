using GroveSpec.Model.Quantities;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Craft.Care;

/// <summary>Sacrifice branches: where their scar will show, and when they come off. Source: common practice: low, on the back, so that the scar does not show, and taken off while the tree rests.</summary>
public static class Sacrifices
{
    /// <summary>How far the side a branch stands on is turned from the viewer.</summary>
    /// <param name="facing">The side, as a bearing.</param>
    /// <param name="viewer">The bearing at which the viewer stands.</param>
    /// <returns>From 0°, straight at the viewer, to 180°, at the back; at 90° the scar is seen edge-on.</returns>
    public static Angle FromViewer(Bearing facing, Bearing viewer)
    {
        var turned = Math.Abs(facing.Degrees - viewer.Degrees);
        return new Angle(turned > 180 ? 360 - turned : turned);
    }

    /// <summary>The removal, where one is planned.</summary>
    /// <param name="sacrifice">The task that lets the branch grow.</param>
    /// <param name="tasks">All tasks of the planting.</param>
    /// <returns>The first task that takes it off, or null.</returns>
    public static PlantingTask? RemovalOf(PlantingTask sacrifice, IEnumerable<PlantingTask> tasks) => tasks.FirstOrDefault(task =>
        task.Kind.Value == TaskKind.RemoveSacrifice && task.Target is TaskTarget.OfTask of && of.Name.Value == sacrifice.Name);

    /// <summary>When a branch that has grown to its last day is usually taken off.</summary>
    /// <param name="last">The last day on which it grows.</param>
    /// <param name="rests">Whether the tree rests in winter.</param>
    /// <param name="isSouthern">Whether the site lies south of the equator.</param>
    /// <returns>The first late winter that begins behind that day, or for a tree without a rest the month behind it; null where the calendar ends.</returns>
    public static Moment? RemovalAfter(LocalDate last, bool rests, bool isSouthern)
    {
        if (!rests)
        {
            return last.Year > 9990 ? null : new Moment.Month(last.PlusMonths(1).ToYearMonth());
        }

        for (var year = last.Year; year <= last.Year + 1; year++)
        {
            if (SeasonCalendar.Days(SeasonPart.Late, Season.Winter, year, isSouthern) is { } days && days.Start > last)
            {
                return new Moment.SeasonOfYear(SeasonPart.Late, Season.Winter, year);
            }
        }

        return null;
    }
}
