using GroveSpec.Drawing.Plan;
using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Thin;

/// <summary>The look of trunks that are taken out.</summary>
internal static class ThinStyle
{
    /// <summary>The class of a choice's numbered ring.</summary>
    public const string Mark = "gs-choice-mark";

    /// <summary>The style of a plan with trunks taken out.</summary>
    /// <returns>A new sheet.</returns>
    public static StyleSheet Sheet() => PlanStyle.Sheet()
        .Rule(".gs-cut", "fill:none;stroke:$ink;stroke-width:1.2;stroke-linecap:round")
        .Rule(".gs-choice", "fill:$ink")
        .Rule(".gs-middle", "fill:none;stroke:$ink;stroke-width:.9")
        .Rule(".gs-weight", "fill:$ink;stroke:$paper;stroke-width:1.5;paint-order:stroke")
        .Rule(".gs-off-middle", "fill:none;stroke:$ink;stroke-width:.9;stroke-dasharray:2 2")
        .NumberedRing(Mark);
}
