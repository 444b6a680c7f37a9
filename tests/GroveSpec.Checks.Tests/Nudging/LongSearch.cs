using GroveSpec.Checks.Nudging;
using GroveSpec.Craft.Moving;

namespace GroveSpec.Checks.Tests.Nudging;

/// <summary>
/// A long search for the shortest moves that shares nothing with the one under test but the measure of what is amiss:
/// annealing from many starts, after Kirkpatrick, Gelatt and Vecchi 1983 (the scheme from memory).
/// </summary>
internal static class LongSearch
{
    /// <summary>The shortest sum of ways that leaves nothing amiss, of all that were found.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="starts">From how many starts.</param>
    /// <param name="steps">How many steps each.</param>
    /// <param name="seed">Of the chance.</param>
    /// <returns>Millimetres; infinite where nothing found leaves nothing.</returns>
    public static double Shortest(CheckContext context, int starts, int steps, int seed)
    {
        var stand = GroveSpec.Checks.Nudging.Nudging.Stand(context, NudgeLimits.Of(context, 1e-6, withSizes: true));
        var movable = Enumerable.Range(0, context.Standing.Count).Where(place => !context.Planting.IsFixed(context.Standing.Trunks[place].Trunk)).ToArray();
        var best = double.PositiveInfinity;
        var random = new Random(seed);
        for (var start = 0; start < starts; start++)
        {
            best = Math.Min(best, Anneal(stand, movable, steps, random));
        }

        return best;
    }

    private static double Anneal(LooseStand stand, int[] movable, int steps, Random random)
    {
        var (right, back) = (new double[movable.Length], new double[movable.Length]);
        for (var place = 0; place < movable.Length; place++)
        {
            stand.Shift(movable[place], 0, 0);
        }

        var best = double.PositiveInfinity;
        var (weight, distance) = (stand.Weigh(1e9, out _), 0.0);
        for (var step = 0; step < steps; step++)
        {
            // From moves worth a finding down to tenths of a millimetre.
            const double price = 20;
            var cooling = (double)step / steps;
            var heat = 12 * Math.Pow(0.004, cooling);
            var place = random.Next(movable.Length);
            var (wasRight, wasBack) = (right[place], back[place]);
            if (random.Next(4) == 0)
            {
                var part = random.Next(3) == 0 ? 0 : random.NextDouble();
                (right[place], back[place]) = (wasRight * part, wasBack * part);
            }
            else
            {
                var size = 25 * Math.Pow(0.008, cooling);
                right[place] += Normal(random) * size;
                back[place] += Normal(random) * size;
            }

            if ((right[place] * right[place]) + (back[place] * back[place]) > 3600)
            {
                (right[place], back[place]) = (wasRight, wasBack);
                continue;
            }

            stand.Shift(movable[place], right[place], back[place]);
            var nextDistance = distance - Length(wasRight, wasBack) + Length(right[place], back[place]);
            var next = stand.Weigh(1e9, out _);
            if (next == 0 && nextDistance < best)
            {
                best = nextDistance;
            }

            var worse = ((next - weight) * price) + nextDistance - distance;
            if (worse <= 0 || random.NextDouble() < Math.Exp(-worse / heat))
            {
                (weight, distance) = (next, nextDistance);
            }
            else
            {
                (right[place], back[place]) = (wasRight, wasBack);
                stand.Shift(movable[place], wasRight, wasBack);
            }
        }

        return best;
    }

    private static double Length(double right, double back) => Math.Sqrt((right * right) + (back * back));

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
