using System.Collections.Immutable;

namespace GroveSpec.Checks.Fronts;

/// <summary>What was found when a grower asked for the best front.</summary>
public sealed record FrontsAnswer
{
    /// <summary>Why there is nothing to suggest, in a sentence; null where there is.</summary>
    public string? Obstacle { get; init; }

    /// <summary>The front that the planting has now; null where there is an obstacle.</summary>
    public Front? Now { get; init; }

    /// <summary>Within which bearings the front it has now holds, in a sentence; empty where there is an obstacle.</summary>
    public string NowHolds { get; init; } = "";

    /// <summary>The best few, the best first.</summary>
    public ImmutableArray<FrontSuggestion> Suggestions { get; init; } = [];

    /// <summary>The score all round, at each half degree from the back clockwise; empty where there is an obstacle.</summary>
    public ImmutableArray<double> Round { get; init; } = [];

    /// <summary>What is found all round, from the back clockwise; between two ranges lies no more than the point at which its weight changes. Empty where there is an obstacle.</summary>
    public ImmutableArray<FoundRange> Ranges { get; init; } = [];

    /// <summary>Trunks that stand and have no place, so that nothing is known of how they are seen.</summary>
    public ImmutableArray<string> WithoutPlace { get; init; } = [];
}
