using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Standing;

/// <summary>The look of a stand's numbers beside chance.</summary>
internal static class StandStyle
{
    /// <summary>The plate's style.</summary>
    /// <returns>A new sheet.</returns>
    public static StyleSheet Sheet() => new StyleSheet()
        .Rule(".gs-axis", "fill:none;stroke:$ink;stroke-width:.8")
        .Rule(".gs-chance", "fill:none;stroke:$ink;stroke-width:3")
        .Rule(".gs-blades", "fill:none;stroke:$soft;stroke-width:.8;stroke-linecap:round")
        .Rule(".gs-blades-beyond", "fill:none;stroke:$faint;stroke-width:.8;stroke-linecap:round")
        .Rule(".gs-value-line", "fill:none;stroke:$ink;stroke-width:1.2")
        .Rule(".gs-value-told", "fill:$ink;stroke:$ink;stroke-width:1.4;stroke-linejoin:round")
        .Rule(".gs-value-open", "fill:$paper;stroke:$ink;stroke-width:1.4;stroke-linejoin:round")
        .Rule(".gs-value", "fill:$ink")
        .Rule(".gs-index", "fill:$ink")
        .Rule(".gs-real", "fill:$paper;stroke:$ink;stroke-width:1")
        .Rule(".gs-end-name", "font-style:italic;fill:$soft")
        .Rule(".gs-thread", "fill:none;stroke:$soft;stroke-width:.6")
        .Rule(".gs-real-name", "font-style:italic;fill:$soft");
}
