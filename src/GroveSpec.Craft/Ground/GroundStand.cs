using System.Numerics;
using GroveSpec.Craft.Composition;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Ground;

/// <summary>
/// Trunks that stand, with one more among them that is set down at one place after another: who is then a neighbour of whom.
/// </summary>
/// <remarks>
/// What <see cref="StandingTrunks"/> works out for a planting is kept in tables for the trunks that stand, and only what the
/// newcomer changes is worked out for each place: it may part two neighbours, stand within the circle over their gap, be a
/// neighbour itself, and change the median gap and with it how far neighbours reach. One stand serves one thread.
/// </remarks>
public sealed partial class GroundStand
{
    /// <summary>How many trunks may stand, the newcomer included.</summary>
    public const int MostTrunks = 60;

    private const int MostNeighbours = 24;

    private readonly double[] x;
    private readonly double[] y;
    private readonly TrunkSection[] sections;
    private readonly double[] squares;
    private readonly double[] nearest;
    private readonly int[] byNearest;
    private readonly double[] nearestNow;
    private readonly double[] shorter;
    private readonly (int First, int Second, double Square, bool IsOpen)[] pairs;
    private readonly bool[] isAlive;
    private readonly bool[] isOpenNow;
    private readonly bool[] isAliveWithout;
    private readonly double fullFrom;
    private readonly bool isHeap;
    private readonly int[] sorted;
    private readonly int[] own;
    private readonly bool[] isOwnOpen;
    private readonly int[] counts;
    private readonly int[] lists;
    private readonly bool[] isListedOpen;
    private double reachSquare;
    private int ownCount;
    private int alreadySorted;
    private ulong changed = ulong.MaxValue;
    private ulong ownOpen;
    private ulong lastOwn;
    private ulong lastOwnOpen;

    /// <summary>Lays out the tables.</summary>
    /// <param name="others">The trunks that stand already, at most one less than <see cref="MostTrunks"/>.</param>
    /// <param name="newcomer">The place that the newcomer takes among them, from 0 to their number: those from there on come behind it.</param>
    /// <param name="diameter">Its diameter, not below zero.</param>
    public GroundStand(StandingTrunks others, int newcomer, Length diameter)
    {
        ArgumentNullException.ThrowIfNull(others);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(others.Count, MostTrunks);
        Count = others.Count + 1;
        Newcomer = newcomer;
        (x, y, squares, nearest) = (new double[EvenCount], new double[EvenCount], new double[EvenCount], new double[EvenCount]);
        (nearestNow, shorter) = (new double[EvenCount], new double[Count]);
        (sections, sorted, own, isOwnOpen, counts) = (new TrunkSection[Count], new int[Count], new int[Count], new bool[Count], new int[Count]);
        (lists, isListedOpen) = (new int[Count * Count], new bool[Count * Count]);
        for (var index = 0; index < others.Count; index++)
        {
            Put(Behind(index), others.Sections[index]);
        }

        Put(newcomer, new TrunkSection(PlanPoint.Origin, diameter));
        if (EvenCount > Count)
        {
            (x[Count], y[Count], nearest[Count]) = (double.NaN, double.NaN, double.NaN);
        }

        for (var index = 0; index < Count; index++)
        {
            nearest[index] = double.PositiveInfinity;
            for (var other = 0; other < Count; other++)
            {
                nearest[index] = other != index && other != newcomer && index != newcomer ? Math.Min(nearest[index], Square(index, other)) : nearest[index];
            }
        }

        byNearest = [.. Enumerable.Range(0, Count).Where(index => index != newcomer).OrderBy(index => nearest[index])];
        pairs = [.. Pairs()];
        (isAlive, isOpenNow) = (new bool[pairs.Length], new bool[pairs.Length]);
        var neighbours = others.NeighbourPairs.Select(pair => (Behind(pair.First), Behind(pair.Second))).ToHashSet();
        isAliveWithout = [.. pairs.Select(pair => neighbours.Contains((pair.First, pair.Second)))];
        (fullFrom, isHeap) = Heaps();
        MayHeap = Count > MostNeighbours + 1 && (isHeap || fullFrom <= MostReachSquare);
    }

    /// <summary>How many trunks stand, the newcomer included.</summary>
    public int Count { get; }

    /// <summary>The newcomer's place among them.</summary>
    public int Newcomer { get; }

    /// <summary>Whether so many may stand in a heap that <see cref="Set"/> does not hold at some places.</summary>
    public bool MayHeap { get; }

    /// <summary>The neighbours of the newcomer where it stands now, as a set.</summary>
    public ulong OwnNeighbours { get; private set; }

    /// <summary>How many trunks stand whose neighbours reach any distance.</summary>
    internal bool ReachesAnyDistance => Count < StandingTrunks.ReachMattersFrom;

    /// <summary>The cuts at the soil.</summary>
    internal ReadOnlySpan<TrunkSection> Sections => sections;

    /// <summary>The places to the right in nanometres, exact.</summary>
    internal ReadOnlySpan<double> X => x.AsSpan(0, Count);

    /// <summary>The places to the back in nanometres, exact.</summary>
    internal ReadOnlySpan<double> Y => y.AsSpan(0, Count);

    /// <summary>The square of each trunk's distance from the newcomer in square nanometres, rounded to 53 bits.</summary>
    internal ReadOnlySpan<double> Squares => squares.AsSpan(0, Count);

    /// <summary>The least of <see cref="Squares"/>; infinite where it stands alone.</summary>
    internal double NearestSquare { get; private set; }

    /// <summary>The neighbours of the newcomer, the nearest first.</summary>
    internal ReadOnlySpan<int> Own => own.AsSpan(0, ownCount);

    /// <summary>Two trunks of the stand that are neighbours if they are near enough and the newcomer does not part them.</summary>
    internal ReadOnlySpan<(int First, int Second, double Square, bool IsOpen)> OldPairs => pairs;

    /// <summary>Whether those are neighbours while the newcomer is not there.</summary>
    internal ReadOnlySpan<bool> IsAliveWithout => isAliveWithout;

    /// <summary>Whether those are neighbours, after <see cref="Connect"/>.</summary>
    internal ReadOnlySpan<bool> IsAlive => isAlive;

    /// <summary>Sets the newcomer down and finds its own neighbours.</summary>
    /// <param name="place">The place.</param>
    /// <returns>False where so many trunks stand in a heap that only some of them count as neighbours, which these tables do not hold.</returns>
    public bool Set(PlanPoint place)
    {
        sections[Newcomer] = sections[Newcomer] with { Centre = place };
        (x[Newcomer], y[Newcomer]) = (place.X.Nanometres, place.Y.Nanometres);
        PlanPairs.Squares(x, y, x[Newcomer], y[Newcomer], squares);
        squares[Newcomer] = double.PositiveInfinity;
        NearestSquare = PlanPairs.Nearer(nearest, squares, nearestNow);
        reachSquare = ReachesAnyDistance ? double.PositiveInfinity : 6.25 * MedianSquare();

        // As StandingTrunks does: a hair more is searched, and compared again.
        var searchSquare = reachSquare * (1 + 1e-9);
        alreadySorted = 0;
        for (var near = PlanPairs.AtMost(squares, searchSquare) & ~(1UL << Newcomer); near != 0; near &= near - 1)
        {
            Sort(BitOperations.TrailingZeroCount(near));
        }

        if (Count > MostNeighbours + 1 && (isHeap || fullFrom <= searchSquare || alreadySorted > MostNeighbours || IsInHeap()))
        {
            return false;
        }

        FindOwn();
        return true;
    }

    /// <summary>Finds which of the others are neighbours now; to be asked after <see cref="Set"/>.</summary>
    public void Connect()
    {
        var isAnew = lastOwn != OwnNeighbours || lastOwnOpen != ownOpen;
        for (var index = 0; index < pairs.Length; index++)
        {
            var (first, second, square, isOpen) = pairs[index];
            var isNeighbour = StandingTrunks.IsWithin(square, reachSquare)
                && !(squares[first] < square && IsOnTheWay(Newcomer, first, second, square));

            // Whoever stands within the circle over a gap is nearer to both its ends than they are to each other.
            var near = square * (1 + 1e-9);
            var isOpenGap = isNeighbour && isOpen && !(squares[first] < near && squares[second] < near && IsWithinCircle(Newcomer, first, second));
            if (isNeighbour != isAlive[index] || isOpenGap != isOpenNow[index])
            {
                (isAlive[index], isOpenNow[index]) = (isNeighbour, isOpenGap);
                changed |= (1UL << first) | (1UL << second);
                isAnew = true;
            }
        }

        changed |= OwnNeighbours | lastOwn | (1UL << Newcomer);
        (lastOwn, lastOwnOpen) = (OwnNeighbours, ownOpen);
        if (isAnew)
        {
            LinkAll();
        }
    }

    /// <summary>The trunks whose neighbours or gaps may have changed since this was asked last, as a set; after <see cref="Connect"/>, and for one who asks alone.</summary>
    internal ulong TakeChanged()
    {
        var taken = changed;
        changed = 0;
        return taken;
    }

    /// <summary>The neighbours of a trunk, in no particular order; after <see cref="Connect"/>.</summary>
    internal ReadOnlySpan<int> NeighboursOf(int trunk) => lists.AsSpan(trunk * Count, counts[trunk]);

    /// <summary>For each of <see cref="NeighboursOf"/>, whether the gap to it is open.</summary>
    internal ReadOnlySpan<bool> OpenGapsOf(int trunk) => isListedOpen.AsSpan(trunk * Count, counts[trunk]);

    /// <summary>How even the gaps between neighbours are: (Σx)² / (m·Σx²) of m gaps, from centre to centre; after <see cref="Connect"/>.</summary>
    /// <returns>From above 0 to 1; 1 without a gap.</returns>
    public double GapEvenness()
    {
        double sum = 0, all = 0;
        var number = 0;
        for (var trunk = 0; trunk < Count; trunk++)
        {
            foreach (var other in NeighboursOf(trunk))
            {
                if (other > trunk)
                {
                    var square = Square(trunk, other);
                    sum += Math.Sqrt(square);
                    all += square;
                    number++;
                }
            }
        }

        return all > 0 ? sum * sum / (number * all) : 1;
    }

    /// <summary>The square of the distance of two trunks in square nanometres, rounded to 53 bits.</summary>
    internal double Square(int first, int second)
    {
        double dx = x[first] - x[second], dy = y[first] - y[second];
        return (dx * dx) + (dy * dy);
    }

    /// <summary>With the newcomer the median is at most that of the others and one gap without end; among six others any distance is reached without it.</summary>
    private double MostReachSquare => Count <= StandingTrunks.ReachMattersFrom ? double.PositiveInfinity : 6.25 * nearest[byNearest[(Count - 1) / 2]] * (1 + 1e-9);

    /// <summary>As many places as pairs of trunks side by side take.</summary>
    private int EvenCount => Count + (Count & 1);

    private int Behind(int index) => index < Newcomer ? index : index + 1;

    private void Put(int index, TrunkSection section)
    {
        sections[index] = section;
        (x[index], y[index]) = (section.Centre.X.Nanometres, section.Centre.Y.Nanometres);
    }

    /// <summary>
    /// The lower middle of the gaps from each trunk to its nearest. Those that the newcomer shortens are put in order with its own, and met with the rest, which are in order
    /// already.
    /// </summary>
    private double MedianSquare()
    {
        var count = 0;
        var shortened = PlanPairs.Shorter(nearestNow, nearest);
        Insert(NearestSquare, count++);
        for (var rest = shortened; rest != 0; rest &= rest - 1)
        {
            Insert(nearestNow[BitOperations.TrailingZeroCount(rest)], count++);
        }

        var (next, old) = (0, 0);
        for (var left = (Count - 1) / 2; ; left--)
        {
            while (old < byNearest.Length && (shortened >> byNearest[old] & 1) != 0)
            {
                old++;
            }

            var isNew = next < count && (old == byNearest.Length || shorter[next] <= nearest[byNearest[old]]);
            var least = isNew ? shorter[next++] : nearest[byNearest[old++]];
            if (left == 0)
            {
                return least;
            }
        }
    }

    private void Insert(double gap, int count)
    {
        var slot = count;
        while (slot > 0 && shorter[slot - 1] > gap)
        {
            shorter[slot] = shorter[slot - 1];
            slot--;
        }

        shorter[slot] = gap;
    }

    private void Sort(int index)
    {
        var slot = alreadySorted++;
        while (slot > 0 && squares[sorted[slot - 1]] > squares[index])
        {
            sorted[slot] = sorted[slot - 1];
            slot--;
        }

        sorted[slot] = index;
    }

    private void FindOwn()
    {
        (ownCount, OwnNeighbours, ownOpen) = (0, 0, 0);
        for (var candidate = 0; candidate < alreadySorted; candidate++)
        {
            var index = sorted[candidate];
            if (!StandingTrunks.IsWithin(squares[index], reachSquare) || IsParted(candidate))
            {
                continue;
            }

            own[ownCount] = index;
            isOwnOpen[ownCount] = !IsEntered(candidate);
            ownOpen |= isOwnOpen[ownCount] ? 1UL << index : 0;
            ownCount++;
            OwnNeighbours |= 1UL << index;
        }
    }

    private bool IsParted(int candidate)
    {
        var index = sorted[candidate];
        for (var nearer = 0; nearer < candidate; nearer++)
        {
            if (squares[sorted[nearer]] < squares[index] && IsOnTheWay(sorted[nearer], Newcomer, index, squares[index]))
            {
                return true;
            }
        }

        return false;
    }

    private bool IsEntered(int candidate)
    {
        for (var nearer = 0; nearer < candidate; nearer++)
        {
            if (IsWithinCircle(sorted[nearer], Newcomer, sorted[candidate]))
            {
                return true;
            }
        }

        return false;
    }

    private void LinkAll()
    {
        Array.Clear(counts);
        for (var index = 0; index < pairs.Length; index++)
        {
            if (isAlive[index])
            {
                Link(pairs[index].First, pairs[index].Second, isOpenNow[index]);
            }
        }

        for (var index = 0; index < ownCount; index++)
        {
            Link(Newcomer, own[index], isOwnOpen[index]);
        }
    }

    private void Link(int one, int other, bool isOpen)
    {
        lists[(one * Count) + counts[one]] = other;
        isListedOpen[(one * Count) + counts[one]++] = isOpen;
        lists[(other * Count) + counts[other]] = one;
        isListedOpen[(other * Count) + counts[other]++] = isOpen;
    }

    /// <summary>All two of the others that no third of them parts, as far apart as neighbours can ever be.</summary>
    private IEnumerable<(int First, int Second, double Square, bool IsOpen)> Pairs()
    {
        var most = MostReachSquare;
        for (var first = 0; first < Count; first++)
        {
            for (var second = first + 1; second < Count; second++)
            {
                var square = Square(first, second);
                if (first != Newcomer && second != Newcomer && square <= most && !AreParted(first, second, square))
                {
                    yield return (first, second, square, !byNearest.Any(third => third != first && third != second && IsWithinCircle(third, first, second)));
                }
            }
        }
    }

    private bool AreParted(int first, int second, double square)
    {
        foreach (var third in byNearest)
        {
            if (third != first && third != second && Square(first, third) < square && IsOnTheWay(third, first, second, square))
            {
                return true;
            }
        }

        return false;
    }

    private bool IsOnTheWay(int trunk, int from, int to, double square) => Betweenness.IsOnTheWay(x, y, sections, trunk, from, to, square);

    private bool IsWithinCircle(int trunk, int from, int to) => Betweenness.IsWithinCircle(x, y, trunk, from, to);
}
