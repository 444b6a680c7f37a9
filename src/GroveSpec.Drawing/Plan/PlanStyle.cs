using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Plan;

/// <summary>The look of what only a plan has.</summary>
internal static class PlanStyle
{
    /// <summary>The style of a plan that shows where trunks are now beside where they may go.</summary>
    /// <returns>A new sheet.</returns>
    public static StyleSheet SheetWithPresentPlaces() => Sheet().Rule(".gs-was", "fill:none;stroke:$ink;stroke-width:1.1;stroke-dasharray:4 3");

    /// <summary>The plan's style.</summary>
    /// <param name="hasTaped">Whether places from tape readings are marked.</param>
    /// <returns>A new sheet.</returns>
    public static StyleSheet Sheet(bool hasTaped) => hasTaped
        ? Sheet().Rule(".gs-taped", "fill:$ink;stroke:$ground;stroke-width:1.6;paint-order:stroke")
        : Sheet();

    /// <summary>The style of every plan.</summary>
    /// <returns>A new sheet.</returns>
    public static StyleSheet Sheet() => new StyleSheet()
        .Rule(".gs-rim", "fill:none;stroke:$ink;stroke-width:2;stroke-linejoin:round")
        .Rule(".gs-rim-inner", "fill:$ground;stroke:$soft;stroke-width:.7;stroke-linejoin:round")
        .Rule(".gs-ground", "fill:$ground;stroke:$soft;stroke-width:.9;stroke-dasharray:9 3 2 3;stroke-linejoin:round")
        .Rule(".gs-grit", "fill:none;stroke:$soft;stroke-width:1;stroke-linecap:round")
        .Rule(".gs-grit-coarse", "fill:none;stroke:$soft;stroke-width:1.7;stroke-linecap:round")
        .Rule(".gs-crown", "fill:$leaf;fill-opacity:.28;stroke:$faint;stroke-width:.9")
        .Rule(".gs-crown-assumed", "fill:$leaf;fill-opacity:.14;stroke:$faint;stroke-width:.8;stroke-dasharray:2 4;stroke-linecap:round")
        .Rule(".gs-flare", "fill:none;stroke:$faint;stroke-width:.8")
        .Rule(".gs-wood", "fill:$ground")
        .Rule(".gs-bark", "fill:$ink;fill-rule:evenodd")
        .Rule(".gs-rings", "fill:none;stroke:$soft;stroke-width:.55")
        .Rule(".gs-section", "fill:$ground;stroke:$ink")
        .Rule(".gs-removed", "fill:none;stroke:$soft;stroke-width:1.3;stroke-dasharray:5 4")
        .Rule(".gs-planned", "fill:$ground;stroke:$ink;stroke-width:.9")
        .Rule(".gs-lean", "fill:none;stroke:$ink;stroke-width:1;stroke-linecap:round")
        .Rule(".gs-tip", "fill:$paper;stroke:$ink;stroke-width:1")
        .Rule(".gs-gap", "fill:none;stroke:$soft;stroke-width:.9;stroke-dasharray:.1 3.2;stroke-linecap:round")
        .Rule(".gs-gap-length", "fill:$soft;stroke:$paper;stroke-width:3;stroke-linejoin:round;paint-order:stroke")
        .Rule(".gs-name-gone", "font-style:italic;fill:$soft;stroke:$paper;stroke-width:4;stroke-linejoin:round;paint-order:stroke")
        .Rule(".gs-caption", "font-style:italic;fill:$soft;stroke:$paper;stroke-width:4;stroke-linejoin:round;paint-order:stroke")
        .Rule(".gs-finding-leader", "fill:none;stroke:$attention;stroke-width:.6")
        .Rule(".gs-eye", "fill:$paper;stroke:$ink;stroke-width:1.1;stroke-linejoin:round")
        .Rule(".gs-iris", "fill:none;stroke:$ink;stroke-width:1.1")
        .Rule(".gs-pupil", "fill:$ink")
        .Rule(".gs-lashes,.gs-arrow", "fill:none;stroke:$ink;stroke-width:1;stroke-linecap:round;stroke-linejoin:round")
        .Rule(".gs-dial-line", "fill:none;stroke:$soft;stroke-width:.6");
}
