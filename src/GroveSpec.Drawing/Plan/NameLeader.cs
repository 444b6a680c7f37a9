using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Plan;

/// <summary>The thin line from a name that stands far off to what it names.</summary>
internal static class NameLeader
{
    /// <summary>Writes the line; nothing where the name stands so near that there would be none to see.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="x">The middle of what is named.</param>
    /// <param name="y">The same, downward.</param>
    /// <param name="reach">How far it reaches from its middle, in pixels.</param>
    /// <param name="box">The name's box.</param>
    public static void Write(SvgWriter svg, double x, double y, double reach, Box box)
    {
        var (toX, toY) = (Math.Clamp(x, box.Left + 4, box.Right - 4), Math.Clamp(y, box.Top + 3, box.Bottom - 3));
        var length = Math.Sqrt(((toX - x) * (toX - x)) + ((toY - y) * (toY - y)));
        if (length > reach + 2)
        {
            var share = (reach + 1) / length;
            svg.Line("gs-leader", x + ((toX - x) * share), y + ((toY - y) * share), toX, toY);
        }
    }
}
