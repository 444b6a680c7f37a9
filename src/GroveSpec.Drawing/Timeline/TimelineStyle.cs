using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Timeline;

/// <summary>The timeline's own rules of style.</summary>
internal static class TimelineStyle
{
    /// <summary>The style block of a timeline.</summary>
    /// <returns>A new sheet.</returns>
    public static StyleSheet Sheet() => new StyleSheet()
        .Rule(".gs-tl-axis", "fill:none;stroke:$ink;stroke-width:1")
        .Rule(".gs-tl-year", "fill:$ink")
        .Rule(".gs-tl-month", "fill:$soft")
        .Rule(".gs-tl-band-faint", "fill:$leaf;fill-opacity:.28")
        .Rule(".gs-tl-band", "fill:$leaf;fill-opacity:.4")
        .Rule(".gs-tl-band-deep", "fill:$leaf;fill-opacity:.68")
        .Rule(".gs-tl-hatch", "fill:none;stroke:$faint;stroke-width:.6;stroke-dasharray:9 12;stroke-linecap:round")
        .Rule(".gs-tl-edge", "fill:none;stroke:$faint;stroke-width:.6")
        .Rule(".gs-tl-row", "fill:none;stroke:$faint;stroke-width:.8")
        .Rule(".gs-tl-frost", "fill:none;stroke:$soft;stroke-width:1;stroke-dasharray:.1 4;stroke-linecap:round")
        .Rule(".gs-tl-star", "fill:none;stroke:$soft;stroke-width:1;stroke-linecap:round")
        .Rule(".gs-tl-day", "fill:none;stroke:$attention;stroke-width:1.1")
        .Rule(".gs-tl-day-dot", "fill:$attention")
        .Rule(".gs-tl-day-text", "font-style:italic;fill:$attention")
        .Rule(".gs-tl-kind", "fill:$ink")
        .Rule(".gs-tl-due", "fill:$paper;stroke:$ink;stroke-width:1.15;stroke-linejoin:round")
        .Rule(".gs-tl-done", "fill:$ink;stroke:$ink;stroke-width:1;stroke-linejoin:round")
        .Rule(".gs-tl-late", "fill:$paper;stroke:$attention;stroke-width:1.7;stroke-linejoin:round")
        .Rule(".gs-tl-half", "fill:$paper;stroke:$ink;stroke-width:1.15;stroke-linecap:round")
        .Rule(".gs-tl-open", "fill:none;stroke:$ink;stroke-width:1.15;stroke-dasharray:.1 3.6;stroke-linecap:round")
        .Rule(".gs-tl-vein", "fill:none;stroke:$soft;stroke-width:.5;stroke-linecap:round")
        .Rule(".gs-tl-vein-done", "fill:none;stroke:$paper;stroke-width:.6;stroke-linecap:round")
        .Rule(".gs-tl-leaflet", "fill:$paper;stroke:$ink;stroke-width:.8;stroke-linejoin:round")
        .Rule(".gs-tl-thread", "fill:none;stroke:$ink;stroke-width:.9")
        .Rule(".gs-tl-tendril", "fill:none;stroke:$soft;stroke-width:.8;stroke-linecap:round")
        .Rule(".gs-tl-when", "fill:$soft;stroke:$paper;stroke-width:4;stroke-linejoin:round;paint-order:stroke");
}
