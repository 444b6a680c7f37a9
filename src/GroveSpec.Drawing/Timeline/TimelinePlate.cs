using GroveSpec.Checks;
using GroveSpec.Craft.Calendar;
using GroveSpec.Drawing.Scene;
using NodaTime;

namespace GroveSpec.Drawing.Timeline;

/// <summary>Draws the tree's year and the work in it: months along the top, a row for each task with a date.</summary>
public static class TimelinePlate
{
    /// <summary>Draws the timeline.</summary>
    /// <param name="subject">The planting on a day, and its findings; those that show a <see cref="Figure.Work"/> are numbered in its row and told below.</param>
    /// <param name="options">How.</param>
    /// <returns>The SVG, the same for the same planting. Tasks without a date are told in words below the rows; a planting without tasks gives a plate that says so.</returns>
    public static string Draw(DrawingSubject subject, DrawingOptions options)
    {
        var layout = new TimelineLayout(subject, options.TellsFindings);
        var svg = new SvgWriter(4096 + (layout.Rows.Count * 1600));
        var title = $"{layout.Name}: the tree’s year and the work in it";
        Plate.Open(svg, "timeline", TimelineLayout.Width, layout.Height, title, Description(layout), TimelineStyle.Sheet(), options);
        Plate.WriteHeading(svg, TimelineLayout.Width, layout.Name, subject.State.Planting.Name?.Origin.Id, layout.Remark, options);
        if (layout.Axis is { } axis)
        {
            DrawRows(svg, layout, axis);
        }

        DrawSentences(svg, layout.NoteLines, layout.NotesTop);
        DrawSentences(svg, layout.UndatedLines, layout.UndatedTop);
        Plate.WriteKey(svg, layout.KeyTop, layout.KeyNumbers, layout.Key);
        Plate.Close(svg);
        return svg.Finish();
    }

    private static void DrawRows(SvgWriter svg, TimelineLayout layout, TimeAxis axis)
    {
        var marks = new TaskMarks(axis, layout.Day);
        var places = layout.Rows.Select((row, index) => marks.Place(row.Dated, layout.RowMiddle(index))).ToList();
        var tendrils = new Tendrils(layout.Rows, places, axis);
        var backdrop = new AxisMarks(axis, layout.Year, layout.IsSouthern);
        var foot = new List<Box>();

        backdrop.DrawStages(svg, layout.RowsTop, layout.RowsBottom);
        backdrop.DrawHead(svg, layout.AxisY);
        DrawRules(svg, layout, axis);
        if (layout.Day is { } day && axis.Shows(day))
        {
            var x = axis.Noon(day);
            foot.Add(Box.About(x, layout.RowsBottom + 10, 4, 30));
            backdrop.DrawFrosts(svg, layout.RowsTop, layout.RowsBottom, foot);
            DrawDay(svg, layout, axis, day);
        }
        else
        {
            backdrop.DrawFrosts(svg, layout.RowsTop, layout.RowsBottom, foot);
        }

        tendrils.Draw(svg);
        for (var index = 0; index < layout.Rows.Count; index++)
        {
            var row = layout.Rows[index];
            svg.OpenGroup("gs-tl-task", row.Dated.Task.Origin.Id, Sentence(row, layout.Day is { } seen && row.Dated.IsLate(seen)));
            DrawNames(svg, layout, row, layout.RowMiddle(index));
            marks.Draw(svg, row.Dated, places[index], layout.MarkHalf);
            var right = DrawNumbers(svg, layout, axis, index, places[index]);
            DrawWhen(svg, layout, axis, tendrils, index, places[index], right);
            svg.CloseGroup();
        }
    }

    private static void DrawRules(SvgWriter svg, TimelineLayout layout, TimeAxis axis)
    {
        svg.BeginPath("gs-tl-row");
        for (var index = 0; index < layout.Rows.Count; index++)
        {
            if (layout.Rows[index].BeginsGroup && index > 0)
            {
                var y = layout.RowMiddle(index) - (layout.RowHeight / 2) - (TimelineLayout.GroupGap / 2);
                svg.MoveTo(Plate.Margin, y);
                svg.LineTo(axis.Right, y);
            }
        }

        svg.MoveTo(Plate.Margin, layout.RowsBottom);
        svg.LineTo(axis.Right, layout.RowsBottom);
        svg.EndPath();
    }

    private static void DrawDay(SvgWriter svg, TimelineLayout layout, TimeAxis axis, LocalDate day)
    {
        var words = DayWords.Day(day);
        var half = TextMetrics.ReservedWidth(words, 13.5, Face.Italic) / 2;
        var x = axis.Noon(day);
        svg.Line("gs-tl-day", x, layout.RowsTop - 2, x, layout.RowsBottom + 24);
        svg.Circle("gs-tl-day-dot", x, layout.RowsTop - 3, 2.8);
        svg.Text("gs-tl-day-text", Math.Clamp(x, axis.Left + half, axis.Right - half), layout.RowsBottom + 37, 13.5, words, TextAnchor.Middle);
    }

    private static void DrawNames(SvgWriter svg, TimelineLayout layout, TimelineRow row, double y)
    {
        var baseline = y + 5;
        var name = DrawnText.Shortened(row.Name, TimelineLayout.MostName, Plate.SmallText);
        var nameWidth = TextMetrics.ReservedWidth(name, Plate.SmallText);
        var room = layout.KindWidth - nameWidth - 8;
        var target = DrawnText.Shortened(row.Target, layout.TargetWidth, TimelineLayout.RowText, Face.Italic);
        if (TextMetrics.ReservedWidth(row.Kind, TimelineLayout.RowText) <= room || layout.RowHeight < 30)
        {
            svg.Text("gs-tl-kind", Plate.Margin, baseline, TimelineLayout.RowText, DrawnText.Shortened(row.Kind, room, TimelineLayout.RowText));
        }
        else
        {
            // The grower's own words for another kind of work may take two lines.
            var lines = DrawnText.Wrapped(row.Kind, room, Plate.SmallText, Face.Regular, 2);
            for (var line = 0; line < lines.Count; line++)
            {
                svg.Text("gs-tl-kind", Plate.Margin, y + 4 + ((line - ((lines.Count - 1) / 2.0)) * 13), Plate.SmallText, lines[line]);
            }
        }

        svg.Text("gs-number", Plate.Margin + layout.KindWidth, baseline, Plate.SmallText, name, TextAnchor.End);
        svg.Text("gs-remark", Plate.Margin + layout.KindWidth + TimelineLayout.ColumnGap + layout.TargetWidth, baseline, TimelineLayout.RowText, target, TextAnchor.End);
    }

    private static double DrawNumbers(SvgWriter svg, TimelineLayout layout, TimeAxis axis, int index, MarkSpan place)
    {
        // At the end of the axis all of them are moved to the left together.
        var numbers = layout.NumbersOf(index).ToList();
        var x = Math.Min(place.Right, axis.Right - numbers.Sum(number => 13 + Plate.RadiusOfMark(number)));
        foreach (var number in numbers)
        {
            x += 13;
            Plate.WriteMark(svg, x, place.Y, number, null);
            x += Plate.RadiusOfMark(number);
        }

        return numbers.Count == 0 ? place.Right : x;
    }

    // The days in few words beside the mark, where neither a tendril nor the day's line runs through them. What is late says so there too.
    private static void DrawWhen(SvgWriter svg, TimelineLayout layout, TimeAxis axis, Tendrils tendrils, int index, MarkSpan place, double right)
    {
        var dated = layout.Rows[index].Dated;
        var brief = BriefWhen(dated);
        foreach (var words in layout.Day is { } seen && dated.IsLate(seen) ? (ReadOnlySpan<string>)[$"{brief}, not marked done", "not marked done", "not done"] : [brief])
        {
            if (DrawBeside(svg, layout, axis, tendrils, index, place, right, words))
            {
                return;
            }
        }
    }

    private static bool DrawBeside(
        SvgWriter svg, TimelineLayout layout, TimeAxis axis, Tendrils tendrils, int index, MarkSpan place, double right, string words)
    {
        var width = TextMetrics.ReservedWidth(words, Plate.SmallText);
        var today = layout.Day is { } day && axis.Shows(day) ? axis.Noon(day) : double.NaN;

        // A line of the day just behind the mark is stepped over.
        var past = today > right && today - right < 60 ? today : right;
        foreach (var left in new[] { right + 9, place.Left - 9 - width, past + 9 })
        {
            var box = new Box(left, place.Y - 9, left + width, place.Y + 8);
            if (box.Left >= axis.Left + 2 && box.Right <= axis.Right - 2 && !tendrils.Touches(index, box.Grown(4)) && !(today > box.Left - 3 && today < box.Right + 3))
            {
                var isRight = left > place.Left;
                svg.Text("gs-tl-when", isRight ? left : place.Left - 9, place.Y + 4, Plate.SmallText, words, isRight ? TextAnchor.Start : TextAnchor.End);
                return true;
            }
        }

        return false;
    }

    private static string BriefWhen(DatedTask dated)
    {
        var window = dated.Window!.Value;
        if (dated.Repeats.Length > 0)
        {
            var times = dated.Task.Done.IsEmpty ? "times" : "more";
            return dated.Repeats.Length == 1 ? DayWords.Brief(dated.Repeats[0], dated.Repeats[0]) : $"{dated.Repeats.Length} {times}{(dated.RepeatsGoOn ? " and on" : "")}";
        }

        return window switch
        {
            _ when !dated.Task.Done.IsEmpty => $"done {DayWords.Brief(window.Last, window.Last)}",
            { Earliest: { } earliest, Latest: { } latest } => DayWords.Brief(earliest, latest),
            { Earliest: { } from } => $"from {DayWords.Brief(from, from)}",
            _ => $"by {DayWords.Brief(window.Last, window.Last)}",
        };
    }

    private static string Sentence(TimelineRow row, bool isLate)
    {
        var target = row.Target.Length > 0 ? $" on {row.Target}" : "";
        var late = isLate ? "; not marked done" : "";
        var note = row.Dated.Task.Note is { } said ? $". {DrawnText.Clean(said.Value)}" : "";
        return $"{row.Name}: {row.Kind}{target}, {TaskWords.When(row.Dated)}{late}{note}";
    }

    private static void DrawSentences(SvgWriter svg, List<string> lines, double top)
    {
        foreach (var line in lines)
        {
            svg.Text("gs-remark", Plate.Margin, top + 12, TimelineLayout.SentenceText, line);
            top += TimelineLayout.SentenceLine;
        }
    }

    private static string Description(TimelineLayout layout)
    {
        const int MostTold = 30;
        var told = layout.Rows.Take(MostTold).Select(row => $"{row.Kind} {row.Name}, {TaskWords.When(row.Dated)}");
        var more = layout.Rows.Count > MostTold ? $"; and {layout.Rows.Count - MostTold} more" : "";
        var rows = layout.Rows.Count == 0 ? "No task has a date" : string.Join("; ", told) + more;
        var undated = layout.UndatedLines.Count == 0 ? "" : " " + string.Join(" ", layout.UndatedLines);
        return $"{rows}.{undated}";
    }
}
