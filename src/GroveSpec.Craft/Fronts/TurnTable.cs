using System.Collections.Immutable;
using GroveSpec.Craft.Views;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Fronts;

/// <summary>
/// A planting that is turned before the viewer's eye: the same as <see cref="FrontView"/> shows, asked of very many bearings.
/// Each turn overwrites what the last one showed; one table serves one thread.
/// </summary>
public sealed class TurnTable
{
    private readonly ViewFrame start;
    private readonly (double X, double Y, double Radius)[] places;
    private readonly (double X, double Y, double Z)?[] tips;
    private readonly bool[] isMeasured;
    private readonly ViewedPoint?[] feet;
    private readonly ViewedPoint?[] tops;
    private readonly ViewInterval[] covers;
    private readonly double[] powers;
    private readonly double[] hidden;
    private readonly int[] order;
    private readonly int[] topOrder;
    private readonly int[] covering;
    private int seen;
    private int seenTops;

    /// <summary>Lays a planting out.</summary>
    /// <param name="state">The planting, with its trunks in the order in which they are numbered: those that stand and have a place.</param>
    /// <param name="start">The viewer's eye; its distance and height hold for every bearing.</param>
    public TurnTable(PlantingState state, ViewFrame start)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(start);
        this.start = start;
        Frame = start;
        Trunks = [.. state.Standing];
        places = [.. Trunks.Select(trunk => (trunk.Place!.Value.X.Millimetres, trunk.Place.Value.Y.Millimetres, ((trunk.Diameter?.Value ?? Length.Zero) * 0.5).Millimetres))];
        tips = [.. Trunks.Select(trunk => TrunkAxis.TipOf(trunk) is { } tip ? (tip.X.Millimetres, tip.Y.Millimetres, tip.Z.Millimetres) : ((double, double, double)?)null)];
        isMeasured = [.. Trunks.Select(trunk => trunk.Diameter is not null)];
        var count = Trunks.Length;
        (feet, tops, covers) = (new ViewedPoint?[count], new ViewedPoint?[count], new ViewInterval[count]);
        (powers, hidden, covering) = (new double[count], new double[count], new int[count]);
        (order, topOrder) = ([.. Enumerable.Range(0, count)], [.. Enumerable.Range(0, count)]);
        Turn(start.From);
    }

    /// <summary>The trunks, as they are numbered.</summary>
    public ImmutableArray<TrunkState> Trunks { get; }

    /// <summary>The viewer's eye at the bearing last turned to.</summary>
    public ViewFrame Frame { get; private set; }

    /// <summary>The trunks that are seen, from left to right by their feet; of equals the lower number first.</summary>
    public ReadOnlySpan<int> Order => order.AsSpan(0, seen);

    /// <summary>The trunks whose tops are seen, from left to right by their tops; of equals as in <see cref="Order"/>.</summary>
    public ReadOnlySpan<int> TopOrder => topOrder.AsSpan(0, seenTops);

    /// <summary>Whether a trunk is seen.</summary>
    /// <param name="trunk">A trunk.</param>
    /// <returns>False for one that stands at, beside or behind the eye.</returns>
    public bool IsSeen(int trunk) => feet[trunk] is not null;

    /// <summary>Where the foot of a trunk is seen.</summary>
    /// <param name="trunk">A trunk of <see cref="Order"/>.</param>
    /// <returns>The place in the picture.</returns>
    public ViewedPoint Foot(int trunk) => feet[trunk]!.Value;

    /// <summary>Where the top of a trunk is seen.</summary>
    /// <param name="trunk">A trunk of <see cref="TopOrder"/>.</param>
    /// <returns>The place in the picture.</returns>
    public ViewedPoint Top(int trunk) => tops[trunk]!.Value;

    /// <summary>The share of a trunk's base that nearer ones cover.</summary>
    /// <param name="trunk">A trunk of <see cref="Order"/>.</param>
    /// <returns>From 0 to 1; null where its diameter is not known.</returns>
    public Proportion? Hidden(int trunk) => isMeasured[trunk] ? new Proportion(hidden[trunk]) : null;

    /// <summary>Turns the planting so that the viewer stands at a bearing.</summary>
    /// <param name="from">The bearing.</param>
    public void Turn(Bearing from)
    {
        Frame = new ViewFrame(from, start.Distance, start.EyeHeight);
        for (var trunk = 0; trunk < places.Length; trunk++)
        {
            var (x, y, radius) = places[trunk];
            var (across, depth) = Frame.Turned(x, y);
            feet[trunk] = null;
            tops[trunk] = null;
            if (Frame.See(across, depth, 0) is { } foot && Frame.Cover(across, depth, radius) is { } cover)
            {
                feet[trunk] = foot;
                covers[trunk] = cover;
                powers[trunk] = ViewFrame.Power(across, depth, radius);
                if (tips[trunk] is { } tip)
                {
                    var (tipAcross, tipDepth) = Frame.Turned(tip.X, tip.Y);
                    tops[trunk] = Frame.See(tipAcross, tipDepth, tip.Z);
                }
            }
        }

        (seen, seenTops) = (Sort(order, feet, false), Sort(topOrder, tops, true));
        foreach (var trunk in Order)
        {
            hidden[trunk] = isMeasured[trunk] ? ShareHidden(trunk) : 0;
        }
    }

    /// <summary>What of a trunk's base is covered by nearer ones, as strips from left to right: from the left edge of one trunk, or its own, to the right edge of one, or its own.</summary>
    /// <param name="trunk">A trunk of <see cref="Order"/>.</param>
    /// <param name="strips">Takes the strips.</param>
    internal void Strips(int trunk, List<(int Left, int Right)> strips)
    {
        strips.Clear();
        var own = covers[trunk];
        var (left, right, reached) = (-1, -1, own.Left);
        foreach (var other in Covering(trunk))
        {
            var (from, fromEdge) = covers[other].Left > own.Left ? (covers[other].Left, other) : (own.Left, trunk);
            var (to, toEdge) = covers[other].Right < own.Right ? (covers[other].Right, other) : (own.Right, trunk);
            if (to <= from)
            {
                continue;
            }

            if (left < 0 || from > reached)
            {
                if (left >= 0)
                {
                    strips.Add((left, right));
                }

                (left, right, reached) = (fromEdge, toEdge, to);
            }
            else if (to > reached)
            {
                (right, reached) = (toEdge, to);
            }
        }

        if (left >= 0)
        {
            strips.Add((left, right));
        }
    }

    private double ShareHidden(int trunk)
    {
        var own = covers[trunk];
        var nearer = Covering(trunk);
        if (nearer.IsEmpty)
        {
            return 0;
        }

        if (own.Width <= Length.Zero)
        {
            foreach (var other in nearer)
            {
                if (covers[other].Left <= own.Left && covers[other].Right > own.Left)
                {
                    return 1;
                }
            }

            return 0;
        }

        // From left to right, so that each adds what lies beyond all before it.
        Length covered = Length.Zero, reached = own.Left;
        foreach (var other in nearer)
        {
            var from = covers[other].Left > reached ? covers[other].Left : reached;
            var to = covers[other].Right < own.Right ? covers[other].Right : own.Right;
            (covered, reached) = to > from ? (covered + (to - from), to) : (covered, reached);
        }

        return covered / own.Width;
    }

    /// <summary>The nearer trunks whose covers meet that of a trunk, by their left edges.</summary>
    private ReadOnlySpan<int> Covering(int trunk)
    {
        var own = covers[trunk];
        var found = 0;
        foreach (var other in Order)
        {
            if (other != trunk && covers[other].Left <= own.Right && covers[other].Right >= own.Left && covers[other].Width > Length.Zero
                && (powers[other] < powers[trunk] || (powers[other] == powers[trunk] && other < trunk)))
            {
                var place = found++;
                for (; place > 0 && covers[covering[place - 1]].Left > covers[other].Left; place--)
                {
                    covering[place] = covering[place - 1];
                }

                covering[place] = other;
            }
        }

        return covering.AsSpan(0, found);
    }

    private bool IsBefore(int one, int other, bool byTops)
    {
        if (byTops && tops[one]!.Value.Across != tops[other]!.Value.Across)
        {
            return tops[one]!.Value.Across < tops[other]!.Value.Across;
        }

        long left = feet[one]!.Value.Across.Nanometres, right = feet[other]!.Value.Across.Nanometres;
        return left < right || (left == right && one < other);
    }

    /// <summary>Puts what is seen first and in order. The last turn's order is nearly this one's, so few have to move.</summary>
    private int Sort(int[] order, ViewedPoint?[] points, bool byTops)
    {
        var count = 0;
        for (var index = 0; index < order.Length; index++)
        {
            if (points[order[index]] is null)
            {
                continue;
            }

            (order[count], order[index]) = (order[index], order[count]);
            var moved = order[count];
            var place = count++;
            for (; place > 0 && IsBefore(moved, order[place - 1], byTops); place--)
            {
                order[place] = order[place - 1];
            }

            order[place] = moved;
        }

        return count;
    }
}
