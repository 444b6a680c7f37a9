using GroveSpec.Craft.Stand;

namespace GroveSpec.Craft.Moving;

/// <summary>
/// Shifts trunks about, one or two at a time, boldly first and less and less so, what is amiss being worth some millimetres of
/// way (simulated annealing: Kirkpatrick, Gelatt and Vecchi 1983, "Optimization by simulated annealing"; the scheme from memory).
/// Where much is amiss at once, this finds ways about each other that trunks put where each is best do not find.
/// </summary>
/// <param name="tries">The stand.</param>
/// <param name="random">Where chance comes from.</param>
/// <param name="price">What one finding is worth in millimetres of way: less finds shorter ways, more leaves less amiss.</param>
internal sealed class ShiftAnnealing(ShiftTries tries, SeededRandom random, double price)
{
    private const double FirstHeatOfPrice = 0.53;
    private const double MostHeat = 12;
    private const double LastHeat = 0.3;
    private const double FirstSize = 15;
    private const double LastSize = 0.5;
    private const double Pairs = 0.05;
    private const double Homeward = 0.25;
    private const double OfAmiss = 0.5;
    private const double OfShifted = 0.4;
    private const int StepsOfOneHeat = 64;

    /// <summary>How often one trunk is tried before another is: what is known of all the others is worked out once for that.</summary>
    private const int StepsInARow = 5;

    private readonly double[] right = new double[tries.Movables.Count];
    private readonly double[] back = new double[tries.Movables.Count];
    private readonly double[] ways = new double[tries.Movables.Count];
    private readonly int[] some = new int[tries.Movables.Count];
    private ulong amiss;

    /// <summary>Searches.</summary>
    /// <param name="from">Where to begin; its weight is known.</param>
    /// <param name="work">How much may be done.</param>
    /// <returns>The best state that was met, by what is left amiss and then by way.</returns>
    public ShiftState Find(ShiftState from, long work)
    {
        Begin(from);
        var (begun, best, bestDistance) = (tries.Work, from, from.Distance);
        var (weight, distance) = (from.Weight, from.Distance);
        var firstHeat = Math.Min(price * FirstHeatOfPrice, MostHeat);
        double heat = firstHeat, size = FirstSize;
        var one = 0;
        for (var step = 0; tries.Work - begun < work; step++)
        {
            if (step % StepsOfOneHeat == 0)
            {
                tries.Rest();
                var cooling = (tries.Work - begun) / (double)work;
                heat = firstHeat * Math.Pow(LastHeat / firstHeat, cooling);
                size = FirstSize * Math.Pow(LastSize / FirstSize, cooling);
            }

            one = step % StepsInARow == 0 ? Chosen() : one;
            var to = Elsewhere(one, size);
            var other = ways.Length > 1 && random.NextShare() < Pairs ? Another(one) : -1;
            var otherTo = other >= 0 ? Elsewhere(other, size) : default;
            var next = distance - ways[one] + to.Way + (other >= 0 ? otherTo.Way - ways[other] : 0);

            // What is the most that may be amiss for this step to be taken: chance is asked first, so that a look can end early.
            var most = weight + ((distance - next - (heat * Math.Log(1 - random.NextShare()))) / price);
            tries.Spend();
            if (most < 0 || !MayGo(one, to) || (other >= 0 && !MayGo(other, otherTo)))
            {
                continue;
            }

            Put(one, to);
            if (other >= 0)
            {
                Put(other, otherTo);
            }

            var found = tries.WeighAndTell(one, most);
            if (found <= most)
            {
                Take(one, to);
                Take(other, otherTo);
                (weight, distance, amiss) = (found, next, tries.Amiss());
                if (weight < best.Weight || (weight == best.Weight && distance < bestDistance - 1e-6))
                {
                    (best, bestDistance) = (new ShiftState(right, back) { Weight = weight }, distance);
                }
            }
            else
            {
                if (other >= 0)
                {
                    tries.Put(other, right[other], back[other]);
                }

                tries.Put(one, right[one], back[one]);
            }
        }

        return best;
    }

    private void Begin(ShiftState from)
    {
        tries.Load(from);
        _ = tries.Faults();
        amiss = tries.Amiss();
        for (var place = 0; place < ways.Length; place++)
        {
            (right[place], back[place], ways[place]) = (from.Rightward[place], from.Backward[place], from.WayOf(place));
        }
    }

    private bool MayGo(int place, (double Right, double Back, double Way) to) => tries.Movables[place].MayGo(to.Right, to.Back);

    private void Put(int place, (double Right, double Back, double Way) to) => tries.Put(place, to.Right, to.Back);

    private void Take(int place, (double Right, double Back, double Way) to)
    {
        if (place >= 0)
        {
            (right[place], back[place], ways[place]) = to;
        }
    }

    /// <summary>Mostly one that something is amiss with, or one that may be brought nearer to where it was.</summary>
    private int Chosen()
    {
        var (chance, count) = (random.NextShare(), 0);
        for (var place = 0; place < ways.Length && chance < OfAmiss + OfShifted; place++)
        {
            if (chance < OfAmiss && amiss != 0 ? (amiss >> tries.Movables[place].Trunk & 1) != 0 : ways[place] > 0)
            {
                some[count++] = place;
            }
        }

        return count == 0 ? random.NextBelow(ways.Length) : some[random.NextBelow(count)];
    }

    private int Another(int one)
    {
        var other = random.NextBelow(ways.Length - 1);
        return other >= one ? other + 1 : other;
    }

    /// <summary>Back to where it was, or a part of the way there, or anywhere about.</summary>
    private (double Right, double Back, double Way) Elsewhere(int place, double size)
    {
        var chance = random.NextShare();
        if (chance < Homeward)
        {
            var part = chance < Homeward / 2 ? 0 : random.NextShare();
            return (right[place] * part, back[place] * part, ways[place] * part);
        }

        var reach = size * Math.Sqrt(-2 * Math.Log(1 - random.NextShare()));
        var (sine, cosine) = Math.SinCos(2 * Math.PI * random.NextShare());
        double toRight = right[place] + (reach * sine), toBack = back[place] + (reach * cosine);
        return (toRight, toBack, Math.Sqrt((toRight * toRight) + (toBack * toBack)));
    }
}
