namespace GroveSpec.Craft.Moving;

/// <summary>
/// Ways to the front and to the back after which thickness no longer goes against the order of depth that the view means. No
/// single trunk may be able to mend that, and half of a trade mends nothing, so it is looked for by itself: two that follow each
/// other in depth pass each other, what is shortest in all followed first (Dijkstra 1959), until the order is right.
/// </summary>
/// <param name="stand">The stand, all trunks where they are at first.</param>
/// <param name="movables">The trunks that may be shifted.</param>
internal sealed class DepthShifts(LooseStand stand, IReadOnlyList<Movable> movables)
{
    private const int MostFound = 6;
    private const int MostLookedAt = 1500;

    /// <summary>How far apart in depth two come to stand that pass each other, in millimetres: as little as a hand can do.</summary>
    private const double Apart = 1;

    private static readonly double[] Shares = [0, 0.25, 0.5, 0.75, 1];

    private readonly double[] first = [.. Enumerable.Range(0, stand.Count).Select(stand.DepthFrom)];
    private readonly int[] movableOf = [.. Enumerable.Range(0, stand.Count).Select(trunk => PlaceOf(movables, trunk))];

    /// <summary>Looks for them.</summary>
    /// <returns>States of the stand with the order of depth mended, the shortest ways first; what else is amiss then is not looked at, and their weights are not known.</returns>
    public List<ShiftState> Find()
    {
        var found = new List<ShiftState>();
        var queue = new PriorityQueue<double[], (double Way, int Number)>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        queue.Enqueue(first, (0, 0));
        var number = 0;
        for (var looked = 0; looked < MostLookedAt && found.Count < MostFound && queue.TryDequeue(out var depths, out _); looked++)
        {
            if (!stand.IsReversedAt(depths))
            {
                found.Add(StateOf(depths));
                continue;
            }

            foreach (var next in Passed(depths))
            {
                if (seen.Add(string.Join(' ', next.Select(depth => Math.Round(depth)))))
                {
                    queue.Enqueue(next, (WayOf(next), ++number));
                }
            }
        }

        return found;
    }

    private static int PlaceOf(IReadOnlyList<Movable> movables, int trunk)
    {
        for (var place = 0; place < movables.Count; place++)
        {
            if (movables[place].Trunk == trunk && movables[place] is MovableFoot)
            {
                return place;
            }
        }

        return -1;
    }

    /// <summary>Depths after two that follow each other have passed: the nearer goes back, or the farther comes forward, or each goes half of the way.</summary>
    private IEnumerable<double[]> Passed(double[] depths)
    {
        int[] order = [.. Enumerable.Range(0, depths.Length).Where(stand.HasDiameter).OrderBy(trunk => depths[trunk]).ThenBy(trunk => trunk)];
        for (var place = 1; place < order.Length; place++)
        {
            int nearer = order[place - 1], farther = order[place];
            if (!stand.IsAgainstOrder(nearer, farther))
            {
                continue;
            }

            var gap = depths[farther] - depths[nearer] + Apart;
            foreach (var share in Shares)
            {
                double[] next = [.. depths];
                next[nearer] += share * gap;
                next[farther] -= (1 - share) * gap;
                if (MayStand(nearer, next[nearer]) && MayStand(farther, next[farther]))
                {
                    yield return next;
                }
            }
        }
    }

    private bool MayStand(int trunk, double depth)
    {
        var way = depth - first[trunk];
        return way == 0 || (movableOf[trunk] >= 0 && movables[movableOf[trunk]].MayGo(way * stand.Away.Rightward, way * stand.Away.Backward));
    }

    private double WayOf(double[] depths)
    {
        var way = 0.0;
        for (var trunk = 0; trunk < depths.Length; trunk++)
        {
            way += Math.Abs(depths[trunk] - first[trunk]);
        }

        return way;
    }

    private ShiftState StateOf(double[] depths)
    {
        var state = new ShiftState(movables.Count);
        for (var trunk = 0; trunk < depths.Length; trunk++)
        {
            var way = depths[trunk] - first[trunk];
            state = way == 0 ? state : state.With(movableOf[trunk], way * stand.Away.Rightward, way * stand.Away.Backward);
        }

        return state;
    }
}
