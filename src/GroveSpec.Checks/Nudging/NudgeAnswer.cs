using System.Collections.Immutable;

namespace GroveSpec.Checks.Nudging;

/// <summary>What was found when a grower asked for the smallest moves.</summary>
public sealed record NudgeAnswer
{
    /// <summary>Why nothing is suggested, in a sentence; null where something is.</summary>
    public string? Obstacle { get; init; }

    /// <summary>What the checks of composition find now, as they tell it.</summary>
    public ImmutableArray<Finding> Now { get; init; } = [];

    /// <summary>How many they find, the untold ones counted.</summary>
    public int NowCount => Now.Sum(finding => 1 + finding.Untold);

    /// <summary>What has to be known besides, each in a sentence: which trunks stay where they are, and why; what no move can mend.</summary>
    public ImmutableArray<string> Remarks { get; init; } = [];

    /// <summary>The moves, those that leave least first; where much shorter ones leave only likeness of sizes, those second.</summary>
    public ImmutableArray<NudgeSuggestion> Suggestions { get; init; } = [];
}
