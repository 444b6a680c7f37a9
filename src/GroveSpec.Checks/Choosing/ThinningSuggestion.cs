using System.Collections.Immutable;

namespace GroveSpec.Checks.Choosing;

/// <summary>One way to thin, with those that come to nearly the same.</summary>
/// <param name="Stand">What would stand.</param>
/// <param name="Why">Why, in one sentence.</param>
/// <param name="NearlyAsGood">Choices that differ from it by one trunk exchanged, left out or put in, and score at most a quarter more; the best first.</param>
public sealed record ThinningSuggestion(ThinnedStand Stand, string Why, ImmutableArray<ThinningVariant> NearlyAsGood);
