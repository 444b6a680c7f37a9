using System.Collections.Immutable;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Checks.Fronts;

/// <summary>A front that is suggested.</summary>
/// <param name="Front">What is seen from there.</param>
/// <param name="Why">Why it is good, in a sentence.</param>
/// <param name="Holds">Within which bearings it holds, in a sentence.</param>
/// <param name="Edits">The edits that make it the planting's front: one, or none where the file's own statement cannot be read.</param>
public sealed record FrontSuggestion(Front Front, string Why, string Holds, ImmutableArray<TextEdit> Edits)
{
    /// <summary>The trunks that its sentences name, each once, those of the first sentence first.</summary>
    public ImmutableArray<string> Named { get; init; } = [];
}
