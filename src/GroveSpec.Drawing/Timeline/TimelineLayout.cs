using System.Globalization;
using GroveSpec.Checks;
using GroveSpec.Craft.Calendar;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model;
using NodaTime;

namespace GroveSpec.Drawing.Timeline;

/// <summary>What a timeline holds and where, in pixels from the top left of the page.</summary>
internal sealed class TimelineLayout
{
    /// <summary>The page's width.</summary>
    public const double Width = 1000;

    /// <summary>The size of the letters in a row.</summary>
    public const double RowText = 15.5;

    /// <summary>The most room for a task's name.</summary>
    public const double MostName = 140;

    /// <summary>The most room for a kind of work and a task's name together.</summary>
    public const double MostKind = 240;

    /// <summary>The room between two columns of words.</summary>
    public const double ColumnGap = 12;

    /// <summary>The room between two families of work.</summary>
    public const double GroupGap = 10;

    /// <summary>The size of the letters in the sentences below.</summary>
    public const double SentenceText = 13.5;

    /// <summary>The step from line to line of those sentences.</summary>
    public const double SentenceLine = 18;

    private const int MostUndatedTold = 40;
    private const int MostUndatedLines = 12;

    private readonly Dictionary<string, List<int>> numbersByTask = new(StringComparer.Ordinal);
    private readonly List<double> middles = [];

    /// <summary>Lays a timeline out.</summary>
    /// <param name="subject">What is drawn.</param>
    /// <param name="tellsFindings">Whether the findings are told below.</param>
    public TimelineLayout(DrawingSubject subject, bool tellsFindings = true)
    {
        var planting = subject.State.Planting;
        Day = subject.State.Date;
        Name = planting.Name?.Value ?? "A planting without a name";
        Year = TreeYear.Of(planting, planting.Species?.Value);
        IsSouthern = planting.Site?.IsSouthern ?? false;
        var dated = TaskDates.Of(planting);
        Rows = RowOrder.Of(planting, dated);
        RowHeight = Rows.Count switch { <= 14 => 36, <= 40 => 30, _ => 25 };
        MarkHalf = (RowHeight / 2) - 6;
        KindWidth = Math.Min(MostKind, Rows.Select(row => TextMetrics.ReservedWidth(row.Kind, RowText) + 10 + Math.Min(MostName, TextMetrics.ReservedWidth(row.Name, Plate.SmallText))).DefaultIfEmpty(0).Max());
        TargetWidth = Math.Min(130, Rows.Select(row => TextMetrics.ReservedWidth(row.Target, RowText, Face.Italic)).DefaultIfEmpty(0).Max());

        var y = Plate.HeadingFoot + 20;
        if (Rows.Count > 0)
        {
            var left = Plate.Margin + KindWidth + ColumnGap + TargetWidth + 20;
            Axis = new TimeAxis(Span(), left, Width - Plate.Margin);
            AxisY = y + AxisMarks.HeadHeight;
            y = RowsTop = AxisY + (AxisMarks.ShowsStages(Axis, Year) ? AxisMarks.StageHeight + 8 : 20);
            foreach (var row in Rows)
            {
                y += row.BeginsGroup && middles.Count > 0 ? GroupGap : 0;
                middles.Add(y + 4 + (RowHeight / 2));
                y += RowHeight;
            }

            RowsBottom = y += 8;
            y += Day is null ? 40 : 58;
        }

        NotesTop = y;
        NoteLines = Axis is null ? [] : DrawnText.Wrapped(TimelineNotes.Of(Rows, Axis, Year, Day), Width - (2 * Plate.Margin), SentenceText, Face.Italic);
        y += (NoteLines.Count * SentenceLine) + (NoteLines.Count > 0 ? 8 : 0);
        UndatedTop = y;
        UndatedLines = LayOutUndated(planting, dated);
        y += (UndatedLines.Count * SentenceLine) + (UndatedLines.Count > 0 ? 12 : 0);
        KeyTop = y;
        KeyNumbers = [];
        var sentences = NumberFindings(subject);
        Key = Plate.LayOutKey(Width, tellsFindings ? sentences : []);
        Height = Math.Ceiling(y + Plate.HeightOfKey(Key) + 26);
        Remark = Axis is null ? "the tree’s year and the work in it"
            : $"the tree’s year and the work in it, {MonthOf(Axis.Start)} to {MonthOf(Axis.End.PlusDays(-1))}";
    }

    /// <summary>The planting's name.</summary>
    public string Name { get; }

    /// <summary>The line below the name.</summary>
    public string Remark { get; }

    /// <summary>The day shown; null for none.</summary>
    public LocalDate? Day { get; }

    /// <summary>The year of the planting's tree.</summary>
    public TreeYear Year { get; }

    /// <summary>Whether the site lies south of the equator.</summary>
    public bool IsSouthern { get; }

    /// <summary>The rows from top to bottom.</summary>
    public List<TimelineRow> Rows { get; }

    /// <summary>The days across the page; null where no task has a date.</summary>
    public TimeAxis? Axis { get; }

    /// <summary>The height of a row.</summary>
    public double RowHeight { get; }

    /// <summary>Half the height of the marks.</summary>
    public double MarkHalf { get; }

    /// <summary>The width of the column of kinds and names.</summary>
    public double KindWidth { get; }

    /// <summary>The width of the column of trunks.</summary>
    public double TargetWidth { get; }

    /// <summary>Where the axis's line runs.</summary>
    public double AxisY { get; }

    /// <summary>The upper edge of the rows.</summary>
    public double RowsTop { get; }

    /// <summary>The lower edge of the rows.</summary>
    public double RowsBottom { get; }

    /// <summary>Where the sentences that explain the marks begin.</summary>
    public double NotesTop { get; }

    /// <summary>Those sentences, in lines.</summary>
    public List<string> NoteLines { get; }

    /// <summary>Where the sentences about tasks without a date begin.</summary>
    public double UndatedTop { get; }

    /// <summary>Those sentences, in lines.</summary>
    public List<string> UndatedLines { get; }

    /// <summary>Where the key of findings begins.</summary>
    public double KeyTop { get; }

    /// <summary>The numbers of the key.</summary>
    public List<int> KeyNumbers { get; }

    /// <summary>The sentences of the key, in lines.</summary>
    public List<List<string>> Key { get; }

    /// <summary>The page's height.</summary>
    public double Height { get; }

    /// <summary>The middle of a row.</summary>
    /// <param name="index">Which row.</param>
    /// <returns>From the top of the page.</returns>
    public double RowMiddle(int index) => middles[index];

    /// <summary>The numbers of the findings about a row's task.</summary>
    /// <param name="index">Which row.</param>
    /// <returns>At most three, the first ones.</returns>
    public IEnumerable<int> NumbersOf(int index) => numbersByTask.TryGetValue(Rows[index].Dated.Task.Name, out var numbers) ? numbers.Take(3) : [];

    private static string MonthOf(LocalDate day) => $"{DayWords.Month(day.Month)} {day.Year.ToString(CultureInfo.InvariantCulture)}";

    // From the first to the last day that is told, with a few weeks where an end is open, and the day itself.
    private DateInterval Span()
    {
        var first = LocalDate.MaxIsoValue;
        var last = LocalDate.MinIsoValue;
        foreach (var row in Rows)
        {
            var window = row.Dated.Window!.Value;
            first = LocalDate.Min(first, window.Earliest ?? window.First.PlusDays(-60));
            last = LocalDate.Max(last, window.Latest ?? window.Last.PlusDays(60));
        }

        if (Day is { } day)
        {
            first = LocalDate.Min(first, day);
            last = LocalDate.Max(last, day);
        }

        return new DateInterval(first.PlusDays(-6), last.PlusDays(6));
    }

    private static List<string> LayOutUndated(Planting planting, IReadOnlyList<DatedTask> dated)
    {
        var undated = dated.Where(task => task.Window is null).ToList();
        if (undated.Count == 0)
        {
            return planting.Tasks.IsEmpty ? ["No work is written down yet."] : [];
        }

        var told = undated.Take(MostUndatedTold).Select(task =>
            $"{DrawnText.Isolated(TaskWords.Kind(task.Task))} {DrawnText.Isolated(task.Task.Name)} ({DrawnText.Clean(TaskWords.Undated(task))})");
        var more = undated.Count > MostUndatedTold ? $"; and {undated.Count - MostUndatedTold} more" : "";
        return DrawnText.Wrapped($"Without a date yet: {string.Join("; ", told)}{more}.", Width - (2 * Plate.Margin), SentenceText, Face.Italic, MostUndatedLines);
    }

    private List<string> NumberFindings(DrawingSubject subject)
    {
        var names = Rows.Select(row => row.Dated.Task.Name).ToHashSet(StringComparer.Ordinal);
        var sentences = new List<string>();
        for (var index = 0; index < subject.Findings.Length; index++)
        {
            var isTold = false;
            foreach (var work in subject.Findings[index].Figures.OfType<Figure.Work>().Where(work => names.Contains(work.Task)))
            {
                if (!numbersByTask.TryGetValue(work.Task, out var numbers))
                {
                    numbersByTask.Add(work.Task, numbers = []);
                }

                numbers.Add(index + 1);
                isTold = true;
            }

            if (isTold)
            {
                KeyNumbers.Add(index + 1);
                sentences.Add(subject.Findings[index].Message);
            }
        }

        return sentences;
    }
}
