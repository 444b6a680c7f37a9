using GroveSpec.Drawing.Plan;
using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Ground;

/// <summary>The look of free ground on a plan.</summary>
internal static class GroundStyle
{
    /// <summary>The class of a spot's numbered ring.</summary>
    public const string Mark = "gs-spot-mark";

    /// <summary>The style of a plan with free ground.</summary>
    /// <returns>A new sheet.</returns>
    public static StyleSheet Sheet() => PlanStyle.SheetWithPresentPlaces()
        .Rule(".gs-free", "fill:$leaf;fill-opacity:.75;fill-rule:evenodd;stroke:$ink;stroke-width:.9;stroke-linejoin:round")
        .Rule(".gs-free-hatch", "fill:none;stroke:$soft;stroke-width:.55")
        .Rule(".gs-strip", "fill:none;stroke:$soft;stroke-width:.6;stroke-dasharray:6 4")
        .Rule(".gs-ring", "fill:none;stroke:$soft;stroke-width:.6")
        .Rule(".gs-spot", "fill:$ground;stroke:$ink;stroke-width:1.5")
        .Rule(".gs-room", "fill:none;stroke:$ink;stroke-width:.7;stroke-dasharray:1.5 2.5")
        .NumberedRing(Mark);
}
