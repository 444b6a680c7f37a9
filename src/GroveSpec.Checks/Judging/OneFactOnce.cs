using GroveSpec.Model.States;

namespace GroveSpec.Checks.Judging;

/// <summary>Holds what checks have told of one planting, so that no other tells it again.</summary>
/// <remarks>
/// Trunks that touch are told as touching, and no line or gap through both is told besides. Gaps that are even from above
/// are not told again as seen from the front. A trunk that is hidden from the front takes no part in gaps seen from there.
/// That near-rim leaves to off-container what reaches past the rim, and that wide-but-short and thin-but-tall never tell the
/// same two trunks twice, is in how they measure. What a muted check would have told is left to the others. All that was
/// found counts, whether or not it is among the worst that are told.
/// </remarks>
internal sealed class OneFactOnce
{
    private readonly HashSet<(string, string)> touching = [];
    private readonly HashSet<string> hidden = new(StringComparer.Ordinal);
    private readonly HashSet<(string, string, string)> even = [];

    /// <summary>The rules in the order in which they have to look: those whose facts others leave to them first.</summary>
    /// <param name="rules">All rules.</param>
    /// <returns>The same rules.</returns>
    public static IEnumerable<IRule> InOrder(IEnumerable<IRule> rules) => rules.OrderBy(rule => rule.Description.Name switch
    {
        "touching" or "hidden-trunk" => 0,
        "even-gaps" => 1,
        _ => 2,
    });

    /// <summary>Whether others leave the facts of a check to it, so that they have to be kept.</summary>
    /// <param name="check">The check.</param>
    /// <returns>True when they do.</returns>
    public static bool IsKept(CheckDescription check) => check.Name is "touching" or "hidden-trunk" or "even-gaps";

    /// <summary>Keeps a fact.</summary>
    /// <param name="check">The check that told it.</param>
    /// <param name="trunks">The trunks it is about.</param>
    public void Keep(CheckDescription check, IReadOnlyList<TrunkState> trunks)
    {
        switch (check.Name)
        {
            case "touching":
                touching.Add(Sorted(trunks[0].Name, trunks[1].Name));
                break;
            case "hidden-trunk":
                hidden.Add(trunks[0].Name);
                break;
            case "even-gaps":
                even.Add(Sorted(trunks));
                break;
        }
    }

    /// <summary>Whether a check may find a fact that was told; a quick question, to spare asking of each.</summary>
    /// <param name="check">The check.</param>
    /// <returns>False when none of its facts was.</returns>
    public bool MayBeTold(CheckDescription check) => check.Name switch
    {
        "three-in-line" or "even-gaps" => touching.Count > 0,
        "even-gaps-in-view" => touching.Count + hidden.Count + even.Count > 0,
        _ => false,
    };

    /// <summary>Whether a fact of one of the checks for which <see cref="MayBeTold"/> was told.</summary>
    /// <param name="check">The check.</param>
    /// <param name="trunks">The three trunks it is about.</param>
    /// <returns>True when it was.</returns>
    public bool IsTold(CheckDescription check, IReadOnlyList<TrunkState> trunks)
    {
        string one = trunks[0].Name, two = trunks[1].Name, three = trunks[2].Name;
        if (touching.Count > 0 && (touching.Contains(Sorted(one, two)) || touching.Contains(Sorted(one, three)) || touching.Contains(Sorted(two, three))))
        {
            return true;
        }

        return check.Name == "even-gaps-in-view"
            && (hidden.Contains(one) || hidden.Contains(two) || hidden.Contains(three) || even.Contains(Sorted(trunks)));
    }

    private static (string, string) Sorted(string one, string other) => string.CompareOrdinal(one, other) <= 0 ? (one, other) : (other, one);

    private static (string, string, string) Sorted(IReadOnlyList<TrunkState> trunks)
    {
        var (one, two) = Sorted(trunks[0].Name, trunks[1].Name);
        (two, var three) = Sorted(two, trunks[2].Name);
        (one, two) = Sorted(one, two);
        return (one, two, three);
    }
}
