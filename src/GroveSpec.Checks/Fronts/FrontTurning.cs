namespace GroveSpec.Checks.Fronts;

/// <summary>
/// What more is found where the pot stands a little off: the mean over all hundredths of a degree within two degrees to either
/// side. So a front loses the more, the nearer it lies to where more is found, and the further that reaches.
/// </summary>
internal sealed class FrontTurning
{
    private const int Reach = 2 * FrontScore.StepsOfADegree;
    private const int Places = (2 * Reach) + 1;

    private readonly List<(int First, int End, double Weight)> runs = [];

    /// <summary>Lays out what is found all round.</summary>
    /// <param name="weights">The weight of what is found at each step.</param>
    public FrontTurning(double[] weights)
    {
        // As far beyond a whole turn as is reached from its first and its last step.
        for (var step = -Reach; step < FrontScore.Steps + Reach; step++)
        {
            var weight = weights[(step + FrontScore.Steps) % FrontScore.Steps];
            if (runs.Count > 0 && runs[^1].Weight == weight)
            {
                runs[^1] = runs[^1] with { End = step + 1 };
            }
            else
            {
                runs.Add((step, step + 1, weight));
            }
        }
    }

    /// <summary>What turning the pot a little adds.</summary>
    /// <param name="step">The step that it is turned from, from 0 to below <see cref="FrontScore.Steps"/>.</param>
    /// <param name="found">The weight of what is found there.</param>
    /// <returns>The mean of what is more, not below zero.</returns>
    public double At(int step, double found)
    {
        var (first, end) = (step - Reach, step + Reach + 1);
        var sum = 0.0;
        for (var run = RunOf(first); run < runs.Count && runs[run].First < end; run++)
        {
            var steps = Math.Min(end, runs[run].End) - Math.Max(first, runs[run].First);
            sum += steps * Math.Max(0, runs[run].Weight - found);
        }

        return sum / Places;
    }

    private int RunOf(int step)
    {
        var (low, high) = (0, runs.Count - 1);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = runs[middle].End <= step ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
