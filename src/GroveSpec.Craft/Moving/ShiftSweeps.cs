using GroveSpec.Craft.Stand;

namespace GroveSpec.Craft.Moving;

/// <summary>
/// Puts one trunk after another where it is best given all others, until none can be put better; then a trunk or two are put
/// elsewhere by chance, and all that again (iterated local search: Lourenço, Martin and Stützle 2003, "Iterated local search";
/// the scheme from memory).
/// </summary>
/// <param name="tries">The stand.</param>
/// <param name="random">Where chance comes from.</param>
/// <param name="price">What one finding is worth in millimetres of way: less finds shorter ways, more leaves less amiss.</param>
internal sealed class ShiftSweeps(ShiftTries tries, SeededRandom random, double price)
{
    private const double ShortestStride = 8;
    private const double StrideRange = 10;
    private const double LeastKick = 4;
    private const double KickRange = 16;
    private const double LeastStride = 0.4;
    private const double Halt = 0.02;

    /// <summary>How often a trunk is put elsewhere twice as far.</summary>
    private const double Doubled = 0.3;

    /// <summary>Where a trunk may go less far than this, in millimetres, strides and kicks are shorter in proportion.</summary>
    private const double AmpleReach = 40;

    /// <summary>How much worse is followed at most, as a share of what a finding is worth.</summary>
    private const double Rim = 0.5;

    /// <summary>How often a trunk that is shifted is put back instead of elsewhere.</summary>
    private const double Home = 0.4;

    /// <summary>How often a second trunk is put elsewhere too.</summary>
    private const double Second = 0.4;

    private readonly (int Right, int Back)[] spots = [.. StepsOut.Within(24)];

    /// <summary>Searches.</summary>
    /// <param name="from">Where to begin; its weight is known.</param>
    /// <param name="work">How much may be done.</param>
    /// <returns>The best state that was met, by what is left amiss and then by way.</returns>
    public ShiftState Find(ShiftState from, long work)
    {
        var until = tries.Work + work;
        var best = from;
        var state = Settle(from, until, -1);
        var home = state;
        best = state.IsBetterThan(best) ? state : best;
        while (tries.Work < until && best.Distance + best.Weight > 0)
        {
            tries.Rest();
            var elsewhere = Kicked(home, out var kicked);
            elsewhere = random.NextShare() < Second ? Kicked(elsewhere, out _) : elsewhere;
            state = Settle(elsewhere, until, kicked);
            best = state.IsBetterThan(best) ? state : best;

            // A little worse is followed too, so that the way out of a hollow may lead over its rim.
            home = Worth(state) <= Worth(best) + (price * Rim * random.NextShare()) ? state : best;
        }

        return best;
    }

    private double Worth(ShiftState state) => (state.Weight * price) + state.Distance;

    /// <summary>The share of the usual strides and kicks that a trunk can make use of.</summary>
    private double ShareOfUsual(int place) => Math.Min(1, tries.Movables[place].Farthest / AmpleReach);

    private ShiftState Kicked(ShiftState state, out int kicked)
    {
        var concerned = Concerned(state);
        kicked = concerned[random.NextBelow(concerned.Length)];
        var isShifted = state.WayOf(kicked) > 0;
        if (isShifted && random.NextShare() < Home)
        {
            return state.With(kicked, 0, 0);
        }

        var (sine, cosine) = Math.SinCos(2 * Math.PI * random.NextShare());
        var way = (LeastKick + (KickRange * random.NextShare())) * (random.NextShare() < Doubled ? 2 : 1) * ShareOfUsual(kicked);
        var (right, back) = (state.Rightward[kicked] + (way * sine), state.Backward[kicked] + (way * cosine));
        return tries.Movables[kicked].MayGo(right, back) ? state.With(kicked, right, back) : state.With(kicked, 0, 0);
    }

    /// <summary>The movables that what is amiss is about, and those that are shifted.</summary>
    private int[] Concerned(ShiftState state)
    {
        tries.Load(state);
        return [.. tries.Faults().SelectMany(tries.Concerned)
            .Concat(state.Shifted)
            .Distinct()
            .DefaultIfEmpty(random.NextBelow(state.Rightward.Length))];
    }

    private ShiftState Settle(ShiftState state, long until, int kicked)
    {
        tries.Load(state);
        (state = state.With(0, state.Rightward[0], state.Backward[0])).Weight = tries.Weigh();
        for (var isBetter = true; isBetter && tries.Work < until;)
        {
            isBetter = false;
            var order = Concerned(state);
            Shuffle(order);
            foreach (var place in order)
            {
                if (place != kicked && tries.Work < until)
                {
                    var before = Worth(state);
                    state = Placed(state, place);
                    isBetter |= Worth(state) < before - Halt;
                }
            }

            // The one that was put elsewhere comes last, when the others have come to terms with it.
            kicked = -1;
        }

        return state;
    }

    /// <summary>One trunk put where it is best: nearest first, until no place could be worth it.</summary>
    private ShiftState Placed(ShiftState state, int place)
    {
        tries.Put(place, 0, 0);
        var rest = Worth(state) - (state.Weight * price) - state.WayOf(place);
        var (right, back) = (state.Rightward[place], state.Backward[place]);
        var (best, weight) = (Worth(state) - rest, state.Weight);
        var (bestRight, bestBack) = (right, back);
        Look(0, 0);
        var turn = 2 * Math.PI * random.NextShare();

        // Wide, which leaves time for more beginnings: narrow free spots are met by other turns and strides, and by the finer looks after.
        var stride = (ShortestStride + (StrideRange * random.NextShare())) * ShareOfUsual(place);
        var (sine, cosine) = Math.SinCos(turn);
        foreach (var (stepRight, stepBack) in spots)
        {
            double alongRight = stepRight * stride, alongBack = stepBack * stride;
            if ((alongRight * alongRight) + (alongBack * alongBack) >= best * best)
            {
                break;
            }

            Look((alongRight * cosine) + (alongBack * sine), (alongBack * cosine) - (alongRight * sine));
        }

        // About the best spot, ever more finely.
        for (stride /= 2; stride > LeastStride; stride /= 2)
        {
            var (aboutRight, aboutBack) = (bestRight, bestBack);
            for (var direction = 0; direction < 8; direction++)
            {
                var (sideways, ahead) = Math.SinCos(turn + (Math.PI * direction / 4));
                Look(aboutRight + (stride * sideways), aboutBack + (stride * ahead));
            }
        }

        tries.Put(place, bestRight, bestBack);
        (state = state.With(place, bestRight, bestBack)).Weight = weight;
        return state;

        void Look(double toRight, double toBack)
        {
            var way = Math.Sqrt((toRight * toRight) + (toBack * toBack));
            var most = (best - way) / price;
            if (most <= 0 || !tries.Movables[place].MayGo(toRight, toBack))
            {
                return;
            }

            tries.Put(place, toRight, toBack);
            if (tries.Weigh(place, most) is var found && (found * price) + way < best - 1e-9)
            {
                (best, weight, bestRight, bestBack) = ((found * price) + way, found, toRight, toBack);
            }
        }
    }

    private void Shuffle(int[] order)
    {
        for (var last = order.Length - 1; last > 0; last--)
        {
            var other = random.NextBelow(last + 1);
            (order[last], order[other]) = (order[other], order[last]);
        }
    }
}
