namespace GroveSpec.Checks.Choosing;

/// <summary>How a choice differs from a suggestion.</summary>
/// <param name="Keep">The trunk that stays besides; null where none does.</param>
/// <param name="TakeOut">The trunk that goes besides; null where none does.</param>
/// <param name="Score">Its score.</param>
public sealed record ThinningVariant(string? Keep, string? TakeOut, double Score);
