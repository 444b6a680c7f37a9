using GroveSpec.Craft.Stand;

namespace GroveSpec.Craft.Moving;

/// <summary>
/// Leaves trunks where they were that the others can do without by hardly longer ways: who has to dig up one trunk less gladly
/// moves another a little farther.
/// </summary>
/// <param name="tries">The stand.</param>
/// <param name="polish">Wears down what is mended.</param>
/// <param name="random">Where chance comes from.</param>
internal sealed class FewerShifts(ShiftTries tries, ShiftPolish polish, SeededRandom random)
{
    /// <summary>How much longer all ways together may become for one trunk that is left where it was, in millimetres.</summary>
    private const double MostForOne = 1;

    /// <summary>And for all that are, as a share of the shortest.</summary>
    private const double MostShare = 0.05;

    /// <summary>How much longer ways are followed on, since they are worn down after.</summary>
    private const double Slack = 1.1;

    /// <summary>No hand moves a trunk by less than this, in millimetres, so that it is tried more often to do without such a way.</summary>
    private const double Tiny = 1;

    private const int AttemptsForTiny = 3;
    private const double Price = 10;
    private const int Steps = 600;
    private const double FirstSize = 4;
    private const double LastSize = 0.1;
    private const double FirstHeat = 2;
    private const double LastHeat = 0.02;

    /// <summary>Leaves alone one trunk after another, those with the shortest ways first.</summary>
    /// <param name="shortest">The shortest shifts.</param>
    /// <param name="work">How much may be done.</param>
    /// <returns>Shifts of fewer trunks with no more amiss; the shortest where none can be left alone.</returns>
    public ShiftState Find(ShiftState shortest, long work)
    {
        var until = tries.Work + work;
        var best = shortest;
        foreach (var place in shortest.Shifted.OrderBy(shortest.WayOf).ToArray())
        {
            if (tries.Work < until && best.Shifted.Take(2).Count() > 1 && best.WayOf(place) > 0)
            {
                tries.Rest();
                best = Without(best, place, Math.Min(best.Distance + MostForOne, shortest.Distance * (1 + MostShare))) ?? best;
            }
        }

        return best;
    }

    private ShiftState? Without(ShiftState best, int place, double most)
    {
        var without = best.With(place, 0, 0);
        tries.Load(without);
        without.Weight = tries.Weigh();
        int[] others = [.. without.Shifted];
        for (var attempt = best.WayOf(place) < Tiny ? AttemptsForTiny : 1; attempt > 0; attempt--)
        {
            var mended = without.Weight > best.Weight ? Mended(without, others) : without;
            if (mended.Weight <= best.Weight && mended.Distance <= most * Slack && polish.Wear(mended) is var worn && worn.Distance <= most)
            {
                return worn;
            }
        }

        return null;
    }

    /// <summary>Shifts the others about, more boldly first and less and less so, a finding being worth some millimetres (simulated annealing: Kirkpatrick, Gelatt and Vecchi 1983).</summary>
    private ShiftState Mended(ShiftState state, int[] others)
    {
        tries.Load(state);
        var distance = state.Distance;
        var best = state;
        for (var step = 0; step < Steps; step++)
        {
            var cooling = (double)step / Steps;
            double size = FirstSize * Math.Pow(LastSize / FirstSize, cooling), heat = FirstHeat * Math.Pow(LastHeat / FirstHeat, cooling);
            var place = others[random.NextBelow(others.Length)];
            double right = state.Rightward[place], back = state.Backward[place];
            var way = tries.Movables[place].Rounded(right + (random.NextNormal() * size), back + (random.NextNormal() * size));
            var next = distance - state.WayOf(place) + Math.Sqrt((way.Rightward * way.Rightward) + (way.Backward * way.Backward));
            var most = state.Weight + ((distance - next - (heat * Math.Log(1 - random.NextShare()))) / Price);
            if (most < 0 || !tries.Movables[place].MayGo(way.Rightward, way.Backward))
            {
                continue;
            }

            tries.Put(place, way.Rightward, way.Backward);
            if (tries.Weigh(place, most) is var weight && weight <= most)
            {
                (state = state.With(place, way.Rightward, way.Backward)).Weight = weight;
                distance = next;
                best = state.IsBetterThan(best) ? state : best;
            }
            else
            {
                tries.Put(place, right, back);
            }
        }

        return best;
    }
}
