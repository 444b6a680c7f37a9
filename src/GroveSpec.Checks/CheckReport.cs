using System.Collections.Immutable;

namespace GroveSpec.Checks;

/// <summary>All that was noticed of a planting on a day.</summary>
/// <param name="Findings">What stands, ranked: errors first, then warnings, then hints; of each the checks in the catalogue's order, the worst of a check first.</param>
/// <param name="Accepted">Findings that the file lets stand, in the same order.</param>
public sealed record CheckReport(ImmutableArray<Finding> Findings, ImmutableArray<Finding> Accepted)
{
    /// <summary>How many findings were counted but not told.</summary>
    public int Untold => Findings.Sum(finding => finding.Untold);
}
