namespace GroveSpec.Checks.Choosing;

/// <summary>What a score is the sum of; docs/thin.md tells how each is measured.</summary>
/// <param name="Findings">What the checks find: 3 for an error, 1 for a warning, a half for a hint.</param>
/// <param name="Roles">What the aims of roles lose.</param>
/// <param name="Gaps">Half of what the evenness of the gaps is over a half.</param>
/// <param name="Sizes">Half of what the evenness of the sizes is over a half.</param>
/// <param name="Balance">Half of how far the wood is from its balance.</param>
public readonly record struct ThinningScoreParts(double Findings, double Roles, double Gaps, double Sizes, double Balance)
{
    /// <summary>The score, the lower the better.</summary>
    public double Score => Findings + Roles + Gaps + Sizes + Balance;
}
