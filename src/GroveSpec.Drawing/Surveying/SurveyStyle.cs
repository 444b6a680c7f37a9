using GroveSpec.Drawing.Plan;
using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Surveying;

/// <summary>The look of a survey on a plan.</summary>
internal static class SurveyStyle
{
    private const string Halo = "stroke:$paper;stroke-width:3.5;stroke-linejoin:round;paint-order:stroke";

    /// <summary>The style of a plan with a survey.</summary>
    /// <returns>A new sheet.</returns>
    public static StyleSheet Sheet() => PlanStyle.Sheet()
        .Rule(".gs-reading", "fill:none;stroke:$soft;stroke-width:.7")
        .Rule(".gs-reading-off", "fill:none;stroke:$attention;stroke-width:1.4;stroke-dasharray:14 4 2 4")
        .Rule(".gs-reading-next", "fill:none;stroke:$ink;stroke-width:1.4;stroke-dasharray:5 4")
        .Rule(".gs-reading-length", $"fill:$soft;{Halo};stroke-width:5")
        .Rule(".gs-misfit", $"fill:$attention;{Halo}")
        .Rule(".gs-next", $"font-style:italic;fill:$ink;{Halo}")
        .Rule(".gs-ellipse", "fill:none;stroke:$ink;stroke-width:1")
        .Rule(".gs-control", "fill:$ink;stroke:$paper;stroke-width:1.5;paint-order:stroke")
        .Rule(".gs-either", "fill:none;stroke:$ink;stroke-width:1;stroke-dasharray:.1 3.2;stroke-linecap:round")
        .Rule(".gs-apart", "fill:none;stroke:$soft;stroke-width:.9;stroke-dasharray:9 3 2 3");
}
