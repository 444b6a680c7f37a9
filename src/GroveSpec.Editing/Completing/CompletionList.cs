using System.Collections.Immutable;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Editing.Completing;

/// <summary>What fits at a place.</summary>
/// <param name="Replaced">The word begun there, which a completion takes the place of; empty between words.</param>
/// <param name="Completions">What fits, the likeliest first.</param>
public sealed record CompletionList(TextSpan Replaced, ImmutableArray<Completion> Completions);
