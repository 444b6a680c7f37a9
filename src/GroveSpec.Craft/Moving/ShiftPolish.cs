using GroveSpec.Craft.Stand;

namespace GroveSpec.Craft.Moving;

/// <summary>Wears ways down: as much is mended, by less.</summary>
/// <param name="tries">The stand.</param>
/// <param name="random">Where chance comes from.</param>
internal sealed class ShiftPolish(ShiftTries tries, SeededRandom random)
{
    private const int Rounds = 2;
    private const int StepsOfAWay = 8;
    private const int Shakes = 300;
    private const int PartOfARepair = 8;

    private long until;
    private long repair;

    /// <summary>Shortens the ways of a state.</summary>
    /// <param name="state">The state.</param>
    /// <param name="work">How much may be done.</param>
    /// <returns>The shortest state that was found with no more amiss, its ways such as can be written; where none such is found, one with more amiss.</returns>
    public ShiftState Shorten(ShiftState state, long work)
    {
        until = tries.Work + work;
        repair = work / PartOfARepair;
        var best = Wear(Written(state));
        while (Again(best) is { } better)
        {
            best = better;
        }

        return best;
    }

    /// <summary>Puts one trunk after another back and mends anew what that leaves amiss, until something is better.</summary>
    private ShiftState? Again(ShiftState best)
    {
        foreach (var place in best.Shifted.OrderByDescending(best.WayOf))
        {
            if (tries.Work > until)
            {
                return null;
            }

            var without = best.With(place, 0, 0);
            tries.Load(without);
            without.Weight = tries.Weigh();
            var kept = new List<ShiftState> { best };
            new ShiftRepairs(tries).Run(without, repair, kept);
            foreach (var found in kept.Where(found => !ReferenceEquals(found, best) && found.Weight <= best.Weight).Take(2))
            {
                if (Wear(Written(found)) is var worn && worn.IsBetterThan(best))
                {
                    return worn;
                }
            }
        }

        return null;
    }

    /// <summary>Brings trunks nearer to where they were, and shakes them, while that shortens the ways.</summary>
    /// <param name="state">The state, its ways such as can be written; its weight is known.</param>
    /// <returns>The same or a shorter state with no more amiss.</returns>
    public ShiftState Wear(ShiftState state)
    {
        for (var round = 0; round < Rounds; round++)
        {
            var before = state.Distance;
            state = Shake(Nearer(state));
            if (state.Distance > before * 0.999)
            {
                break;
            }
        }

        return state;
    }

    /// <summary>Brings each trunk as near to where it was as the others allow.</summary>
    private ShiftState Nearer(ShiftState state)
    {
        tries.Load(state);
        foreach (var place in state.Shifted.OrderByDescending(state.WayOf).ToArray())
        {
            tries.Rest();
            var (stepOut, way) = (state.WayOf(place) / StepsOfAWay, state.WayOf(place));
            var best = (Right: state.Rightward[place], Back: state.Backward[place]);
            foreach (var (right, back) in StepsOut.Within(StepsOfAWay).Prepend((0, 0)))
            {
                var next = tries.Movables[place].Rounded(right * stepOut, back * stepOut);
                if (Length(next) < way && tries.Movables[place].MayGo(next.Rightward, next.Backward))
                {
                    tries.Put(place, next.Rightward, next.Backward);
                    if (tries.IsAtMost(place, state.Weight))
                    {
                        best = next;
                        break;
                    }
                }
            }

            tries.Put(place, best.Right, best.Back);
            (state = state.With(place, best.Right, best.Back)).Weight = tries.Weigh();
        }

        return state;
    }

    /// <summary>Shifts one or two trunks a little, over and over, and keeps what is shorter.</summary>
    private ShiftState Shake(ShiftState state)
    {
        var shifted = state.Shifted.ToArray();
        if (shifted.Length == 0)
        {
            return state;
        }

        tries.Load(state);
        var size = Math.Max(0.5, state.Distance / 4);
        var distance = state.Distance;
        for (var shake = 0; shake < Shakes; shake++)
        {
            int one = shifted[random.NextBelow(shifted.Length)], other = shifted[random.NextBelow(shifted.Length)];
            var next = Shaken(state, one, size);
            next = other == one ? next : Shaken(next, other, size);
            var nextDistance = next.Distance;
            if (nextDistance >= distance - 1e-9 || !MayStand(next, one) || !MayStand(next, other))
            {
                continue;
            }

            tries.Put(one, next.Rightward[one], next.Backward[one]);
            tries.Put(other, next.Rightward[other], next.Backward[other]);
            if (tries.IsAtMost(one, state.Weight))
            {
                next.Weight = tries.Weigh();
                (state, distance) = (next, nextDistance);
            }
            else
            {
                tries.Put(one, state.Rightward[one], state.Backward[one]);
                tries.Put(other, state.Rightward[other], state.Backward[other]);
                size = Math.Max(0.1, size * 0.985);
            }
        }

        return state;
    }

    private ShiftState Shaken(ShiftState state, int place, double size)
    {
        // Half of the tries go straight back toward where the trunk was, which is where something can be won.
        double right = state.Rightward[place], back = state.Backward[place];
        var shrink = random.NextShare() < 0.5 ? 1 - (random.NextShare() * random.NextShare()) : 1;
        var way = tries.Movables[place].Rounded((right * shrink) + (random.NextNormal() * size), (back * shrink) + (random.NextNormal() * size));
        return state.With(place, way.Rightward, way.Backward);
    }

    private bool MayStand(ShiftState state, int place) => tries.Movables[place].MayGo(state.Rightward[place], state.Backward[place]);

    /// <summary>The same state with ways that can be written; where that leaves more amiss, the nearest such ways that do not.</summary>
    /// <param name="state">The state.</param>
    /// <returns>The state as written; with more amiss where no such ways were found.</returns>
    public ShiftState Written(ShiftState state)
    {
        var written = state;
        foreach (var place in state.Shifted)
        {
            var way = WithinReach(place, state.Rightward[place], state.Backward[place]);
            written = written.With(place, way.Rightward, way.Backward);
        }

        tries.Load(written);
        written.Weight = tries.Weigh();
        foreach (var place in state.Shifted)
        {
            if (written.Weight <= state.Weight)
            {
                break;
            }

            written = Beside(written, place);
        }

        return written;
    }

    /// <summary>The nearest way that can be written and gone; rounding may have led a hair too far, and then it is a little less of it.</summary>
    private (double Rightward, double Backward) WithinReach(int place, double right, double back)
    {
        const int Parts = 50;
        var movable = tries.Movables[place];
        for (var part = Parts; part > 0; part--)
        {
            var way = movable.Rounded(right * part / Parts, back * part / Parts);
            if (movable.MayGo(way.Rightward, way.Backward))
            {
                return way;
            }
        }

        return (0, 0);
    }

    private ShiftState Beside(ShiftState state, int place)
    {
        const int Rings = 8;
        var (right, back) = (state.Rightward[place], state.Backward[place]);
        var best = state;

        // Feet are written to a tenth of a millimetre, tips to half a degree.
        foreach (var stride in (ReadOnlySpan<double>)[0.1, 1])
        {
            foreach (var (stepsRight, stepsBack) in StepsOut.Within(Rings))
            {
                var way = tries.Movables[place].Rounded(right + (stepsRight * stride), back + (stepsBack * stride));
                if (best.Weight <= 0 || !tries.Movables[place].MayGo(way.Rightward, way.Backward))
                {
                    continue;
                }

                tries.Put(place, way.Rightward, way.Backward);
                if (tries.Weigh(place, Math.BitDecrement(best.Weight)) is var weight && weight < best.Weight)
                {
                    (best = state.With(place, way.Rightward, way.Backward)).Weight = weight;
                }
            }
        }

        tries.Put(place, best.Rightward[place], best.Backward[place]);
        return best;
    }

    private static double Length((double Right, double Back) way) => Math.Sqrt((way.Right * way.Right) + (way.Back * way.Back));
}
