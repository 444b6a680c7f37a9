using System.Collections.Immutable;

namespace GroveSpec.Editing.Completing;

/// <summary>One thing that fits at a place.</summary>
/// <param name="Label">What the list shows.</param>
/// <param name="Kind">What it stands for.</param>
/// <param name="Detail">What it is, in a few words.</param>
/// <param name="Parts">What is put in: pieces of text, and places to fill in with what stands there at first.</param>
public sealed record Completion(string Label, CompletionKind Kind, string Detail, ImmutableArray<CompletionPart> Parts);
