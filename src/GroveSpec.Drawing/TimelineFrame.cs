using GroveSpec.Drawing.Timeline;

namespace GroveSpec.Drawing;

/// <summary>How the work of a planting lies on the page of its timeline, for whoever has to turn a place on the page into days.</summary>
public sealed class TimelineFrame
{
    private readonly TimeAxis? axis;
    private readonly Dictionary<string, (double X, double Y)> middles = new(StringComparer.Ordinal);

    private TimelineFrame(TimelineLayout layout)
    {
        axis = layout.Axis;
        if (axis is null)
        {
            return;
        }

        var marks = new TaskMarks(axis, layout.Day);
        for (var index = 0; index < layout.Rows.Count; index++)
        {
            var place = marks.Place(layout.Rows[index].Dated, layout.RowMiddle(index));
            middles.TryAdd(layout.Rows[index].Dated.Task.Name, ((place.Left + place.Right) / 2, place.Y));
        }
    }

    /// <summary>The frame of a timeline.</summary>
    /// <param name="subject">What is drawn.</param>
    /// <returns>The frame.</returns>
    public static TimelineFrame Of(DrawingSubject subject) => new(new TimelineLayout(subject));

    /// <summary>Where the middle of a task's mark lies on the page.</summary>
    /// <param name="task">The task's name.</param>
    /// <returns>Pixels from the page's left and upper edge; null for a task that is not drawn.</returns>
    public (double X, double Y)? PageOf(string task) => middles.TryGetValue(task, out var middle) ? middle : null;

    /// <summary>How many days lie between the middle of a task's mark and a place on the page.</summary>
    /// <param name="task">The task's name.</param>
    /// <param name="x">Pixels from the page's left edge, finite.</param>
    /// <returns>Whole days, negative to the left; null for a task that is not drawn.</returns>
    public int? DaysTo(string task, double x) => axis is not null && PageOf(task) is { } middle ? (int)Math.Round((x - middle.X) / axis.Length(1)) : null;
}
