namespace GroveSpec.Model.Judgement;

/// <summary>A check that is turned off for the file.</summary>
/// <param name="Check">The check's name, known or not.</param>
/// <param name="Reason">Why; may be empty, which is a finding of its own.</param>
/// <param name="Origin">Where it was written.</param>
public sealed record MutedCheck(string Check, string Reason, Origin Origin);
