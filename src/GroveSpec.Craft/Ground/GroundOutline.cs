using System.Collections.Immutable;
using System.Runtime.InteropServices;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Ground;

/// <summary>
/// The outline of free ground: closed lines with the free ground at their left, so that outer ones run anticlockwise and holes
/// clockwise.
/// </summary>
/// <remarks>
/// Between a free place of a lattice and one beside it that is not, the edge is found by halving to a hundredth of a millimetre
/// with the test itself; so it is between places along a side of the lattice's squares where something narrower than a step
/// was found. The edges round each square are joined (marching squares; <see cref="GroundRings"/>), and each piece is halved at
/// its own edge, within its square, until it follows it to as much. The edge is looked for first where what takes the ground is
/// likely to begin, and tested there; pieces shorter than two fifths of a step are not tested again where that held for the
/// longer ones. What is narrower than a step and meets no side, or is not guessed to lie there, is not seen.
/// </remarks>
public sealed partial class GroundOutline
{
    /// <summary>How near the outline follows the edge, in millimetres.</summary>
    public const double Precision = 0.01;

    private const double Straight = 0.004;
    private const int MostHalvings = 12;
    private const double TestedShare = 0.4;
    private const int CornersAtOnce = 16;

    private readonly GroundLattice lattice;
    private readonly GroundSides sides;
    private readonly IPlaceTest test;
    private readonly List<PlanPoint> traced = [];
    private PlanPoint least;
    private PlanPoint greatest;

    private GroundOutline(GroundLattice lattice, GroundSides sides, IPlaceTest test) => (this.lattice, this.sides, this.test) = (lattice, sides, test);

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
        var sides = GroundSides.Of(lattice, tests, sideBySide, cancellation);
        GroundOutline[] tracers = [.. tests.Select(test => new GroundOutline(lattice, sides, test))];
        int[] crossings = [.. sides.Crossings()];
        var corners = new (PlanPoint Place, int Taker)[crossings.Length];
        InTurns((tracer, corner) => corners[corner] = tracer.Crossing(crossings[corner]));
        int NumberOf(int crossing) => Array.BinarySearch(crossings, crossing);
        var rings = GroundRings.Of(lattice, sides, tests, crossing => corners[NumberOf(crossing)].Taker, sideBySide, cancellation);
        var numbers = rings.Select(ring => ring.Select(one => NumberOf(one.Crossing)).ToList()).ToList();
        var ways = new (int Next, int Square)[crossings.Length];
        for (var ring = 0; ring < rings.Count; ring++)
        {
            for (var corner = 0; corner < rings[ring].Count; corner++)
            {
                ways[numbers[ring][corner]] = (numbers[ring][(corner + 1) % rings[ring].Count], rings[ring][corner].Square);
            }
        }

        var pieces = new (GroundOutline Tracer, int First, int Count)[crossings.Length];
        InTurns((tracer, corner) => pieces[corner] = tracer.Piece(corners[corner], corners[ways[corner].Next], ways[corner].Square));
        return [.. numbers.Select(ring => Straightened(Joined(ring, pieces)))];

        // Corners go to the parts in turns of some, so that each has as much to do.
        void InTurns(Action<GroundOutline, int> work) => sideBySide(tracers.Length, part =>
        {
            for (var corner = 0; corner < crossings.Length; corner++)
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

    /// <summary>Where the edge crosses a piece of a square's side, and what takes the ground beyond it.</summary>
    private (PlanPoint Place, int Taker) Crossing(int crossing)
    {
        var (from, to) = sides.Piece(crossing / GroundSides.MostPieces, crossing % GroundSides.MostPieces);
        return from.Taker == 0 ? Edge(from.Place, to.Place, to.Taker) : Edge(to.Place, from.Place, from.Taker);
    }

    /// <summary>The last free place before one that is not, to the precision, and what takes the ground beyond it: looked for first where what takes the one is likely to begin.</summary>
    private (PlanPoint Place, int Taker) Edge(PlanPoint free, PlanPoint taken, int taker)
    {
        for (var known = 0; known != taker && test.IsLikelyTaken(taker, free) is false && test.IsLikelyTaken(taker, taken) is true;)
        {
            var guess = new Likely(test, taker);
            var (before, beyond) = Halved(free, taken, ref guess);
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

        var tested = new Tested(test, taker);
        var (edge, _) = Halved(free, taken, ref tested);
        return (edge, tested.Last);
    }

    /// <summary>Draws a place that is not taken and one that is together, to the precision.</summary>
    private static (PlanPoint Free, PlanPoint Taken) Halved<T>(PlanPoint free, PlanPoint taken, ref T taking)
        where T : struct, ITaking
    {
        const double Nanometres = Precision * Length.NanometresPerMillimetre;
        while (Math.Max(Math.Abs(free.X.Nanometres - taken.X.Nanometres), Math.Abs(free.Y.Nanometres - taken.Y.Nanometres)) > Nanometres)
        {
            var middle = Between(free, taken, 0.5);
            (free, taken) = taking.Takes(middle) ? (free, middle) : (middle, taken);
        }

        return (free, taken);
    }

    /// <summary>Traces the outline from one corner to the next: the one, and what lies between them.</summary>
    private (GroundOutline Tracer, int First, int Count) Piece((PlanPoint Place, int Taker) from, (PlanPoint Place, int Taker) to, int square)
    {
        var first = traced.Count;
        traced.Add(from.Place);
        var (column, row) = (square % lattice.Columns, square / lattice.Columns);
        (least, greatest) = (lattice.PlaceOf(column, row), lattice.PlaceOf(column + 1, row + 1));
        Trace(from.Place, to.Place, MostHalvings, isTested: true, from.Taker == to.Taker ? [from.Taker] : [from.Taker, to.Taker]);
        return (this, first, traced.Count - first);
    }

    private static List<PlanPoint> Joined(List<int> ring, (GroundOutline Tracer, int First, int Count)[] pieces)
    {
        var points = new List<PlanPoint>(ring.Sum(corner => pieces[corner].Count));
        foreach (var corner in ring)
        {
            var (tracer, first, count) = pieces[corner];
            points.AddRange(CollectionsMarshal.AsSpan(tracer.traced).Slice(first, count));
        }

        return points;
    }

    /// <summary>
    /// Adds the points between two at which the edge leaves the straight line, led by what is likely to take the ground along it. The longer pieces are tested; of the
    /// shorter, since both of their ends lie where they were looked for, the guess is taken. Where it is wrong the test leads.
    /// </summary>
    private void Trace(PlanPoint from, PlanPoint to, int depth, bool isTested, List<int> takers)
    {
        var way = new Way(from, to);
        if (depth == 0 || way.Length < 2 * Precision)
        {
            return;
        }

        isTested |= way.Length > lattice.Step.Millimetres * TestedShare;
        var led = Lead(way, takers);
        for (var isSure = !isTested; led is { } lead && !isSure;)
        {
            var other = test.TakerOf(lead.IsOff ? lead.Place : way.Out(lead.Place, -Precision));
            if (other == 0)
            {
                isSure = true;
                led = test.IsFree(way.Out(lead.Place, lead.IsOff ? 2 * Precision : Precision)) ? null : led;
            }
            else if (takers.Contains(other))
            {
                led = null;
            }
            else
            {
                // What takes the ground there as well leads from here on too.
                takers = [.. takers, other];
                led = Lead(way, takers);
            }
        }

        var corner = led is { } edge ? edge.IsOff ? edge.Place : (PlanPoint?)null : null;
        if (led is null && EdgeOff(way) is var (off, taker))
        {
            (corner, takers) = (off, takers.Contains(taker) ? takers : [.. takers, taker]);
        }

        if (corner is { } at)
        {
            Trace(from, at, depth - 1, led is null, takers);
            traced.Add(at);
            Trace(at, to, depth - 1, led is null, takers);
        }
    }

    /// <summary>Where takers are likely to begin over the middle of a piece, square to it: the middle itself, or a place off the piece. Null where that is not to be found.</summary>
    private (PlanPoint Place, bool IsOff)? Lead(Way way, List<int> takers)
    {
        var likely = new LikelyByAny(test, takers);
        return !likely.Takes(way.Out(way.Middle, -Precision)) && likely.Takes(way.Out(way.Middle, Precision)) ? (way.Middle, false)
            : Across(way, 2 * Precision, lattice.Step.Millimetres / 16, ref likely) is var (free, taken) ? (Halved(free, taken, ref likely).Free, true) : null;
    }

    /// <summary>Where the edge lies over the middle of a piece, square to it, and what takes the ground beyond it; null where it follows the piece, or is not to be found.</summary>
    private (PlanPoint Place, int Taker)? EdgeOff(Way way)
    {
        if (test.IsFree(way.Out(way.Middle, -Precision)) && !test.IsFree(way.Out(way.Middle, Precision)))
        {
            return null;
        }

        var tested = new Tested(test, 0);
        return Across(way, Math.Max(2 * Precision, way.Length / 16), lattice.Step.Millimetres / 6, ref tested) is var (free, taken) ? Edge(free, taken, tested.Last) : null;
    }

    /// <summary>Two places between which the edge nearest to the middle of a piece lies, square to it; null where there is none within the square of the lattice.</summary>
    private (PlanPoint Free, PlanPoint Taken)? Across<T>(Way way, double first, double furthest, ref T taking)
        where T : struct, ITaking
    {
        var isFree = !taking.Takes(way.Middle);
        var ahead = isFree ? 1 : -1;
        var most = Math.Min(
            ToSide(way.Middle.X, ahead * way.OutX, least.X, greatest.X),
            ToSide(way.Middle.Y, ahead * way.OutY, least.Y, greatest.Y)) + Precision;
        var last = way.Middle;

        // Wider steps would pass over what is narrow.
        for (var (reach, isLast) = (first, false); !isLast; reach += Math.Min(reach, furthest))
        {
            isLast = reach >= most;
            var tried = way.Out(way.Middle, ahead * Math.Min(reach, most));
            if (taking.Takes(tried) == isFree)
            {
                return isFree ? (last, tried) : (tried, last);
            }

            last = tried;
        }

        return null;
    }

    /// <summary>How far it is to a side of the square that lies ahead, in millimetres; without end where none does.</summary>
    private static double ToSide(Length from, double ahead, Length least, Length greatest) => ahead > 0 ? Math.Max(0, (greatest - from).Millimetres) / ahead
        : ahead < 0 ? Math.Max(0, (from - least).Millimetres) / -ahead
        : double.PositiveInfinity;

    /// <summary>A place between two.</summary>
    /// <param name="one">The one.</param>
    /// <param name="other">The other.</param>
    /// <param name="share">How far from the one to the other, from 0 to 1.</param>
    /// <returns>The place, to the nanometre.</returns>
    internal static PlanPoint Between(PlanPoint one, PlanPoint other, double share) => new(
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

    /// <summary>A straight piece of the outline, free ground at its left.</summary>
    private readonly struct Way
    {
        public Way(PlanPoint from, PlanPoint to)
        {
            double x = (to.X - from.X).Millimetres, y = (to.Y - from.Y).Millimetres;
            Length = Math.Sqrt((x * x) + (y * y));
            (Middle, OutX, OutY) = (Between(from, to, 0.5), y / Length, -x / Length);
        }

        /// <summary>Its length in millimetres.</summary>
        public double Length { get; }

        public PlanPoint Middle { get; }

        /// <summary>Square to it out of the free ground, as shares of the plan's directions.</summary>
        public double OutX { get; }

        public double OutY { get; }

        /// <summary>A place so many millimetres further out, or in where they are below zero.</summary>
        public PlanPoint Out(PlanPoint place, double millimetres) =>
            new(place.X + Model.Quantities.Length.FromMillimetres(OutX * millimetres), place.Y + Model.Quantities.Length.FromMillimetres(OutY * millimetres));
    }
}
