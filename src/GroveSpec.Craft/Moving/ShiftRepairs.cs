namespace GroveSpec.Craft.Moving;

/// <summary>Mends what is amiss one by one, following first what costs least.</summary>
/// <param name="tries">The stand.</param>
internal sealed class ShiftRepairs(ShiftTries tries)
{
    /// <summary>How many states are kept for wearing down.</summary>
    public const int MostKept = 8;

    private const int Directions = 12;
    private const int MostFaults = 6;
    private const double Foresight = 0.6;

    /// <summary>Searches from a state.</summary>
    /// <param name="from">Where to begin; its weight is known.</param>
    /// <param name="work">How much may be done.</param>
    /// <returns>The best states found, the best first; the one to begin with is among them where nothing is better.</returns>
    public List<ShiftState> Find(ShiftState from, long work)
    {
        var kept = new List<ShiftState>();
        Keep(kept, from);
        Run(from, work, kept);
        return kept;
    }

    /// <summary>Searches from a state and adds what is good to those that were kept.</summary>
    /// <param name="from">Where to begin.</param>
    /// <param name="work">How much may be done.</param>
    /// <param name="kept">The best known, the best first.</param>
    public void Run(ShiftState from, long work, List<ShiftState> kept)
    {
        var queue = new PriorityQueue<ShiftState, (double Key, int Number)>();
        var seen = new HashSet<int> { Hash(from) };
        queue.Enqueue(from, (0, 0));
        var number = 0;
        var price = 0.0;
        var until = tries.Work + work;
        while (tries.Work < until && queue.TryDequeue(out var state, out _))
        {
            tries.Rest();
            if (IsTooFar(state, kept))
            {
                continue;
            }

            var ways = Dearest(state, out var mean);
            price = ReferenceEquals(state, from) ? mean : price;
            foreach (var (place, right, back) in ways)
            {
                var next = state.With(place, right, back);
                if (!seen.Add(Hash(next)) || IsTooFar(next, kept))
                {
                    continue;
                }

                tries.Put(place, right, back);
                next.Weight = tries.Weigh();
                Keep(kept, next);
                if (next.Weight > 0)
                {
                    queue.Enqueue(next, (next.Distance + (Foresight * price * next.Weight), ++number));
                }

                tries.Put(place, state.Rightward[place], state.Backward[place]);
            }
        }
    }

    private static bool IsTooFar(ShiftState state, List<ShiftState> kept) => kept.Count > 0 && kept[0].Weight == 0 && state.Distance >= kept[0].Distance * 1.3;

    /// <summary>Adds a state to the best known, if it is one of them.</summary>
    /// <param name="kept">The best known, the best first.</param>
    /// <param name="state">The state.</param>
    public static void Keep(List<ShiftState> kept, ShiftState state)
    {
        var place = kept.Count;
        while (place > 0 && state.IsBetterThan(kept[place - 1]))
        {
            place--;
        }

        if (place < MostKept)
        {
            kept.Insert(place, state);
            if (kept.Count > MostKept)
            {
                kept.RemoveAt(MostKept);
            }
        }
    }

    /// <summary>The ways to mend what is dearest to mend, and what mending costs on the mean.</summary>
    private List<(int Place, double Right, double Back)> Dearest(ShiftState state, out double mean)
    {
        tries.Load(state);
        StandFault[] faults = [.. tries.Faults().Take(MostFaults)];
        var dearest = new List<(int Place, double Right, double Back)>();
        var (most, sum, number) = (double.NegativeInfinity, 0.0, 0);
        foreach (var fault in faults)
        {
            var ways = Ways(state, fault, out var cost);
            if (ways.Count > 0)
            {
                sum += cost;
                number++;
                (dearest, most) = cost > most ? (ways, cost) : (dearest, most);
            }
        }

        mean = number > 0 ? Math.Max(sum / number, 0.1) : 0;
        return dearest;
    }

    /// <summary>The ways that mend a fault: of each trunk those directions in which it is mended sooner than in those beside.</summary>
    private List<(int Place, double Right, double Back)> Ways(ShiftState state, in StandFault fault, out double least)
    {
        var ways = new List<(int, double, double)>();
        least = double.PositiveInfinity;
        Span<double> ahead = stackalloc double[Directions];
        foreach (var place in tries.Concerned(fault))
        {
            var from = (state.Rightward[place], state.Backward[place]);
            var was = Length(from.Item1, from.Item2);
            for (var direction = 0; direction < Directions; direction++)
            {
                ahead[direction] = tries.WayOut(fault, place, from, Toward(direction)) ?? double.PositiveInfinity;
            }

            for (var direction = 0; direction < Directions; direction++)
            {
                double before = ahead[(direction + Directions - 1) % Directions], after = ahead[(direction + 1) % Directions];
                if (double.IsFinite(ahead[direction]) && ahead[direction] < before && ahead[direction] <= after)
                {
                    var (right, back) = Finest(fault, place, from, direction, ahead[direction]);
                    ways.Add((place, right, back));
                    least = Math.Min(least, Length(right, back) - was);
                }
            }

            tries.Put(place, from.Item1, from.Item2);
        }

        return ways;
    }

    /// <summary>The best of a direction and those a quarter and half of the way to the ones beside it.</summary>
    private (double Right, double Back) Finest(in StandFault fault, int place, (double Right, double Back) from, int direction, double known)
    {
        var (best, way) = (Toward(direction), known);
        foreach (var part in (ReadOnlySpan<double>)[-0.5, -0.25, 0.25, 0.5])
        {
            var toward = Toward(direction + part);
            if (tries.WayOut(fault, place, from, toward) is { } found && found < way)
            {
                (best, way) = (toward, found);
            }
        }

        return (from.Right + (best.Right * way), from.Back + (best.Back * way));
    }

    private static (double Right, double Back) Toward(double direction)
    {
        var (sine, cosine) = Math.SinCos(2 * Math.PI * direction / Directions);
        return (sine, cosine);
    }

    private static double Length(double right, double back) => Math.Sqrt((right * right) + (back * back));

    private static int Hash(ShiftState state)
    {
        var hash = 17;
        for (var place = 0; place < state.Rightward.Length; place++)
        {
            hash = unchecked((hash * 31) + (int)Math.Round(state.Rightward[place] * 8));
            hash = unchecked((hash * 31) + (int)Math.Round(state.Backward[place] * 8));
        }

        return hash;
    }
}
