using System.Collections.Immutable;

namespace GroveSpec.Model.Judgement;

/// <summary>One finding that is let stand.</summary>
/// <param name="Check">The check's name, known or not.</param>
/// <param name="Trunks">The trunks the finding is about, in the order written; empty for a finding about the whole planting.</param>
/// <param name="Reason">Why; may be empty, which is a finding of its own.</param>
/// <param name="Origin">Where it was written.</param>
public sealed record AcceptedFinding(string Check, ImmutableArray<string> Trunks, string Reason, Origin Origin);
