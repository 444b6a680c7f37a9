using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Front;

/// <summary>The style of the front plate.</summary>
internal static class FrontStyle
{
    /// <summary>The rules that the front adds to those of all plates.</summary>
    /// <returns>The sheet.</returns>
    public static StyleSheet Sheet()
    {
        var sheet = new StyleSheet()
            .Rule(".gs-level", "fill:none;stroke:$faint;stroke-width:.6;stroke-dasharray:.6 5;stroke-linecap:round")
            .Rule(".gs-stone", "fill:$paper;stroke:$ink;stroke-width:1.2;stroke-linejoin:round")
            .Rule(".gs-grain", "fill:none;stroke:$ink;stroke-width:.6;stroke-linecap:round")
            .Rule(".gs-soil-edge", "fill:none;stroke:$ink;stroke-width:2.2;stroke-linecap:round")
            .Rule(".gs-wall", "fill:$paper;stroke:$ink;stroke-width:1.3;stroke-linejoin:round")
            .Rule(".gs-soil", "fill:$paper;stroke:$ink;stroke-width:1.2;stroke-linejoin:round")
            .Rule(".gs-patch", "fill:none;stroke:$faint;stroke-width:.8")
            .Rule(".gs-hatch", "fill:none;stroke:$soft;stroke-width:.55;stroke-linecap:round")
            .Rule(".gs-moss", "fill:none;stroke:$soft;stroke-width:.6;stroke-linecap:round")
            .Rule(".gs-foliage", "fill:$leaf;fill-opacity:.45;stroke:$soft;stroke-width:.75;stroke-linejoin:round")
            .Rule(".gs-branch", "fill:$ink;fill-opacity:.7;stroke:none")
            .Rule(".gs-bole", "fill:$paper;fill-opacity:1;stroke:$ink;stroke-width:.9;stroke-linejoin:round")
            .Rule(".gs-furrow", "fill:none;stroke:$ink;stroke-width:.6;stroke-linecap:round")
            .Rule(".gs-fissure", "fill:none;stroke:$ink;stroke-width:.8;stroke-linecap:round")
            .Rule(".gs-root", "fill:none;stroke:$ink;stroke-width:.75;stroke-linecap:round")
            .Rule(".gs-masses", "fill:none;stroke:$soft;stroke-width:.65;stroke-linecap:round")
            .Rule(".gs-leaves", "fill:none;stroke:$soft;stroke-width:.65;stroke-linecap:round")
            .Rule(".gs-planned-trunk", "fill:none;stroke:$ink;stroke-width:.7;stroke-dasharray:5 2.5")
            .Rule(".gs-planned-crown", "fill:none;stroke:$soft;stroke-width:.6;stroke-dasharray:3 3")
            .Rule(".gs-stump", "fill:$paper;stroke:$soft;stroke-width:.8")
            .Rule(".gs-hidden", "fill:none;stroke:$ink;stroke-width:.7;stroke-dasharray:2.5 3")
            .Rule(".gs-thread", "fill:none;stroke:$faint;stroke-width:.8")
            .Rule(".gs-other-name", "font-style:italic;fill:$soft;stroke:$paper;stroke-width:4;stroke-linejoin:round;paint-order:stroke")
            .Rule(".gs-finding-leader", "fill:none;stroke:$attention;stroke-width:.6")
            .Rule(".gs-tick", "fill:none;stroke:$attention;stroke-width:1");
        for (var shade = 1; shade < TrunkPainter.Shades; shade++)
        {
            sheet.Rule($".gs-far{shade}", $"stroke-opacity:{DrawnLength.Plain(1 - (shade * 0.125), 2)}");
            sheet.Rule($".gs-far{shade} .gs-branch", $"fill-opacity:{DrawnLength.Plain(0.7 - (shade * 0.1), 2)}");
        }

        return sheet;
    }
}
