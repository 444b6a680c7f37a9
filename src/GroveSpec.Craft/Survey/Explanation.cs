namespace GroveSpec.Craft.Survey;

/// <summary>What may be wrong so that all else agrees: some readings, or the place that the file gives one trunk.</summary>
internal sealed record Explanation
{
    /// <summary>The readings that are left out, by their numbers in the network, ascending; none where a place is not trusted.</summary>
    public required int[] Readings { get; init; }

    /// <summary>The trunk, by its number in the network, whose place is not trusted but sought as others are; null where readings are left out.</summary>
    public int? Place { get; init; }

    /// <summary>The sum of squared misfits of all else, in mm².</summary>
    public required double SumOfSquares { get; init; }

    /// <summary>Readings beyond those that places need then.</summary>
    public required int Spare { get; init; }

    /// <summary>Two numbers for each trunk, in millimetres: where all else puts them.</summary>
    public required double[] Places { get; init; }
}
