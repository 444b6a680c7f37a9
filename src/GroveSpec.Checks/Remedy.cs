using System.Collections.Immutable;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Checks;

/// <summary>One way to be rid of a finding.</summary>
/// <param name="Title">What it does, as an order: "accept this line, with a reason".</param>
/// <param name="Edits">The edits that do it, none overlapping.</param>
public sealed record Remedy(string Title, ImmutableArray<TextEdit> Edits);
