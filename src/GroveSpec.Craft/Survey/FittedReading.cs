using GroveSpec.Model.Quantities;

namespace GroveSpec.Craft.Survey;

/// <summary>A reading and what it should have read.</summary>
/// <param name="Reading">Its number among the tape readings of the planting, from 0.</param>
/// <param name="Fitted">What it should have read, between bark where it was read so.</param>
public readonly record struct FittedReading(int Reading, Length Fitted)
{
    /// <summary>What it should have read if a trunk of it stands at the other of two places that all else leaves it; null where there is one place only, or both are as far.</summary>
    public Length? OtherFitted { get; init; }
}
