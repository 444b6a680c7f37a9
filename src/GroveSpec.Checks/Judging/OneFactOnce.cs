namespace GroveSpec.Checks.Judging;

/// <summary>Drops findings that say again what a weightier one has said.</summary>
/// <remarks>
/// Trunks that touch are told as touching, and no line or gap through both is told besides. Gaps that are even from above
/// are not told again as seen from the front. A trunk that is hidden from the front takes no part in gaps seen from there.
/// That near-rim leaves to off-container what reaches past the rim, and that wide-but-short and thin-but-tall never tell the
/// same two trunks twice, is in how they measure. What a muted check would have told is left to the others.
/// </remarks>
internal static class OneFactOnce
{
    /// <summary>Keeps each fact once.</summary>
    /// <param name="findings">All findings of checks that are not muted.</param>
    /// <returns>Those that say something of their own, in the order given.</returns>
    public static List<Finding> Keep(List<Finding> findings)
    {
        var touching = new HashSet<(string, string)>();
        var hidden = new HashSet<string>(StringComparer.Ordinal);
        var even = new HashSet<string>(StringComparer.Ordinal);
        foreach (var finding in findings)
        {
            switch (finding.Check.Name)
            {
                case "touching":
                    touching.Add((finding.Trunks[0], finding.Trunks[1]));
                    break;
                case "hidden-trunk":
                    hidden.Add(finding.Trunks[0]);
                    break;
                case "even-gaps":
                    even.Add(string.Join('\n', finding.Trunks));
                    break;
            }
        }

        return findings.FindAll(finding => finding.Check.Name switch
        {
            "three-in-line" or "even-gaps" => !HasPair(finding, touching),
            "even-gaps-in-view" => !HasPair(finding, touching)
                && !finding.Trunks.Any(hidden.Contains)
                && !even.Contains(string.Join('\n', finding.Trunks)),
            _ => true,
        });
    }

    private static bool HasPair(Finding finding, HashSet<(string, string)> pairs)
    {
        if (pairs.Count == 0)
        {
            return false;
        }

        var trunks = finding.Trunks;
        return pairs.Contains((trunks[0], trunks[1])) || pairs.Contains((trunks[0], trunks[2])) || pairs.Contains((trunks[1], trunks[2]));
    }
}
