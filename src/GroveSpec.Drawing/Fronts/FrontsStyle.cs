using GroveSpec.Drawing.Front;
using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Fronts;

/// <summary>The look of the best fronts side by side.</summary>
internal static class FrontsStyle
{
    /// <summary>The class of a suggestion's numbered ring.</summary>
    public const string Mark = "gs-front-mark";

    /// <summary>The style of the fronts' plate.</summary>
    /// <returns>A new sheet.</returns>
    public static StyleSheet Sheet() => FrontStyle.Sheet()
        .Rule(".gs-front-caption", "fill:$ink")
        .Rule(".gs-score", "fill:$leaf;fill-opacity:.75;stroke:$ink;stroke-width:.9;stroke-linejoin:round;fill-rule:evenodd")
        .Rule(".gs-score-ring", "fill:none;stroke:$soft;stroke-width:.6")
        .Rule(".gs-hold", "fill:none;stroke:$ink;stroke-width:3.4")
        .Rule(".gs-ray", "fill:none;stroke:$ink;stroke-width:1")
        .Rule(".gs-ray-now", "fill:none;stroke:$ink;stroke-width:.9;stroke-dasharray:4 3")
        .Rule(".gs-dial-rim", "fill:$ground;stroke:$ink;stroke-width:1.2;stroke-linejoin:round")
        .Rule(".gs-foot-dot", "fill:$ink")
        .Rule(".gs-eye", "fill:$paper;stroke:$ink;stroke-width:1.1;stroke-linejoin:round")
        .Rule(".gs-pupil", "fill:$ink")
        .NumberedRing(Mark);
}
