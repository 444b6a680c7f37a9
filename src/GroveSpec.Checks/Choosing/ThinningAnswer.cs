using System.Collections.Immutable;

namespace GroveSpec.Checks.Choosing;

/// <summary>What was found when a grower asked which trunks to keep.</summary>
public sealed record ThinningAnswer
{
    /// <summary>Why there is nothing to suggest, in a sentence; null where there is.</summary>
    public string? Obstacle { get; init; }

    /// <summary>Whether what is in the way is the question: it names a trunk that does not stand here, or one both to stay and to go.</summary>
    public bool IsMisasked { get; init; }

    /// <summary>All that stands now; null where <see cref="Obstacle"/> says that too many do.</summary>
    public ThinnedStand? Now { get; init; }

    /// <summary>Trunks that stand and have no place: they stay, and are counted.</summary>
    public ImmutableArray<string> WithoutPlace { get; init; } = [];

    /// <summary>The best few, the best first.</summary>
    public ImmutableArray<ThinningSuggestion> Suggestions { get; init; } = [];

    /// <summary>How many steps the search took in all: nodes of its tree and sets that were scored.</summary>
    public long Steps { get; init; }
}
