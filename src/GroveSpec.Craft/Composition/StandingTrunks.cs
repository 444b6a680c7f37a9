using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Composition;

/// <summary>
/// The trunks that stand and whose place is known, and which of them are neighbours.
/// </summary>
/// <remarks>
/// Two trunks are neighbours when no third one stands between them, that is, when the straight line from centre to centre
/// passes through no third trunk that is nearer to both than they are to each other; from seven trunks on, also, their gap
/// is at most 2.5 × the median of the gaps from each trunk to its nearest. The gap between two neighbours is open when no
/// third stands within the circle over it either, whose diameter is the line between their centres (the graph of Gabriel
/// and Sokal 1969, "A new statistical approach to geographic variation analysis": the definition from memory). Gaps go
/// from centre to centre. At most the 24 nearest of a trunk are looked at, which matters only where more than that stand
/// in a heap.
/// </remarks>
public sealed class StandingTrunks
{
    /// <summary>From this many trunks on the length of a gap decides with.</summary>
    public const int ReachMattersFrom = 7;

    private const int MostNeighbours = 24;

    private readonly double[] x;
    private readonly double[] y;
    private readonly Lazy<PointTree> tree;
    private readonly Lazy<double[]> nearestSquares;
    private readonly Lazy<(int[] Starts, int[] Neighbours, bool[] IsOpen)> neighbours;
    private ImmutableArray<(int First, int Second)> pairs;

    private StandingTrunks(ImmutableArray<TrunkState> trunks)
    {
        Trunks = trunks;
        var sections = ImmutableArray.CreateBuilder<TrunkSection>(trunks.Length);
        x = new double[trunks.Length];
        y = new double[trunks.Length];
        for (var index = 0; index < trunks.Length; index++)
        {
            var place = trunks[index].Place!.Value;
            sections.Add(new(place, trunks[index].Diameter?.Value ?? Length.Zero));

            // From the first trunk on, so that even far from the origin every difference is exact.
            x[index] = place.X.Nanometres - trunks[0].Place!.Value.X.Nanometres;
            y[index] = place.Y.Nanometres - trunks[0].Place!.Value.Y.Nanometres;
        }

        Sections = sections.MoveToImmutable();
        tree = new(() => new PointTree(x, y), LazyThreadSafetyMode.None);
        nearestSquares = new(NearestSquares, LazyThreadSafetyMode.None);
        neighbours = new(FindNeighbours, LazyThreadSafetyMode.None);
    }

    /// <summary>The trunks, in the order of the state they were taken from.</summary>
    public ImmutableArray<TrunkState> Trunks { get; }

    /// <summary>Their cuts at the soil, in the same order; a trunk whose diameter is not known has one of zero.</summary>
    public ImmutableArray<TrunkSection> Sections { get; }

    /// <summary>How many there are.</summary>
    public int Count => Trunks.Length;

    /// <summary>The standing trunks of a planting.</summary>
    /// <param name="state">Its state on a day.</param>
    /// <returns>Those that stand and have a place.</returns>
    public static StandingTrunks Of(PlantingState state) => new([.. state.Standing]);

    /// <summary>The median of the distances from each trunk to its nearest, of an even number the smaller of the middle two; zero for fewer than two trunks.</summary>
    public Length MedianNearestGap => Length.FromMillimetres(Math.Sqrt(MedianSquare) / Length.NanometresPerMillimetre);

    /// <summary>The longest gap between neighbours; the largest length there is when fewer than seven trunks stand.</summary>
    public Length NeighbourReach => Count < ReachMattersFrom ? Length.Largest : MedianNearestGap * 2.5;

    /// <summary>The mean of the distances from each trunk to its nearest; zero for fewer than two trunks.</summary>
    public Length MeanNearestGap
    {
        get
        {
            if (Count < 2)
            {
                return Length.Zero;
            }

            var sum = 0.0;
            foreach (var square in nearestSquares.Value)
            {
                sum += Math.Sqrt(square);
            }

            return Length.FromMillimetres(sum / Count / Length.NanometresPerMillimetre);
        }
    }

    /// <summary>The neighbours of a trunk.</summary>
    /// <param name="index">Which trunk.</param>
    /// <returns>The places of its neighbours in <see cref="Trunks"/>, the nearest first.</returns>
    public ReadOnlySpan<int> NeighboursOf(int index)
    {
        var (starts, all, _) = neighbours.Value;
        return all.AsSpan(starts[index], starts[index + 1] - starts[index]);
    }

    /// <summary>Whether the gaps to the neighbours of a trunk are open.</summary>
    /// <param name="index">Which trunk.</param>
    /// <returns>For each of <see cref="NeighboursOf"/>, whether no third trunk stands within the circle over the gap.</returns>
    public ReadOnlySpan<bool> OpenGapsOf(int index)
    {
        var (starts, _, isOpen) = neighbours.Value;
        return isOpen.AsSpan(starts[index], starts[index + 1] - starts[index]);
    }

    /// <summary>All pairs of neighbours, each once, sorted, the one that comes first among the trunks first.</summary>
    public ImmutableArray<(int First, int Second)> NeighbourPairs => pairs.IsDefault ? pairs = FindPairs() : pairs;

    /// <summary>The trunks near a trunk, itself left out.</summary>
    /// <param name="index">Which trunk.</param>
    /// <param name="reach">How near, from centre to centre, that distance included.</param>
    /// <param name="found">Takes them, nearest first; its length sets how many are found at most.</param>
    /// <returns>How many were found.</returns>
    public int Near(int index, Length reach, Span<int> found)
    {
        Span<double> squares = found.Length <= 64 ? stackalloc double[found.Length] : new double[found.Length];
        return tree.Value.Nearest(index, (double)reach.Nanometres * reach.Nanometres, found, squares);
    }

    /// <summary>How many trunks were looked at so far in search of those near others.</summary>
    internal long Looked => tree.Value.Looked;

    /// <summary>How far to the right of the first trunk each stands, in nanometres, exact.</summary>
    internal ReadOnlySpan<double> XInNanometres => x;

    /// <summary>How far to the back of the first trunk each stands, in nanometres, exact.</summary>
    internal ReadOnlySpan<double> YInNanometres => y;

    /// <summary>The square of the distance between two trunks, in square nanometres, exact.</summary>
    internal Int128 Square(int first, int second) => Rod.Square(Sections[first].Centre, Sections[second].Centre);

    /// <summary>The square of the distance between two trunks in square nanometres, rounded to 53 bits, as neighbours are told apart by.</summary>
    internal double RoundedSquare(int first, int second)
    {
        double dx = x[first] - x[second], dy = y[first] - y[second];
        return (dx * dx) + (dy * dy);
    }

    /// <summary>Whether a trunk would part two others, so that they are no neighbours while it stands.</summary>
    internal bool Parts(int trunk, int from, int to)
    {
        var square = RoundedSquare(from, to);
        return RoundedSquare(from, trunk) < square && IsOnTheWay(trunk, from, to, square);
    }

    /// <summary>Whether a trunk would stand within the circle over the gap of two others, so that it is not open while it stands.</summary>
    internal bool Enters(int trunk, int from, int to) => IsWithinCircle(trunk, from, to);

    /// <summary>Whether a gap is within a reach, both as squares that were rounded.</summary>
    internal static bool IsWithin(double square, double reachSquare) => IsWithinReach(square, reachSquare);

    private double MedianSquare
    {
        get
        {
            if (Count < 2)
            {
                return 0;
            }

            var order = Enumerable.Range(0, Count).ToArray();
            var middle = (Count - 1) / 2;
            Selection.Place(order, nearestSquares.Value, 0, Count, middle);
            return nearestSquares.Value[order[middle]];
        }
    }

    private double[] NearestSquares()
    {
        var result = new double[Count];
        Span<int> found = stackalloc int[1];
        Span<double> squares = stackalloc double[1];
        for (var index = 0; index < Count; index++)
        {
            result[index] = tree.Value.Nearest(index, double.PositiveInfinity, found, squares) == 1 ? squares[0] : 0;
        }

        return result;
    }

    private ImmutableArray<(int First, int Second)> FindPairs()
    {
        var found = ImmutableArray.CreateBuilder<(int First, int Second)>(neighbours.Value.Neighbours.Length);
        Span<int> later = stackalloc int[MostNeighbours];
        for (var index = 0; index < Count; index++)
        {
            var count = 0;
            foreach (var other in NeighboursOf(index))
            {
                if (other > index)
                {
                    later[count++] = other;
                }
            }

            later[..count].Sort();
            foreach (var other in later[..count])
            {
                found.Add((index, other));
            }
        }

        return found.DrainToImmutable();
    }

    private (int[] Starts, int[] Neighbours, bool[] IsOpen) FindNeighbours()
    {
        // A hair more than the reach, so that a gap of exactly the reach is not lost to rounding; it is compared again below.
        var reachSquare = Count < ReachMattersFrom ? double.PositiveInfinity : 6.25 * MedianSquare;
        var searchSquare = reachSquare * (1 + 1e-9);
        var starts = new int[Count + 1];
        var all = new List<int>(Count * 5);
        var isOpen = new List<bool>(Count * 5);
        Span<int> found = stackalloc int[MostNeighbours];
        Span<double> squares = stackalloc double[MostNeighbours];
        for (var index = 0; index < Count; index++)
        {
            var count = tree.Value.Nearest(index, searchSquare, found, squares);
            for (var candidate = 0; candidate < count; candidate++)
            {
                if (IsWithinReach(squares[candidate], reachSquare) && !IsParted(index, candidate, found, squares))
                {
                    all.Add(found[candidate]);
                    isOpen.Add(!IsEntered(index, candidate, found));
                }
            }

            starts[index + 1] = all.Count;
        }

        return (starts, [.. all], [.. isOpen]);
    }

    /// <summary>Squares of whole nanometres, rounded to 53 bits, agree to this much when they stand for the same length.</summary>
    private static bool IsWithinReach(double square, double reachSquare) => square <= reachSquare * (1 + 1e-14);

    /// <summary>Whether a third trunk stands between; only one that is nearer than the candidate can.</summary>
    private bool IsParted(int index, int candidate, ReadOnlySpan<int> found, ReadOnlySpan<double> squares)
    {
        for (var nearer = 0; nearer < candidate; nearer++)
        {
            if (squares[nearer] < squares[candidate] && IsOnTheWay(found[nearer], index, found[candidate], squares[candidate]))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether a third trunk stands within the circle over the gap; only one that is nearer than the candidate can.</summary>
    private bool IsEntered(int index, int candidate, ReadOnlySpan<int> found)
    {
        for (var nearer = 0; nearer < candidate; nearer++)
        {
            if (IsWithinCircle(found[nearer], index, found[candidate]))
            {
                return true;
            }
        }

        return false;
    }

    private bool IsOnTheWay(int trunk, int from, int to, double square) => Betweenness.IsOnTheWay(x, y, Sections.AsSpan(), trunk, from, to, square);

    private bool IsWithinCircle(int trunk, int from, int to) => Betweenness.IsWithinCircle(x, y, trunk, from, to);
}
