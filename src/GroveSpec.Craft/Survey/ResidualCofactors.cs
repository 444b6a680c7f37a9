namespace GroveSpec.Craft.Survey;

/// <summary>
/// How misfits hang on each other, I − A·Q·Aᵀ with the slopes A and the cofactors Q of the places, and by it what the sum of
/// squared misfits loses when readings are left out, to first order: vᵀ·R⁻¹·v over the rows of those (deletion of rows in
/// least squares, after Cook and Weisberg 1982; from memory, held against fits in the tests).
/// </summary>
internal sealed class ResidualCofactors
{
    // A reading with a smaller share of itself in its misfit is checked by no other.
    private const double Unchecked = 1e-6;

    private readonly SurveyNetwork network;
    private readonly double[] places;
    private readonly double[] misfits;
    private readonly double[] shown;

    // A row for each reading: its slopes times the cofactors.
    private readonly double[] spread;

    /// <summary>Makes them.</summary>
    /// <param name="solved">The network where it was fitted.</param>
    public ResidualCofactors(SolvedNetwork solved)
    {
        (network, places) = (solved.Network, solved.Places);
        var (cofactors, size) = (solved.Cofactors(), network.Unknowns);
        misfits = new double[network.Readings.Length];
        shown = new double[network.Readings.Length];
        spread = new double[network.Readings.Length * size];
        Span<(int Column, double Slope)> slopes = stackalloc (int, double)[4];
        for (var index = 0; index < network.Readings.Length; index++)
        {
            var reading = network.Readings[index];
            misfits[index] = SurveyNetwork.Distance(places, reading.From, reading.To) - reading.Millimetres;
            network.Slopes(places, reading.From, reading.To, slopes);
            foreach (var (row, slope) in slopes)
            {
                for (var column = 0; row >= 0 && column < size; column++)
                {
                    spread[(index * size) + column] += slope * cofactors[(row * size) + column];
                }
            }

            shown[index] = 1 + Shared(index, index);
        }
    }

    /// <summary>What the sum of squares loses without one reading, in mm²; null where no other checks it.</summary>
    public double? Gain(int reading) => shown[reading] > Unchecked ? misfits[reading] * misfits[reading] / shown[reading] : null;

    /// <summary>What the sum of squares loses without two readings, in mm²; null where no others check both.</summary>
    public double? Gain(int one, int other)
    {
        var between = Shared(one, other);
        var determinant = (shown[one] * shown[other]) - (between * between);
        return determinant <= Unchecked ? null
            : ((misfits[one] * misfits[one] * shown[other]) - (2 * misfits[one] * misfits[other] * between) + (misfits[other] * misfits[other] * shown[one])) / determinant;
    }

    /// <summary>The readings that others check, those first without which the sum loses most.</summary>
    public int[] Ranked() =>
        [.. Enumerable.Range(0, misfits.Length).Where(reading => Gain(reading) is not null).OrderByDescending(reading => Gain(reading)).ThenBy(reading => reading)];

    /// <summary>The pairs of readings that others check, those first without which the sum loses most.</summary>
    /// <param name="most">How many to give at most.</param>
    public (int One, int Other, double Gain)[] RankedPairs(int most)
    {
        // The least of those kept is the first to go.
        var kept = new PriorityQueue<(int One, int Other, double Gain), (double Gain, int One, int Other)>(most + 1);
        for (var one = 0; one < misfits.Length; one++)
        {
            for (var other = one + 1; other < misfits.Length; other++)
            {
                if (Gain(one, other) is { } gain && (kept.Count < most || gain > kept.Peek().Gain))
                {
                    kept.Enqueue((one, other, gain), (gain, -one, -other));
                    if (kept.Count > most)
                    {
                        kept.Dequeue();
                    }
                }
            }
        }

        return [.. kept.UnorderedItems.Select(item => item.Element).OrderByDescending(pair => pair.Gain).ThenBy(pair => pair.One).ThenBy(pair => pair.Other)];
    }

    private double Shared(int one, int other)
    {
        Span<(int Column, double Slope)> slopes = stackalloc (int, double)[4];
        network.Slopes(places, network.Readings[other].From, network.Readings[other].To, slopes);
        var sum = 0.0;
        foreach (var (column, slope) in slopes)
        {
            sum -= column >= 0 ? slope * spread[(one * network.Unknowns) + column] : 0;
        }

        return sum;
    }
}
