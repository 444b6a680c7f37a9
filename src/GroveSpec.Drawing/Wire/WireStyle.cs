using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Wire;

/// <summary>The wire sheet's own rules of style.</summary>
internal static class WireStyle
{
    /// <summary>The style block of a wire sheet.</summary>
    /// <returns>A new sheet.</returns>
    public static StyleSheet Sheet() => new StyleSheet()
        .Rule(".gs-wr-bole", "fill:$paper;stroke:$ink;stroke-width:1;stroke-linejoin:round")
        .Rule(".gs-wr-bark", "fill:none;stroke:$soft;stroke-width:.6;stroke-linecap:round")
        .Rule(".gs-wr-edge", "fill:none;stroke:$ink;stroke-linejoin:round")
        .Rule(".gs-wr-core", "fill:none;stroke:$leaf;stroke-linejoin:round")
        .Rule(".gs-wr-hidden", "fill:none;stroke:$soft;stroke-width:.8;stroke-dasharray:2 3;stroke-linecap:round")
        .Rule(".gs-wr-soil", "fill:none;stroke:$ink;stroke-width:2;stroke-linecap:round")
        .Rule(".gs-wr-grain", "fill:none;stroke:$soft;stroke-width:.7;stroke-linecap:round")
        .Rule(".gs-wr-rule", "fill:none;stroke:$soft;stroke-width:.8")
        .Rule(".gs-wr-level", "fill:none;stroke:$soft;stroke-width:.6;stroke-dasharray:.6 4;stroke-linecap:round")
        .Rule(".gs-wr-goal", "fill:none;stroke:$ink;stroke-width:1;stroke-dasharray:7 4;stroke-linecap:round")
        .Rule(".gs-wr-parting", "fill:none;stroke:$faint;stroke-width:.8")
        .Rule(".gs-wr-label", "fill:$soft;font-style:italic")
        .Rule(".gs-wr-text", "fill:$ink");
}
