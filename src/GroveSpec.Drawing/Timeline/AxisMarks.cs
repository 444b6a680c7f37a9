using GroveSpec.Craft.Calendar;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Drawing.Timeline;

/// <summary>What stands above and behind the rows: years and months, the tree's stages, frosts.</summary>
/// <param name="axis">The days across the page.</param>
/// <param name="year">The year of the planting's tree.</param>
/// <param name="isSouthern">Whether the site lies south of the equator.</param>
internal sealed class AxisMarks(TimeAxis axis, TreeYear year, bool isSouthern)
{
    /// <summary>From the top of this part to the axis's own line.</summary>
    public const double HeadHeight = 44;

    /// <summary>The room for the stages' names below the axis.</summary>
    public const double StageHeight = 40;

    private const double StageText = 13;
    private const double HatchStep = 10;

    // Strokes of 9 and gaps of 12: see the style. A shift that is no part of their sum keeps neighbours out of step.
    private const double HatchPeriod = 21;
    private const double HatchShift = 8;
    private const double OverTheEnd = 40;

    // A name is kept more room than it is likely to take: it counts as inside its band when the likely width is.
    private const double ShareInside = 0.85;
    private const double MostYearsOfStages = 5.2;
    private const double MostYearsOfFrosts = 8;

    /// <summary>Whether stages are drawn at all: not over so many years that they would be slivers, nor without frost dates.</summary>
    /// <param name="axis">The days across the page.</param>
    /// <param name="year">The year of the planting's tree.</param>
    /// <returns>True where there are bands to name.</returns>
    public static bool ShowsStages(TimeAxis axis, TreeYear year) =>
        axis.Years <= MostYearsOfStages && !year.Spans(new DateInterval(axis.Start, axis.End.PlusDays(-1))).IsEmpty;

    /// <summary>The frosts that are drawn.</summary>
    /// <param name="axis">The days across the page.</param>
    /// <param name="year">The year of the planting's tree.</param>
    /// <returns>Each day with a word for it, a year's last frost before its first; none over so many years that the stars would crowd.</returns>
    public static List<(LocalDate Day, string Word)> Frosts(TimeAxis axis, TreeYear year)
    {
        var frosts = new List<(LocalDate Day, string Word)>();
        if (axis.Years > MostYearsOfFrosts)
        {
            return frosts;
        }

        for (var number = axis.Start.Year - 1; number <= axis.End.Year + 1; number++)
        {
            if (year.LastFrost(number) is { } last && axis.Shows(last))
            {
                frosts.Add((last, "last frost"));
            }

            if (year.FirstFrost(number) is { } first && axis.Shows(first))
            {
                frosts.Add((first, "first frost"));
            }
        }

        return frosts;
    }

    /// <summary>Draws years, months and ticks.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="y">Where the axis's line runs.</param>
    public void DrawHead(SvgWriter svg, double y)
    {
        svg.BeginPath("gs-tl-axis");
        svg.MoveTo(axis.Left, y);
        svg.LineTo(axis.Right, y);
        foreach (var (day, depth) in Ticks())
        {
            svg.MoveTo(axis.At(day), y);
            svg.LineTo(axis.At(day), y + depth);
        }

        svg.EndPath();
        DrawYears(svg, y);
        if (axis.Grain == TimeGrain.Month)
        {
            DrawMonths(svg, y);
        }
        else if (axis.Grain == TimeGrain.Season)
        {
            DrawSeasons(svg, y);
        }
    }

    /// <summary>Draws the stages as bands with their names above.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="top">The bands' upper edge; the names stand in <see cref="StageHeight"/> above it.</param>
    /// <param name="bottom">The bands' lower edge.</param>
    public void DrawStages(SvgWriter svg, double top, double bottom)
    {
        if (!ShowsStages(axis, year))
        {
            return;
        }

        var spans = year.Spans(new DateInterval(axis.Start, axis.End.PlusDays(-1)));
        foreach (var span in spans)
        {
            var cls = span.Stage switch
            {
                Stage.BudBreak => "gs-tl-band-faint",
                Stage.LeafOut => "gs-tl-band-deep",
                Stage.HardenOff => "gs-tl-band",
                Stage.LeafColour or Stage.LeafFall => "gs-tl-band-faint",
                _ => null,
            };
            if (cls is not null)
            {
                svg.Rectangle(cls, new Box(axis.At(span.Days.Start), top, axis.At(span.Days.End.PlusDays(1)), bottom));
            }
        }

        DrawRest(svg, spans, top, bottom);
        svg.BeginPath("gs-tl-edge");
        foreach (var span in spans)
        {
            svg.MoveTo(axis.At(span.Days.Start), top);
            svg.LineTo(axis.At(span.Days.Start), bottom);
        }

        svg.EndPath();
        NameStages(svg, spans, top);
    }

    /// <summary>Draws the frosts as dotted lines with a star at the foot.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="top">Where the lines begin.</param>
    /// <param name="bottom">Where they end; the stars stand below.</param>
    /// <param name="taken">Boxes at the foot that are taken already; the words beside the stars are added.</param>
    public void DrawFrosts(SvgWriter svg, double top, double bottom, List<Box> taken)
    {
        var frosts = Frosts(axis, year);
        if (frosts.Count == 0)
        {
            return;
        }

        svg.BeginPath("gs-tl-frost");
        foreach (var (day, _) in frosts)
        {
            svg.MoveTo(axis.Noon(day), top);
            svg.LineTo(axis.Noon(day), bottom + 4);
        }

        svg.EndPath();
        var y = bottom + 13;
        svg.BeginPath("gs-tl-star");
        foreach (var (day, _) in frosts)
        {
            var x = axis.Noon(day);
            taken.Add(Box.About(x, y, 12, 12));
            for (var arm = 0; arm < 3; arm++)
            {
                var (sin, cos) = Math.SinCos((arm * Math.PI / 3) + (Math.PI / 6));
                svg.MoveTo(x - (5 * cos), y - (5 * sin));
                svg.LineTo(x + (5 * cos), y + (5 * sin));
            }
        }

        svg.EndPath();
        foreach (var (day, word) in frosts)
        {
            if (!WriteFrost(svg, axis.Noon(day), y, $"{word}, {DayWords.Brief(day, day)}", taken))
            {
                WriteFrost(svg, axis.Noon(day), y, word, taken);
            }
        }
    }

    // To the right of its star, else to its left; what lies beyond the ends of the axis is free at the foot.
    private static bool WriteFrost(SvgWriter svg, double x, double y, string words, List<Box> taken)
    {
        var width = TextMetrics.ReservedWidth(words, Plate.SmallText, Face.Italic);
        foreach (var left in new[] { x + 9, x - 9 - width })
        {
            var box = new Box(left, y - 9, left + width, y + 7);
            if (box.Left >= Plate.Margin && box.Right <= TimelineLayout.Width - (Plate.Margin / 3) && !taken.Exists(other => other.Grown(3).Overlaps(box)))
            {
                taken.Add(box);
                var isRight = left > x;
                svg.Text("gs-remark", isRight ? left : x - 9, y + 4, Plate.SmallText, words, isRight ? TextAnchor.Start : TextAnchor.End);
                return true;
            }
        }

        return false;
    }

    // The tree's rest is hatched with an engraver's broken strokes, each row shifted against the last, so that no bars stand in print.
    private void DrawRest(SvgWriter svg, IReadOnlyList<StageSpan> spans, double top, double bottom)
    {
        svg.BeginPath("gs-tl-hatch");
        foreach (var span in spans.Where(span => span.Stage == Stage.Dormant))
        {
            var (left, right) = (axis.At(span.Days.Start), axis.At(span.Days.End.PlusDays(1)));
            var strokes = Math.Max(1, (int)((right - left) / HatchStep));
            var step = (right - left) / strokes;
            for (var stroke = 0; stroke < strokes; stroke++)
            {
                var x = left + ((stroke + 0.5) * step);
                svg.MoveTo(x, top + (stroke * HatchShift % HatchPeriod));
                svg.LineTo(x, bottom);
            }
        }

        svg.EndPath();
    }

    private IEnumerable<(LocalDate Day, double Depth)> Ticks()
    {
        if (axis.Grain == TimeGrain.Year)
        {
            var step = YearStep(4);
            for (var number = FirstOf(step); number <= axis.End.Year; number += step)
            {
                yield return (new LocalDate(number, 1, 1), 6);
            }

            yield break;
        }

        for (var day = axis.Start; day <= axis.End; day = day.PlusMonths(1))
        {
            if (axis.Grain == TimeGrain.Month || day.Month % 3 == 0 || day.Month == 1)
            {
                yield return (day, day.Month == 1 ? 10 : day.Month % 3 == 0 && axis.Grain == TimeGrain.Season ? 6 : 5);
            }
        }
    }

    // Round years, such as 1500 and 2000, where not every year is named.
    private int FirstOf(int step) => (axis.Start.Year + step - 1) / step * step;

    private int YearStep(double leastPixels)
    {
        var step = 1;
        var factors = new[] { 2.0, 2.5, 2.0 };
        for (var turn = 0; axis.Length(365) * step < leastPixels && step < 10_000; turn++)
        {
            step = (int)(step * factors[turn % 3]);
        }

        return step;
    }

    private void DrawYears(SvgWriter svg, double y)
    {
        if (axis.Grain == TimeGrain.Year)
        {
            var step = YearStep(46);
            for (var number = FirstOf(step); number < axis.End.Year; number += step)
            {
                svg.Text("gs-tl-year", axis.At(new LocalDate(number, 1, 1)) + 3, y - 7, 13.5, number.ToString());
            }

            return;
        }

        for (var number = axis.Start.Year; number <= axis.End.Year; number++)
        {
            var left = Math.Max(axis.Left, axis.At(LocalDate.Max(axis.Start, new LocalDate(number, 1, 1))));
            var right = axis.At(LocalDate.Min(axis.End, new LocalDate(number + 1, 1, 1)));

            // The last year's name may run on over the end of the axis, where nothing else stands.
            var room = number == axis.End.PlusDays(-1).Year ? axis.Right + OverTheEnd - left : right - left;
            if (right > left && room >= TextMetrics.ReservedWidth("2000", 15) + 6)
            {
                svg.Text("gs-tl-year", left + 4, y - 24, 15, number.ToString());
            }
        }
    }

    private void DrawMonths(SvgWriter svg, double y)
    {
        var isWide = axis.Length(28) >= TextMetrics.ReservedWidth("Nov", 13);
        for (var day = axis.Start; day < axis.End; day = day.PlusMonths(1))
        {
            var name = DayWords.Month(day.Month);
            svg.Text("gs-tl-month", (axis.At(day) + axis.At(day.PlusMonths(1))) / 2, y - 6, 13, isWide ? name[..3] : name[..1], TextAnchor.Middle);
        }
    }

    private void DrawSeasons(SvgWriter svg, double y)
    {
        var isWide = axis.Length(90) >= TextMetrics.ReservedWidth("summer", 12) + 1;
        for (var number = axis.Start.Year - 1; number <= axis.End.Year + 1; number++)
        {
            foreach (var season in Enum.GetValues<Season>())
            {
                if (SeasonCalendar.Days(SeasonPart.Whole, season, number, isSouthern) is not { } days || !axis.Shows(days.Start) || !axis.Shows(days.End))
                {
                    continue;
                }

                var word = season switch
                {
                    Season.Spring => isWide ? "spring" : "spr.",
                    Season.Summer => isWide ? "summer" : "sum.",
                    Season.Autumn => isWide ? "autumn" : "aut.",
                    _ => isWide ? "winter" : "win.",
                };
                svg.Text("gs-tl-month", (axis.At(days.Start) + axis.At(days.End.PlusDays(1))) / 2, y - 6, 12, word, TextAnchor.Middle);
            }
        }
    }

    // Names stand over their bands in the lower of two lines; one that does not fit moves up with a fine lead, or is left to the band's next year.
    private void NameStages(SvgWriter svg, IReadOnlyList<StageSpan> spans, double top)
    {
        var lower = new List<Box>();
        var upper = new List<Box>();
        var raised = new List<(StageSpan Span, string Word)>();
        foreach (var span in spans)
        {
            var word = TaskWords.Stage(span.Stage);
            if (Middle(span, word) is var (x, width, isInside) && (!isInside || !Write(svg, lower, x, width, top - 7, word)))
            {
                raised.Add((span, word));
            }
        }

        foreach (var (span, word) in raised)
        {
            var (x, width, _) = Middle(span, word);
            if (Write(svg, upper, x, width, top - 22, word))
            {
                var foot = (axis.At(span.Days.Start) + axis.At(span.Days.End.PlusDays(1))) / 2;
                var at = Math.Clamp(foot, x - (width / 2) + 2, x + (width / 2) - 2);
                if (!lower.Exists(box => box.Grown(2).LengthInside(at, top - 18, foot, top) > 0))
                {
                    svg.Line("gs-leader", at, top - 18, foot, top);
                }
            }
        }
    }

    private (double X, double Width, bool IsInside) Middle(StageSpan span, string word)
    {
        var width = TextMetrics.ReservedWidth(word, StageText, Face.Italic);
        var (left, right) = (axis.At(span.Days.Start), axis.At(span.Days.End.PlusDays(1)));
        return (Math.Clamp((left + right) / 2, axis.Left + (width / 2), axis.Right - (width / 2)), width, right - left >= width * ShareInside);
    }

    private static bool Write(SvgWriter svg, List<Box> taken, double x, double width, double baseline, string word)
    {
        var box = new Box(x - (width / 2), baseline - 11, x + (width / 2), baseline + 4);
        if (taken.Exists(other => other.Grown(2).Overlaps(box)))
        {
            return false;
        }

        taken.Add(box);
        svg.Text("gs-remark", x, baseline, StageText, word, TextAnchor.Middle);
        return true;
    }
}
