using System.Collections.Immutable;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Checks.Nudging;

/// <summary>Moves that belong together, and what the checks find after them.</summary>
public sealed record NudgeSuggestion
{
    /// <summary>The trunks that are moved or bent, by name.</summary>
    public required ImmutableArray<NudgedTrunk> Moves { get; init; }

    /// <summary>The sum of their ways.</summary>
    public required Length Distance { get; init; }

    /// <summary>The planting after the moves.</summary>
    public required PlantingState State { get; init; }

    /// <summary>What the checks of composition still find, as they tell it.</summary>
    public required ImmutableArray<Finding> Left { get; init; }

    /// <summary>How many they still find, the untold ones counted.</summary>
    public int LeftCount => Left.Sum(finding => 1 + finding.Untold);

    /// <summary>What it comes to, in a sentence.</summary>
    public required string Why { get; init; }

    /// <summary>The edits that write the moves into the text.</summary>
    public required ImmutableArray<TextEdit> Edits { get; init; }
}
