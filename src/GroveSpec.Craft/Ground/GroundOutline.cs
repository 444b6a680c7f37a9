using System.Collections.Immutable;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Ground;

/// <summary>
/// The outline of free ground: closed lines with the free ground at their left, so that outer ones run anticlockwise and holes
/// clockwise.
/// </summary>
/// <remarks>
/// Between a free place of a lattice and one beside it that is not, the edge is found by halving to a hundredth of a millimetre
/// with the test itself; the edges round each square of the lattice are joined (marching squares; of a square whose free
/// corners lie across from each other the middle decides), and each piece is halved at its own edge until it follows it to
/// as much. The edge is looked for first where what takes the ground is likely to begin, and tested there; pieces shorter than
/// a quarter of a step are not tested again where that held for the longer ones. What is narrower than two steps of the lattice
/// and lies wholly between its places is not seen.
/// </remarks>
public sealed class GroundOutline
{
    /// <summary>How near the outline follows the edge, in millimetres.</summary>
    public const double Precision = 0.01;

    private const double Straight = 0.004;
    private const int MostHalvings = 12;
    private const double TestedShare = 0.25;
    private const int CornersAtOnce = 16;

    private readonly GroundLattice lattice;
    private readonly IPlaceTest test;

    private GroundOutline(GroundLattice lattice, IPlaceTest test) => (this.lattice, this.test) = (lattice, test);

    /// <summary>Traces the outline.</summary>
    /// <param name="lattice">Places of which it is known whether they are free.</param>
    /// <param name="tests">The same test, once for each piece of work that may be done beside others; all give the same answers.</param>
    /// <param name="sideBySide">Does so many pieces of work, each told its number from 0, at once or one after another.</param>
    /// <param name="cancellation">Ends the work.</param>
    /// <returns>The closed lines, each without its first point repeated, in the order in which they are met from the front.</returns>
    /// <exception cref="OperationCanceledException">The work was ended.</exception>
    public static ImmutableArray<ImmutableArray<PlanPoint>> Of(GroundLattice lattice, IReadOnlyList<IPlaceTest> tests, Action<int, Action<int>> sideBySide, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(lattice);
        ArgumentNullException.ThrowIfNull(tests);
        ArgumentNullException.ThrowIfNull(sideBySide);
        GroundOutline[] tracers = [.. tests.Select(test => new GroundOutline(lattice, test))];
        var rings = tracers[0].Rings(cancellation);
        int[] edges = [.. rings.SelectMany(ring => ring)], firsts = new int[rings.Count], nexts = new int[edges.Length];
        for (int ring = 0, first = 0; ring < rings.Count; first += rings[ring++].Count)
        {
            firsts[ring] = first;
            for (var corner = 0; corner < rings[ring].Count; corner++)
            {
                nexts[first + corner] = first + ((corner + 1) % rings[ring].Count);
            }
        }

        var corners = new (PlanPoint Place, int Taker)[edges.Length];
        InTurns((tracer, corner) => corners[corner] = tracer.Crossing(edges[corner]));
        var pieces = new List<PlanPoint>[edges.Length];
        InTurns((tracer, corner) => pieces[corner] = tracer.Piece(corners[corner], corners[nexts[corner]]));
        return [.. rings.Select((ring, number) => Straightened([.. pieces.AsSpan(firsts[number], ring.Count).ToArray().SelectMany(piece => piece)]))];

        // Corners go to the parts in turns of some, so that each has as much to do.
        void InTurns(Action<GroundOutline, int> work) => sideBySide(tracers.Length, part =>
        {
            for (var corner = 0; corner < edges.Length; corner++)
            {
                if (corner % CornersAtOnce == 0)
                {
                    cancellation.ThrowIfCancellationRequested();
                }

                if (corner / CornersAtOnce % tracers.Length == part)
                {
                    work(tracers[part], corner);
                }
            }
        });
    }

    /// <summary>The area within closed lines, holes taken off.</summary>
    /// <param name="outline">The lines.</param>
    /// <returns>Square millimetres.</returns>
    public static double AreaInSquareMillimetres(ImmutableArray<ImmutableArray<PlanPoint>> outline)
    {
        var twice = 0.0;
        foreach (var ring in outline)
        {
            twice += TwiceAreaOf(ring);
        }

        return twice / 2;
    }

    /// <summary>Twice the area within a closed line in square millimetres, below zero for one that runs clockwise.</summary>
    /// <param name="ring">The line.</param>
    /// <returns>The area.</returns>
    public static double TwiceAreaOf(ImmutableArray<PlanPoint> ring)
    {
        var twice = 0.0;
        for (int index = 0, before = ring.Length - 1; index < ring.Length; before = index++)
        {
            // From the first point on, so that far from the origin nothing is lost.
            twice += ((ring[before].X - ring[0].X).Millimetres * (ring[index].Y - ring[0].Y).Millimetres) - ((ring[index].X - ring[0].X).Millimetres * (ring[before].Y - ring[0].Y).Millimetres);
        }

        return twice;
    }

    /// <summary>The sides of squares that each closed line crosses, in their order.</summary>
    private List<List<int>> Rings(CancellationToken cancellation)
    {
        var next = new SortedDictionary<int, int>();
        for (var row = 0; row < lattice.Rows - 1; row++)
        {
            cancellation.ThrowIfCancellationRequested();
            for (var column = 0; column < lattice.Columns - 1; column++)
            {
                LinkSquare(column, row, next);
            }
        }

        var rings = new List<List<int>>();
        var isDone = new HashSet<int>();
        foreach (var start in next.Keys)
        {
            var ring = new List<int>();
            for (var edge = start; isDone.Add(edge); edge = next[edge])
            {
                ring.Add(edge);
            }

            if (ring.Count > 0)
            {
                rings.Add(ring);
            }
        }

        return rings;
    }

    /// <summary>Joins the edges round a square: from one at which free ground is left, going round it anticlockwise, to one at which it is entered.</summary>
    private void LinkSquare(int column, int row, SortedDictionary<int, int> next)
    {
        Span<bool> free = [lattice.IsFree(column, row), lattice.IsFree(column + 1, row), lattice.IsFree(column + 1, row + 1), lattice.IsFree(column, row + 1)];
        if (free[0] == free[1] && free[1] == free[2] && free[2] == free[3])
        {
            return;
        }

        Span<int> edges = [Edge(column, row, false), Edge(column + 1, row, true), Edge(column, row + 1, false), Edge(column, row, true)];
        var isJoined = free[0] == free[2] && free[1] == free[3] && IsFree(Between(lattice.PlaceOf(column, row), lattice.PlaceOf(column + 1, row + 1), 0.5));
        for (var corner = 0; corner < 4; corner++)
        {
            if (free[corner] && !free[(corner + 1) % 4])
            {
                // Where free ground is joined across the square, the line goes round the corner that is not free; else back round the free one.
                var way = isJoined ? 1 : 3;
                var other = (corner + way) % 4;
                while (free[other] || !free[(other + 1) % 4])
                {
                    other = (other + way) % 4;
                }

                next[edges[corner]] = edges[other];
            }
        }
    }

    private int Edge(int column, int row, bool isUpright) => (((row * lattice.Columns) + column) * 2) + (isUpright ? 1 : 0);

    /// <summary>Where the edge crosses a side of a square, and what takes the ground beyond it.</summary>
    private (PlanPoint Place, int Taker) Crossing(int edge)
    {
        var (column, row) = (edge / 2 % lattice.Columns, edge / 2 / lattice.Columns);
        var (otherColumn, otherRow) = (edge & 1) == 0 ? (column + 1, row) : (column, row + 1);
        var (one, other) = (lattice.PlaceOf(column, row), lattice.PlaceOf(otherColumn, otherRow));
        return lattice.IsFree(column, row)
            ? Edge(one, other, lattice.TakerOf(otherColumn, otherRow))
            : Edge(other, one, lattice.TakerOf(column, row));
    }

    /// <summary>The last free place before one that is not, to the precision, and what takes the ground beyond it: looked for first where what takes the one is likely to begin.</summary>
    private (PlanPoint Place, int Taker) Edge(PlanPoint free, PlanPoint taken, int taker)
    {
        for (var known = 0; known != taker && test.IsLikelyTaken(taker, free) is false && test.IsLikelyTaken(taker, taken) is true;)
        {
            var guess = taker;
            var (before, beyond) = Halved(free, taken, place => test.IsLikelyTaken(guess, place) is true);
            known = taker;
            if (test.TakerOf(before) is > 0 and var other)
            {
                (taken, taker) = (before, other);
            }
            else if (test.TakerOf(beyond) is > 0 and var found)
            {
                return (before, found);
            }
            else
            {
                free = beyond;
            }
        }

        var last = taker;
        var (edge, _) = Halved(free, taken, place =>
        {
            var found = test.TakerOf(place);
            last = found > 0 ? found : last;
            return found > 0;
        });
        return (edge, last);
    }

    /// <summary>Draws a place that is not taken and one that is together, to the precision.</summary>
    private static (PlanPoint Free, PlanPoint Taken) Halved(PlanPoint free, PlanPoint taken, Func<PlanPoint, bool> isTaken)
    {
        const double Nanometres = Precision * Length.NanometresPerMillimetre;
        while (Math.Max(Math.Abs(free.X.Nanometres - taken.X.Nanometres), Math.Abs(free.Y.Nanometres - taken.Y.Nanometres)) > Nanometres)
        {
            var middle = Between(free, taken, 0.5);
            (free, taken) = isTaken(middle) ? (free, middle) : (middle, taken);
        }

        return (free, taken);
    }

    /// <summary>The outline from one corner to the next: the one, and what lies between them.</summary>
    private List<PlanPoint> Piece((PlanPoint Place, int Taker) from, (PlanPoint Place, int Taker) to)
    {
        var piece = new List<PlanPoint> { from.Place };
        Trace(from.Place, to.Place, MostHalvings, isTested: true, from.Taker == to.Taker ? [from.Taker] : [from.Taker, to.Taker], piece);
        return piece;
    }

    /// <summary>
    /// Adds the points between two at which the edge leaves the straight line, led by what is likely to take the ground along it. The longer pieces are tested; of the
    /// shorter, since both of their ends lie where they were looked for, the guess is taken. Where it is wrong the test leads.
    /// </summary>
    private void Trace(PlanPoint from, PlanPoint to, int depth, bool isTested, List<int> takers, List<PlanPoint> refined)
    {
        double x = (to.X - from.X).Millimetres, y = (to.Y - from.Y).Millimetres, length = Math.Sqrt((x * x) + (y * y));
        if (depth == 0 || length < 2 * Precision)
        {
            return;
        }

        var middle = Between(from, to, 0.5);
        var (outX, outY) = (y / length, -x / length);
        PlanPoint? corner = null;
        var isLed = !IsLikely(Moved(middle, outX, outY, -Precision)) && IsLikely(Moved(middle, outX, outY, Precision));
        var (inner, outer) = (-Precision, Precision);
        if (!isLed && EdgeAcross(middle, outX, outY, length, IsLikely) is { } likely)
        {
            (corner, middle, isLed, inner, outer) = (likely, likely, true, 0, 2 * Precision);
        }

        isTested |= length > lattice.Step.Millimetres * TestedShare;
        if (!isLed || (isTested && (!IsFree(Moved(middle, outX, outY, inner)) || IsFree(Moved(middle, outX, outY, outer)))))
        {
            corner = EdgeOff(from, to);
            takers = corner is { } found && test.TakerOf(Moved(found, outX, outY, 2 * Precision)) is > 0 and var taker && !takers.Contains(taker) ? [.. takers, taker] : takers;
            isTested = true;
        }
        else
        {
            isTested = false;
        }

        if (corner is { } at)
        {
            Trace(from, at, depth - 1, isTested, takers, refined);
            refined.Add(at);
            Trace(at, to, depth - 1, isTested, takers, refined);
        }

        bool IsLikely(PlanPoint place)
        {
            foreach (var taker in takers)
            {
                if (test.IsLikelyTaken(taker, place) is true)
                {
                    return true;
                }
            }

            return false;
        }
    }

    /// <summary>Where the edge lies over the middle of a piece, square to it; null where it follows the piece, or is not to be found.</summary>
    private PlanPoint? EdgeOff(PlanPoint from, PlanPoint to)
    {
        // Free ground lies to the left.
        double x = (to.X - from.X).Millimetres, y = (to.Y - from.Y).Millimetres, length = Math.Sqrt((x * x) + (y * y));
        var middle = Between(from, to, 0.5);
        var (outX, outY) = (y / length, -x / length);
        return IsFree(Moved(middle, outX, outY, -Precision)) && !IsFree(Moved(middle, outX, outY, Precision))
            ? null
            : EdgeAcross(middle, outX, outY, length, place => !IsFree(place));
    }

    /// <summary>The edge nearest to a place, square to the outline; null where there is none as near as the outline's piece is long.</summary>
    private static PlanPoint? EdgeAcross(PlanPoint middle, double outX, double outY, double length, Func<PlanPoint, bool> isTaken)
    {
        var isFree = !isTaken(middle);
        var side = isFree ? 1 : -1;
        var last = middle;
        for (var reach = 2 * Precision; reach < 2 * length; reach *= 2)
        {
            var tried = Moved(middle, outX, outY, side * reach);
            if (isTaken(tried) == isFree)
            {
                return isFree ? Halved(last, tried, isTaken).Free : Halved(tried, last, isTaken).Free;
            }

            last = tried;
        }

        return null;
    }

    private bool IsFree(PlanPoint place) => test.IsFree(place);

    private static PlanPoint Moved(PlanPoint place, double x, double y, double millimetres) =>
        new(place.X + Length.FromMillimetres(x * millimetres), place.Y + Length.FromMillimetres(y * millimetres));

    private static PlanPoint Between(PlanPoint one, PlanPoint other, double share) => new(
        new Length(one.X.Nanometres + (long)Math.Round((other.X.Nanometres - one.X.Nanometres) * share)),
        new Length(one.Y.Nanometres + (long)Math.Round((other.Y.Nanometres - one.Y.Nanometres) * share)));

    /// <summary>Leaves out points that lie on the straight line of those beside them (Douglas and Peucker 1973).</summary>
    private static ImmutableArray<PlanPoint> Straightened(List<PlanPoint> points)
    {
        if (points.Count < 4)
        {
            return [.. points];
        }

        var isKept = new bool[points.Count + 1];
        var spans = new Stack<(int First, int Last)>([(0, points.Count / 2), (points.Count / 2, points.Count)]);
        (isKept[0], isKept[points.Count / 2]) = (true, true);
        while (spans.TryPop(out var span))
        {
            var (farthest, most) = (-1, Straight);
            for (var index = span.First + 1; index < span.Last; index++)
            {
                if (Distance(points[index], points[span.First], points[span.Last % points.Count]) is var distance && distance > most)
                {
                    (farthest, most) = (index, distance);
                }
            }

            if (farthest >= 0)
            {
                isKept[farthest] = true;
                spans.Push((span.First, farthest));
                spans.Push((farthest, span.Last));
            }
        }

        return [.. points.Where((_, index) => isKept[index])];
    }

    /// <summary>From a place to a straight piece, in millimetres.</summary>
    internal static double Distance(PlanPoint place, PlanPoint from, PlanPoint to)
    {
        double ux = (to.X - from.X).Millimetres, uy = (to.Y - from.Y).Millimetres, vx = (place.X - from.X).Millimetres, vy = (place.Y - from.Y).Millimetres;
        var square = (ux * ux) + (uy * uy);
        var along = square > 0 ? Math.Clamp(((ux * vx) + (uy * vy)) / square, 0, 1) : 0;
        double dx = vx - (along * ux), dy = vy - (along * uy);
        return Math.Sqrt((dx * dx) + (dy * dy));
    }
}
