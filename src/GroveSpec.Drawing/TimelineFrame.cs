using System.Collections.Immutable;
using GroveSpec.Craft.Calendar;
using GroveSpec.Drawing.Timeline;

namespace GroveSpec.Drawing;

/// <summary>How the work of a planting lies on the page of its timeline, for whoever has to turn a place on the page into days.</summary>
public sealed class TimelineFrame
{
    private readonly TimeAxis? axis;

    private TimelineFrame(TimelineLayout layout)
    {
        axis = layout.Axis;
        if (axis is null)
        {
            Tasks = [];
            return;
        }

        var marks = new TaskMarks(axis, layout.Day);
        Tasks =
        [
            .. layout.Rows.Select((row, index) =>
            {
                var place = marks.Place(row.Dated, layout.RowMiddle(index));
                return (row.Dated, (place.Left + place.Right) / 2, place.Y);
            }),
        ];
    }

    /// <summary>The tasks that are drawn, from top to bottom, and where the middle of the mark of each lies: pixels from the page's left and upper edge.</summary>
    public ImmutableArray<(DatedTask Dated, double X, double Y)> Tasks { get; }

    /// <summary>The frame of a timeline.</summary>
    /// <param name="subject">What is drawn.</param>
    /// <returns>The frame.</returns>
    public static TimelineFrame Of(DrawingSubject subject) => new(new TimelineLayout(subject));

    /// <summary>How many days lie between the middle of a task's mark and a place on the page.</summary>
    /// <param name="task">The task's name.</param>
    /// <param name="x">Pixels from the page's left edge, finite.</param>
    /// <returns>Whole days, negative to the left; null for a task that is not drawn.</returns>
    public int? DaysTo(string task, double x)
    {
        foreach (var (dated, middle, _) in Tasks)
        {
            if (dated.Task.Name == task)
            {
                return (int)Math.Round((x - middle) / axis!.Length(1));
            }
        }

        return null;
    }
}
