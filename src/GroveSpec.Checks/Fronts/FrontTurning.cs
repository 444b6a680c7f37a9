namespace GroveSpec.Checks.Fronts;

/// <summary>
/// What more is found where the pot stands a little off: the mean over all hundredths of a degree within two degrees to either
/// side, each counted the less the farther off it is, in a straight line down to nothing. So a front loses the more, the nearer it lies
/// to where more is found, and the farther that reaches.
/// </summary>
internal sealed class FrontTurning
{
    private const int Reach = 2 * FrontScore.StepsOfADegree;

    /// <summary>The sum of what the places count, from 1 for the farthest to Reach + 1 for the front's own and down to 1 again.</summary>
    private const double Whole = (Reach + 1.0) * (Reach + 1);

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
    /// <returns>The mean, not below zero.</returns>
    public double At(int step, double found)
    {
        var (first, end) = (step - Reach, step + Reach + 1);
        var sum = 0.0;
        for (var run = RunOf(first); run < runs.Count && runs[run].First < end; run++)
        {
            var share = CountBefore(Math.Min(end, runs[run].End) - step) - CountBefore(Math.Max(first, runs[run].First) - step);
            sum += share * Math.Max(0, runs[run].Weight - found);
        }

        return sum / Whole;
    }

    /// <summary>What all places count that lie before one, by its steps from the front, from -Reach to Reach + 1.</summary>
    private static long CountBefore(int place)
    {
        // 1 + 2 + … up to the front, and from there what is left of the whole.
        long far = place <= 0 ? Reach + 1 + place : Reach + 1 - place;
        return place <= 0 ? far * (far - 1) / 2 : (long)Whole - (far * (far + 1) / 2);
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
