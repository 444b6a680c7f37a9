using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Plan;

/// <summary>A fine dial round the plan's origin that shows bearings.</summary>
internal static class BearingDial
{
    private static readonly string[] Sides = ["0° back", "90° right", "180° front", "270° left"];

    /// <summary>Writes it.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="layout">The plan.</param>
    /// <param name="placer">Told to keep labels off the dial's own words.</param>
    public static void Write(SvgWriter svg, PlanLayout layout, LabelPlacer placer)
    {
        var (x, y) = (layout.ToX(0), layout.ToY(0));
        var radius = (layout.DialRadiusMm * layout.Scale) + 8;
        svg.OpenGroup("gs-dial");
        svg.Circle("gs-dial-line", x, y, radius);
        svg.BeginPath("gs-dial-line");
        for (var bearing = 0; bearing < 360; bearing += 5)
        {
            var (sin, cos) = Math.SinCos(bearing * Math.PI / 180);
            var tick = bearing % 90 == 0 ? 10 : bearing % 30 == 0 ? 7 : bearing % 10 == 0 ? 5 : 3;
            svg.MoveTo(x + (radius * sin), y - (radius * cos));
            svg.LineTo(x + ((radius + tick) * sin), y - ((radius + tick) * cos));
        }

        svg.MoveTo(x - 4, y);
        svg.LineTo(x + 4, y);
        svg.MoveTo(x, y - 4);
        svg.LineTo(x, y + 4);
        svg.EndPath();
        for (var bearing = 0; bearing < 360; bearing += 30)
        {
            var (sin, cos) = Math.SinCos(bearing * Math.PI / 180);
            var text = bearing % 90 == 0 ? Sides[bearing / 90] : $"{bearing}°";
            var width = TextMetrics.ReservedWidth(text, Plate.SmallText);
            var place = LabelRequest.Beside(x, y, radius + 13, (bearing - 90) * Math.PI / 180, width, 15, 0);
            svg.Text("gs-number", place.CentreX, place.CentreY + 4, Plate.SmallText, text, TextAnchor.Middle);
            placer.Obstacles.Avoid(Box.About(place.CentreX, place.CentreY, width, 15));
        }

        svg.CloseGroup();
    }
}
