using System.Collections.Immutable;

namespace GroveSpec.Craft.Stand;

/// <summary>What chance alone gives for an index, by simulation.</summary>
public sealed record ChanceBand
{
    // Values are shares of small whole numbers and sums of distances; what differs by less than this differs by rounding.
    private const double Rounding = 1e-9;

    private ChanceBand(double[] sorted)
    {
        Runs = sorted.Length;
        Mean = sorted.Average();
        StandardDeviation = Math.Sqrt(sorted.Sum(value => (value - Mean) * (value - Mean)) / Math.Max(1, sorted.Length - 1));
        Percentiles = [.. Enumerable.Range(0, 101).Select(percent => sorted[(int)Math.Round(percent / 100.0 * (sorted.Length - 1))])];

        // Two in forty lie outside: the ranks of a test at five in a hundred (Besag and Diggle 1977; from memory).
        var outside = Math.Max(1, (sorted.Length + 1) / 40);
        Low = sorted[outside - 1];
        High = sorted[sorted.Length - outside];
    }

    /// <summary>How many times chance was tried.</summary>
    public int Runs { get; }

    /// <summary>The mean of what it gave.</summary>
    public double Mean { get; }

    /// <summary>Its standard deviation.</summary>
    public double StandardDeviation { get; }

    /// <summary>One run in forty gives this or less.</summary>
    public double Low { get; }

    /// <summary>One run in forty gives this or more.</summary>
    public double High { get; }

    /// <summary>The values that 0, 1, … 100 runs in a hundred stay at or under: 101 numbers, rising, to draw the spread from.</summary>
    public ImmutableArray<double> Percentiles { get; }

    /// <summary>The band of simulated values.</summary>
    /// <param name="values">The values, at least one, in any order.</param>
    /// <returns>The band.</returns>
    public static ChanceBand Of(ImmutableArray<double> values) => new([.. values.Order()]);

    /// <summary>What a value tells against the band.</summary>
    /// <param name="value">The value.</param>
    /// <returns>Below or above where it lies beyond <see cref="Low"/> or <see cref="High"/>; a value at a limit cannot be told from chance.</returns>
    public StandReading Read(double value) =>
        value < Low - Rounding ? StandReading.Below : value > High + Rounding ? StandReading.Above : StandReading.CannotTell;
}
