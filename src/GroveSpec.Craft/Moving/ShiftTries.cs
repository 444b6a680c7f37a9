namespace GroveSpec.Craft.Moving;

/// <summary>Puts trunks here and there and asks what is amiss then.</summary>
/// <param name="stand">The stand.</param>
/// <param name="movables">The trunks that may be shifted.</param>
/// <param name="cancellation">Ends the search.</param>
internal sealed class ShiftTries(LooseStand stand, IReadOnlyList<Movable> movables, CancellationToken cancellation)
{
    private const int Remembered = 8;
    private const int CostOfAFault = 5;
    private const int CostOfLooking = 40;
    private const double FirstStride = 0.2;
    private const int Halvings = 6;

    private readonly long costOfAll = CostOfLooking + (stand.Count * stand.Count);
    private readonly List<StandFault> faults = [];
    private readonly StandFault[] obstacles = new StandFault[movables.Count * Remembered];
    private readonly int[] remembered = new int[movables.Count];

    /// <summary>The trunks that may be shifted.</summary>
    public IReadOnlyList<Movable> Movables => movables;

    /// <summary>How much was done so far, in pairs of trunks that were looked at: a measure of time that is the same on every machine.</summary>
    public long Work { get; private set; }

    /// <summary>Ends the search when that is asked.</summary>
    public void Rest() => cancellation.ThrowIfCancellationRequested();

    /// <summary>Puts all trunks where a state has them.</summary>
    /// <param name="state">The state.</param>
    public void Load(ShiftState state)
    {
        for (var place = 0; place < movables.Count; place++)
        {
            Put(place, state.Rightward[place], state.Backward[place]);
        }
    }

    /// <summary>Puts one trunk somewhere.</summary>
    /// <param name="place">Which movable.</param>
    /// <param name="rightward">Its way to the right.</param>
    /// <param name="backward">And to the back.</param>
    public void Put(int place, double rightward, double backward) => movables[place].Put(stand, rightward, backward);

    /// <summary>The weight of what is amiss as the trunks are.</summary>
    /// <returns>The sum.</returns>
    public double Weigh()
    {
        Work += costOfAll;
        return stand.Weigh(double.PositiveInfinity, out _);
    }

    /// <summary>All that is amiss as the trunks are; the list is used again by the next call.</summary>
    /// <returns>What is amiss.</returns>
    public IReadOnlyList<StandFault> Faults()
    {
        Work += costOfAll;
        stand.Find(faults);
        return faults;
    }

    /// <summary>The movables of which one has to be shifted to mend a fault.</summary>
    /// <param name="fault">The fault.</param>
    /// <returns>Their places.</returns>
    public IEnumerable<int> Concerned(StandFault fault)
    {
        var concerned = stand.Concerned(fault);
        for (var place = 0; place < movables.Count; place++)
        {
            if ((concerned >> movables[place].Trunk & 1) != 0)
            {
                yield return place;
            }
        }
    }

    /// <summary>Whether no more than a weight is amiss as the trunks are. What stood in the way of a trunk before is looked at first.</summary>
    /// <param name="place">The movable that was shifted.</param>
    /// <param name="most">The weight.</param>
    /// <returns>True when no more is.</returns>
    public bool IsAtMost(int place, double most) => Weigh(place, most) <= most;

    /// <summary>The weight of what is amiss as the trunks are, as far as it is of interest. What stood in the way of a trunk before is looked at first.</summary>
    /// <param name="place">The movable that was shifted.</param>
    /// <param name="most">Above this the exact weight is of no interest.</param>
    /// <returns>The weight, or any number above <paramref name="most"/>.</returns>
    public double Weigh(int place, double most)
    {
        var (known, weight) = (0, 0.0);
        for (; known < remembered[place] && weight <= most; known++)
        {
            ref readonly var obstacle = ref obstacles[(place * Remembered) + known];
            Work += CostOfAFault;
            weight += stand.Stands(obstacle) ? stand.WeightOf(obstacle) : 0;
        }

        if (weight > most)
        {
            Remember(place, obstacles[(place * Remembered) + known - 1]);
            return weight;
        }

        Work += costOfAll;
        weight = stand.Weigh(most, out var last);
        if (weight > most)
        {
            Remember(place, last);
        }

        return weight;
    }

    /// <summary>What stood in the way last is looked at first the next time.</summary>
    private void Remember(int place, in StandFault obstacle)
    {
        var own = obstacles.AsSpan(place * Remembered, Remembered);
        if (remembered[place] > 0 && own[0].Kind == obstacle.Kind && own[0].Trunks == obstacle.Trunks)
        {
            return;
        }

        var was = 0;
        while (was < remembered[place] && (own[was].Kind != obstacle.Kind || own[was].Trunks != obstacle.Trunks))
        {
            was++;
        }

        if (was == remembered[place])
        {
            was = Math.Min(was, Remembered - 1);
            remembered[place] = was + 1;
        }

        var last = obstacle;
        own[..was].CopyTo(own[1..]);
        own[0] = last;
    }

    /// <summary>How far a trunk has to go in a direction, from where it is, before a fault is mended.</summary>
    /// <param name="fault">The fault, which holds now.</param>
    /// <param name="place">Which movable.</param>
    /// <param name="from">Its way now.</param>
    /// <param name="toward">The direction, of length 1.</param>
    /// <returns>The way on from there; null where it may not go so far.</returns>
    public double? WayOut(in StandFault fault, int place, (double Right, double Back) from, (double Right, double Back) toward)
    {
        var (least, most) = (0.0, FirstStride);
        while (Holds(fault, place, from, toward, most))
        {
            (least, most) = (most, most * 2);
            if (!movables[place].MayGo(from.Right + (toward.Right * least), from.Back + (toward.Back * least)))
            {
                return null;
            }
        }

        for (var halving = 0; halving < Halvings; halving++)
        {
            var middle = (least + most) / 2;
            (least, most) = Holds(fault, place, from, toward, middle) ? (middle, most) : (least, middle);
        }

        // A hair more, for what lies at a limit is not yet past it.
        most += 0.002;
        return movables[place].MayGo(from.Right + (toward.Right * most), from.Back + (toward.Back * most)) ? most : null;
    }

    private bool Holds(in StandFault fault, int place, (double Right, double Back) from, (double Right, double Back) toward, double way)
    {
        Put(place, from.Right + (toward.Right * way), from.Back + (toward.Back * way));
        Work += CostOfAFault;
        return stand.Holds(fault);
    }
}
