using GroveSpec.Drawing.Plan;
using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Nudge;

/// <summary>The look of moves on a plan.</summary>
internal static class NudgeStyle
{
    /// <summary>The class of a move's numbered ring.</summary>
    public const string Mark = "gs-move-mark";

    /// <summary>The style of a plan with moves.</summary>
    /// <returns>A new sheet.</returns>
    public static StyleSheet Sheet() => PlanStyle.SheetWithPresentPlaces()
        .Rule(".gs-way-edge", "fill:none;stroke:$paper;stroke-width:4.4;stroke-linecap:round;stroke-linejoin:round")
        .Rule(".gs-way", "fill:none;stroke:$attention;stroke-width:1.8;stroke-linecap:round;stroke-linejoin:round")
        .NumberedRing(Mark);
}
