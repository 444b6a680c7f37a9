using GroveSpec.Craft.Calendar;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Times;
using NodaTime;

namespace GroveSpec.Drawing.Timeline;

/// <summary>The mark of a task in its row: a leaf, beads on a thread, or a shoot.</summary>
/// <param name="axis">The days across the page.</param>
/// <param name="today">The day shown; null for none.</param>
internal sealed class TaskMarks(TimeAxis axis, LocalDate? today)
{
    private const double LeastLeaf = 13;
    private const double OpenTail = 64;

    /// <summary>Where the mark of a task will stand.</summary>
    /// <param name="dated">A task with a window.</param>
    /// <param name="y">The middle of its row.</param>
    /// <returns>Its ends, within the axis.</returns>
    public MarkSpan Place(DatedTask dated, double y)
    {
        var window = dated.Window ?? throw new ArgumentException("A task without a window has no mark.", nameof(dated));
        if (Repeats(dated))
        {
            return new MarkSpan(axis.Noon(window.First) - 4, axis.Noon(window.Last) + (dated.RepeatsGoOn ? 26 : 4), y);
        }

        var left = axis.At(window.First);
        var right = axis.At(window.Last.PlusDays(1));
        if (window.Earliest is null)
        {
            left = Math.Max(axis.Left, right - OpenTail);
        }
        else if (window.Latest is null)
        {
            right = dated.IsGrowing ? axis.Right : Math.Min(axis.Right, left + OpenTail);
        }

        if (right - left < LeastLeaf)
        {
            var middle = Math.Clamp((left + right) / 2, axis.Left + (LeastLeaf / 2), axis.Right - (LeastLeaf / 2));
            (left, right) = (middle - (LeastLeaf / 2), middle + (LeastLeaf / 2));
        }

        return new MarkSpan(left, right, y);
    }

    /// <summary>Draws the mark.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="dated">A task with a window.</param>
    /// <param name="place">Where its mark stands.</param>
    /// <param name="most">Half the height it may take.</param>
    public void Draw(SvgWriter svg, DatedTask dated, MarkSpan place, double most)
    {
        var hand = Wobble.Of(dated.Task.Name, "leaf");
        if (Repeats(dated))
        {
            DrawBeads(svg, dated, place);
        }
        else if (dated.IsGrowing)
        {
            DrawShoot(svg, dated, place, most, ref hand);
        }
        else
        {
            DrawLeaf(svg, dated, place, most, ref hand);
        }
    }

    /// <summary>Whether a task comes again and so is drawn as beads.</summary>
    /// <param name="dated">The task.</param>
    /// <returns>True where the file says every so often.</returns>
    public static bool Repeats(DatedTask dated) => dated.Task.Times.Any(clause => clause is TimeClause.Every);

    private void DrawLeaf(SvgWriter svg, DatedTask dated, MarkSpan place, double most, ref Wobble hand)
    {
        var isDone = !dated.Task.Done.IsEmpty;
        var width = place.Right - place.Left;
        var half = Math.Min(most, 3.4 + (width * 0.12));
        var belly = hand.Between(0.34, 0.42);
        var upper = half * hand.Between(0.9, 1.04);
        var lower = half * hand.Between(0.9, 1.04);
        var tip = hand.Between(-0.8, 0.8);
        var (left, right, y) = place;
        if (dated.Window is { Earliest: not null, Latest: not null })
        {
            var widest = left + (width * belly);
            svg.BeginPath(isDone ? "gs-tl-done" : today is { } day && dated.IsLate(day) ? "gs-tl-late" : "gs-tl-due");
            svg.MoveTo(left, y);
            svg.CurveTo(left + (width * 0.1), y - (upper * 0.3), left + (width * 0.2), y - upper, widest, y - upper);
            svg.CurveTo(left + (width * 0.62), y - upper, left + (width * 0.8), y - (upper * 0.22), right, y + tip);
            svg.CurveTo(left + (width * 0.8), y + (lower * 0.22), left + (width * 0.62), y + lower, widest, y + lower);
            svg.CurveTo(left + (width * 0.2), y + lower, left + (width * 0.1), y + (lower * 0.3), left, y);
            svg.ClosePath();
            svg.EndPath();
            DrawVeins(svg, isDone, left, right, y, half, tip);
            return;
        }

        // An open end is left undrawn but for a dotted hint of the leaf's other half.
        var isOpenAtEnd = dated.Window?.Latest is null;
        var (from, to) = isOpenAtEnd ? (left, right) : (right, left);
        var middle = from + ((to - from) * 0.45);
        var turn = from + ((to - from) * 0.16);
        svg.BeginPath("gs-tl-half");
        svg.MoveTo(middle, y - half);
        svg.CurveTo(turn, y - half, turn, y - (half * 0.4), from, y);
        svg.CurveTo(turn, y + (half * 0.4), turn, y + half, middle, y + half);
        svg.EndPath();
        svg.BeginPath("gs-tl-open");
        svg.MoveTo(middle, y - half);
        svg.CurveTo(from + ((to - from) * 0.7), y - half, from + ((to - from) * 0.85), y - (half * 0.4), to, y + tip);
        svg.MoveTo(middle, y + half);
        svg.CurveTo(from + ((to - from) * 0.7), y + half, from + ((to - from) * 0.85), y + (half * 0.4), to, y + tip);
        svg.EndPath();
        svg.BeginPath("gs-tl-vein");
        svg.MoveTo(from, y);
        svg.LineTo(middle, y);
        svg.EndPath();
    }

    private static void DrawVeins(SvgWriter svg, bool isDone, double left, double right, double y, double half, double tip)
    {
        var width = right - left;
        svg.BeginPath(isDone ? "gs-tl-vein-done" : "gs-tl-vein");
        svg.MoveTo(left, y);
        svg.QuadraticTo(left + (width * 0.6), y, left + (width * 0.93), y + (tip * 0.9));
        var pairs = Math.Clamp((int)(width / 16), 0, 14);
        for (var pair = 1; pair <= pairs; pair++)
        {
            var share = 0.1 + (0.72 * pair / (pairs + 1));
            var x = left + (width * share);
            var reach = half * 0.72 * Math.Sin(Math.PI * Math.Pow(share, 0.8));
            svg.MoveTo(x, y);
            svg.QuadraticTo(x + (reach * 0.5), y - (reach * 0.75), x + (reach * 1.1), y - reach);
            svg.MoveTo(x, y);
            svg.QuadraticTo(x + (reach * 0.5), y + (reach * 0.75), x + (reach * 1.1), y + reach);
        }

        svg.EndPath();
    }

    private void DrawBeads(SvgWriter svg, DatedTask dated, MarkSpan place)
    {
        var y = place.Y;
        var window = dated.Window!.Value;
        var (first, last) = (axis.Noon(window.First), axis.Noon(window.Last));
        svg.BeginPath("gs-tl-thread");
        svg.MoveTo(first, y);
        svg.QuadraticTo((first + last) / 2, y + Math.Min(2.5, (last - first) / 40), last, y);
        svg.EndPath();
        if (dated.RepeatsGoOn)
        {
            svg.Line("gs-tl-open", last, y, Math.Min(axis.Right, last + 24), y);
        }

        var done = dated.Task.Done.Select(day => day.Value).Distinct().Order().ToList();
        var count = done.Count + dated.Repeats.Length;
        var spacing = count > 1 ? (last - first) / (count - 1) : 20;
        var radius = Math.Clamp(spacing * 0.36, 1.3, 4.2);

        // Beads that would melt into one another are threaded more thinly; the words beside them count them all.
        var free = double.NegativeInfinity;
        foreach (var day in done)
        {
            Bead("gs-tl-done", day);
        }

        foreach (var day in dated.Repeats)
        {
            Bead("gs-tl-due", day);
        }

        void Bead(string cls, LocalDate day)
        {
            var x = axis.Noon(day);
            if (x - free >= radius * 2.2)
            {
                svg.Circle(cls, x, y + (Math.Min(1.25, (last - first) / 80) * Math.Sin(Math.PI * Math.Clamp((x - first) / Math.Max(1, last - first), 0, 1))), radius);
                free = x;
            }
        }
    }

    private static void DrawShoot(SvgWriter svg, DatedTask dated, MarkSpan place, double most, ref Wobble hand)
    {
        var (left, right, y) = place;
        var width = right - left;
        var half = Math.Min(most * 0.5, 1.6 + (width * 0.012));
        var isOpen = dated.Window?.Latest is null;
        if (isOpen)
        {
            // Nobody has said where it ends: it grows off the page in dots.
            var full = right;
            right -= Math.Min(40, width * 0.3);
            width = right - left;
            svg.BeginPath("gs-tl-open");
            svg.MoveTo(right, y - half);
            svg.LineTo(full, y - half);
            svg.MoveTo(right, y + half);
            svg.LineTo(full, y + half);
            svg.EndPath();
        }

        var cls = dated.Task.Done.IsEmpty ? "gs-tl-due" : "gs-tl-done";
        svg.BeginPath(cls);
        svg.MoveTo(left, y);
        svg.CurveTo(left + (width * 0.3), y - (half * 0.5), left + (width * 0.7), y - half, right, y - half);
        if (isOpen)
        {
            svg.MoveTo(left, y);
        }
        else
        {
            // Cut, a little askew.
            svg.LineTo(right - (half * 0.8), y + half);
        }

        if (isOpen)
        {
            svg.CurveTo(left + (width * 0.3), y + (half * 0.5), left + (width * 0.7), y + half, right, y + half);
        }
        else
        {
            svg.CurveTo(left + (width * 0.7), y + half, left + (width * 0.3), y + (half * 0.5), left, y);
            svg.ClosePath();
        }

        svg.EndPath();
        var leaves = Math.Clamp((int)(width / 46), 1, 18);
        svg.BeginPath("gs-tl-leaflet");
        for (var leaf = 0; leaf < leaves; leaf++)
        {
            var share = (leaf + 0.7 + hand.Between(-0.15, 0.15)) / (leaves + 0.4);
            var x = left + (width * share);
            var up = leaf % 2 == 0 ? -1 : 1;
            var edge = y + (up * half * Math.Sqrt(share));
            var length = Math.Min(most * 1.1, 4 + (share * most)) * hand.Between(0.85, 1.1);
            var (tipX, tipY) = (x + length, edge + (up * Math.Min(length * 0.62, most - half)));
            svg.MoveTo(x, edge);
            svg.QuadraticTo(x + (length * 0.2), edge + ((tipY - edge) * 1.05), tipX, tipY);
            svg.QuadraticTo(x + (length * 0.85), edge + ((tipY - edge) * 0.05), x, edge);
        }

        svg.EndPath();
    }
}
