using GroveSpec.Craft.Composition;
using GroveSpec.Model.Views;

namespace GroveSpec.Craft.Moving;

/// <content>Whether thickness goes with nearness as the view means it. The definition is that of the check of depth.</content>
public sealed partial class LooseStand
{
    /// <summary>The direction away from the viewer, of length 1.</summary>
    internal (double Rightward, double Backward) Away => (-turnBack, turnRight);

    /// <summary>How far a trunk stands from the viewer's side of the origin, in millimetres along <see cref="Away"/>.</summary>
    /// <param name="trunk">The trunk.</param>
    /// <returns>Its depth now; less is nearer.</returns>
    internal double DepthFrom(int trunk) => (y[trunk] * turnRight) - (x[trunk] * turnBack);

    /// <summary>Whether a trunk's diameter is known, so that it counts for the order of depth.</summary>
    /// <param name="trunk">The trunk.</param>
    /// <returns>True when it is.</returns>
    internal bool HasDiameter(int trunk) => isMeasured[trunk];

    /// <summary>Whether two stand in the other order than the view means.</summary>
    /// <param name="nearer">The one that stands nearer.</param>
    /// <param name="farther">The one that stands farther away.</param>
    /// <returns>True when they do; false where the view means no order, and for equally thick ones.</returns>
    internal bool IsAgainstOrder(int nearer, int farther) => depthOrder switch
    {
        DepthOrder.Near => diameter[nearer] < diameter[farther],
        DepthOrder.Far => diameter[nearer] > diameter[farther],
        _ => false,
    };

    /// <summary>Whether thickness would go against the order, if the trunks stood at other depths.</summary>
    /// <param name="depths">A depth for each trunk, as <see cref="DepthFrom"/>.</param>
    /// <returns>True when it would.</returns>
    internal bool IsReversedAt(ReadOnlySpan<double> depths)
    {
        var (known, nearness) = (new List<double>(Count), new List<double>(Count));
        for (var trunk = 0; trunk < Count; trunk++)
        {
            if (isMeasured[trunk])
            {
                known.Add(diameter[trunk]);
                nearness.Add(-depths[trunk]);
            }
        }

        return IsReversed(known, nearness);
    }

    /// <summary>The trunks are to be seen before.</summary>
    private bool IsReversed()
    {
        if (depthOrder is null || !limits.IsOn(StandFaultKind.DepthReversed))
        {
            return false;
        }

        var (seen, nearness) = (new List<double>(Count), new List<double>(Count));
        for (var trunk = 0; trunk < Count; trunk++)
        {
            if (isMeasured[trunk] && !double.IsNaN(across[trunk]))
            {
                seen.Add(diameter[trunk]);
                nearness.Add(-depth[trunk]);
            }
        }

        return IsReversed(seen, nearness);
    }

    private bool IsReversed(List<double> thickness, List<double> nearness)
    {
        if (depthOrder is not { } wanted || !limits.IsOn(StandFaultKind.DepthReversed))
        {
            return false;
        }

        var correlation = RankCorrelation.Spearman(thickness, nearness);
        var agreement = wanted == DepthOrder.Near ? correlation : -correlation;
        return thickness.Count >= 3 && agreement < 0 && agreement <= -limits[StandFaultKind.DepthReversed];
    }
}
