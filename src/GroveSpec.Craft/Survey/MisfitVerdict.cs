namespace GroveSpec.Craft.Survey;

/// <summary>What a search for mistakes came to.</summary>
/// <param name="Explanations">What may be wrong, the likeliest first: one alone where it was told from all others; none where all fits or nothing was found.</param>
/// <param name="IsUnsettled">Whether the readings do not agree as a tape reads, and nothing was found without which they do.</param>
internal sealed record MisfitVerdict(Explanation[] Explanations, bool IsUnsettled)
{
    /// <summary>Nothing is wrong.</summary>
    public static MisfitVerdict AllFits { get; } = new([], IsUnsettled: false);

    /// <summary>Something is wrong, and nothing tells what.</summary>
    public static MisfitVerdict Unsettled { get; } = new([], IsUnsettled: true);
}
