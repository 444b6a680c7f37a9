using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Times;

namespace GroveSpec.Drawing.Timeline;

/// <summary>Fine tendrils from work to the work that waits on it, and where they run, so that words keep out of their way.</summary>
internal sealed class Tendrils
{
    private readonly List<(double X, double Y)>[] pointsByRow;
    private readonly List<Strand> strands = [];

    /// <summary>Lays the tendrils of all rows.</summary>
    /// <param name="rows">The rows.</param>
    /// <param name="marks">Where the mark of each stands.</param>
    /// <param name="axis">The days across the page.</param>
    public Tendrils(IReadOnlyList<TimelineRow> rows, IReadOnlyList<MarkSpan> marks, TimeAxis axis)
    {
        pointsByRow = new List<(double, double)>[rows.Count];
        var rowOf = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var row = 0; row < rows.Count; row++)
        {
            pointsByRow[row] = [];
            rowOf.TryAdd(rows[row].Dated.Task.Name, row);
        }

        for (var row = 0; row < rows.Count; row++)
        {
            foreach (var name in Leads(rows[row].Dated.Task))
            {
                if (rowOf.TryGetValue(name, out var other) && other != row)
                {
                    Lay(other, row, marks, axis);
                }
            }
        }
    }

    /// <summary>Whether a box in a row would have a tendril run through it.</summary>
    /// <param name="row">The row.</param>
    /// <param name="box">The box.</param>
    /// <returns>True where one does.</returns>
    public bool Touches(int row, Box box)
    {
        foreach (var (x, y) in pointsByRow[row])
        {
            if (x >= box.Left && x <= box.Right && y >= box.Top && y <= box.Bottom)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Draws them all.</summary>
    /// <param name="svg">Where to.</param>
    public void Draw(SvgWriter svg)
    {
        if (strands.Count == 0)
        {
            return;
        }

        svg.BeginPath("gs-tl-tendril");
        foreach (var strand in strands)
        {
            svg.MoveTo(strand.FromX, strand.FromY);
            svg.CurveTo(strand.OneX, strand.OneY, strand.TwoX, strand.TwoY, strand.ToX, strand.ToY);

            // It ends as a tendril does, in a small curl about what it holds.
            svg.CurveTo(strand.ToX + strand.Curl, strand.ToY + 4.5, strand.ToX + (strand.Curl * 1.9), strand.ToY - 1.5, strand.ToX + (strand.Curl * 0.5), strand.ToY - 1.2);
        }

        svg.EndPath();
    }

    // What only ends with another task does not wait on it.
    private static IEnumerable<string> Leads(PlantingTask task)
    {
        var told = new HashSet<string>(StringComparer.Ordinal);
        if (task.Target is TaskTarget.OfTask of && told.Add(of.Name.Value))
        {
            yield return of.Name.Value;
        }

        foreach (var clause in task.Times)
        {
            var name = clause switch
            {
                TimeClause.Offset offset => offset.Task,
                TimeClause.After { Moment: Moment.OfTask after } => after.Task,
                TimeClause.Before { Moment: Moment.OfTask before } => before.Task,
                TimeClause.During { Moment: Moment.OfTask during } => during.Task,
                TimeClause.FromTo { Start: Moment.OfTask start } => start.Task,
                _ => null,
            };
            if (name is not null && told.Add(name))
            {
                yield return name;
            }
        }
    }

    private void Lay(int source, int target, IReadOnlyList<MarkSpan> marks, TimeAxis axis)
    {
        var (from, to) = (marks[source], marks[target]);
        var isForward = (to.Left + to.Right) / 2 >= (from.Left + from.Right) / 2;

        // From the tip where the other lies beyond it, else from under the leaf.
        var (fromX, toX) = isForward
            ? (Math.Clamp(to.Left - 14, from.Left + ((from.Right - from.Left) * 0.3), from.Right), to.Left - 2)
            : (Math.Clamp(to.Right + 14, from.Left, from.Right - ((from.Right - from.Left) * 0.3)), to.Right + 2);
        var way = isForward ? 1 : -1;
        var swing = Math.Clamp(Math.Abs(toX - fromX) * 0.5, 14, 60) * way;
        var edge = (to.Y > from.Y ? 1 : -1) * Math.Min(16, Math.Abs(to.Y - from.Y) * 0.3);
        var strand = new Strand(
            fromX,
            from.Y,
            Math.Clamp(fromX + swing, axis.Left + 2, axis.Right - 2),
            from.Y + edge,
            Math.Clamp(toX - swing, axis.Left + 2, axis.Right - 2),
            to.Y - edge,
            Math.Clamp(toX, axis.Left + 2, axis.Right - 2),
            to.Y,
            way * 2.6);
        strands.Add(strand);
        var (top, bottom) = source < target ? (source, target) : (target, source);
        var steps = 16 + (8 * (bottom - top));
        var row = source;
        for (var step = 0; step <= steps; step++)
        {
            var point = strand.At((double)step / steps);
            while (row != target && Math.Abs(marks[row + Math.Sign(target - row)].Y - point.Y) < Math.Abs(marks[row].Y - point.Y))
            {
                row += Math.Sign(target - row);
            }

            // A tendril that leaves a row's middle is still beside its words for a while, and already beside the next row's.
            pointsByRow[row].Add(point);
            if (row > 0)
            {
                pointsByRow[row - 1].Add(point);
            }

            if (row + 1 < pointsByRow.Length)
            {
                pointsByRow[row + 1].Add(point);
            }
        }
    }

    private readonly record struct Strand(
        double FromX, double FromY, double OneX, double OneY, double TwoX, double TwoY, double ToX, double ToY, double Curl)
    {
        public (double X, double Y) At(double share)
        {
            var rest = 1 - share;
            var (a, b, c, d) = (rest * rest * rest, 3 * rest * rest * share, 3 * rest * share * share, share * share * share);
            return ((a * FromX) + (b * OneX) + (c * TwoX) + (d * ToX), (a * FromY) + (b * OneY) + (c * TwoY) + (d * ToY));
        }
    }
}
