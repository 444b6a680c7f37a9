using GroveSpec.Craft.Calendar;
using NodaTime;

namespace GroveSpec.Drawing.Timeline;

/// <summary>The small print below a timeline: what its marks mean, each only where it is drawn.</summary>
internal static class TimelineNotes
{
    /// <summary>What has to be said.</summary>
    /// <param name="rows">The rows.</param>
    /// <param name="axis">The days across the page.</param>
    /// <param name="year">The year of the planting's tree.</param>
    /// <param name="today">The day shown; null for none.</param>
    /// <returns>Sentences in one line of text.</returns>
    public static string Of(IReadOnlyList<TimelineRow> rows, TimeAxis axis, TreeYear year, LocalDate? today)
    {
        var said = new List<string>();
        if (rows.Any(row => !TaskMarks.Repeats(row.Dated) && !row.Dated.IsGrowing))
        {
            said.Add("A leaf runs from the first day of its work to the last.");
        }

        if (rows.Any(row => row.Dated.Window is { Earliest: null } or { Latest: null } && !TaskMarks.Repeats(row.Dated)))
        {
            said.Add("Where it is dotted, no day is set.");
        }

        if (rows.Any(row => TaskMarks.Repeats(row.Dated)))
        {
            said.Add("Beads are the days of work that comes again.");
        }

        if (rows.Any(row => row.Dated.IsGrowing))
        {
            said.Add("A shoot is growth left to run.");
        }

        if (rows.Any(row => !row.Dated.Task.Done.IsEmpty))
        {
            said.Add("What is filled is done.");
        }

        if (rows.Any(row => today is { } day && row.Dated.IsLate(day)))
        {
            said.Add("A heavy outline is past its last day.");
        }

        var names = rows.Select(row => row.Dated.Task.Name).ToHashSet(StringComparer.Ordinal);
        if (rows.Any(row => row.Dated.WaitsOn.Any(names.Contains)))
        {
            said.Add("A tendril leads from work to what waits on it.");
        }

        if (AxisMarks.ShowsStages(axis, year))
        {
            said.Add("Broken strokes behind are the tree’s rest.");
        }

        if (AxisMarks.Frosts(axis, year).Count > 0)
        {
            said.Add("Stars are frosts, the last of spring and the first of autumn.");
        }

        return string.Join(" ", said);
    }
}
