using System.Globalization;
using System.Text;
using GroveSpec.Checks.Ground;
using GroveSpec.Craft.Composition;
using GroveSpec.Drawing.Ground;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing;

/// <summary>Draws over a plan where a trunk that is being moved stands free; or where that is not known, where it would stand in line with two others, or at a gap that is there already.</summary>
public static class PlanGuides
{
    private const int MostOthers = 12;
    private const int MostCentres = 4;
    private const int MostGaps = 3;
    private const double HatchApart = 6;

    /// <summary>Draws the guides of a trunk.</summary>
    /// <param name="state">The planting on its day.</param>
    /// <param name="options">How the plan is drawn.</param>
    /// <param name="name">The trunk.</param>
    /// <param name="lineShare">The limit of the check for lines: a share of the radii.</param>
    /// <param name="gapPercent">The limit of the check for even gaps, in percent.</param>
    /// <param name="ground">The ground that is free for the trunk; null where it is not known.</param>
    /// <returns>
    /// A group of SVG in the coordinates of the plan's page, in the colour of the text round it: the free ground as a hatched area.
    /// Where it is not known, strips as tinted areas with broken edges, and rings as bands of fine lines. Only the twelve nearest others count
    /// for these, and rings are drawn about the four nearest.
    /// </returns>
    public static string Draw(PlantingState state, DrawingOptions options, string name, double lineShare, double gapPercent, GroundAnswer? ground = null)
    {
        var svg = new StringBuilder("<g class=\"guides\" aria-hidden=\"true\" fill=\"none\" stroke=\"currentColor\">");
        if (state.Trunks.FirstOrDefault(trunk => trunk.Name == name) is { Place: { } place } moved)
        {
            var frame = PlanFrame.Of(state, options);
            var others = StandingTrunks.Of(state with
            {
                Trunks =
                [
                    .. state.Standing.Where(trunk => trunk.Name != name)
                        .OrderBy(trunk => trunk.Place!.Value.DistanceTo(place)).ThenBy(trunk => trunk.Name, StringComparer.Ordinal).Take(MostOthers),
                ],
            });
            if (ground is null)
            {
                Strips(svg, frame, others, (moved.Diameter?.Value ?? Length.Zero) * 0.5, lineShare);
                Rings(svg, frame, others, gapPercent);
            }
            else
            {
                Ground(svg, frame, ground);
            }
        }

        return svg.Append("</g>").ToString();
    }

    private static void Strips(StringBuilder svg, PlanFrame frame, StandingTrunks others, Length radius, double share)
    {
        var reach = others.MedianNearestGap * 2.5;
        foreach (var (first, second) in others.NeighbourPairs)
        {
            var outline = LineStrip.Between(others.Sections[first], others.Sections[second], radius, share, reach);
            if (outline.IsEmpty)
            {
                continue;
            }

            svg.Append("<path class=\"strip\" fill=\"currentColor\" fill-opacity=\"0.07\" stroke-opacity=\"0.45\" stroke-width=\"0.7\" stroke-dasharray=\"5 4\" d=\"M");
            for (var index = 0; index < outline.Length; index++)
            {
                var (x, y) = frame.PageOf(outline[index]);
                svg.Append(index == 0 ? "" : " L").Append(Number(x)).Append(' ').Append(Number(y));
            }

            svg.Append(" Z\"/>");
        }
    }

    private static void Ground(StringBuilder svg, PlanFrame frame, GroundAnswer ground)
    {
        var rings = ground.Outline.Where(ring => ring.Length >= 3).Select(ring => ring.Select(frame.PageOf).ToArray()).ToArray();
        if (rings.Length == 0)
        {
            return;
        }

        svg.Append("<path class=\"free\" fill=\"currentColor\" fill-opacity=\"0.12\" fill-rule=\"evenodd\" stroke-opacity=\"0.8\" stroke-width=\"0.9\" d=\"");
        foreach (var ring in rings)
        {
            for (var index = 0; index < ring.Length; index++)
            {
                svg.Append(index == 0 ? "M" : " L").Append(Number(ring[index].X)).Append(' ').Append(Number(ring[index].Y));
            }

            svg.Append(" Z");
        }

        svg.Append("\"/><path class=\"free\" stroke-opacity=\"0.5\" stroke-width=\"0.6\" d=\"");
        foreach (var (from, to) in Hatching.Of(rings, HatchApart))
        {
            svg.Append('M').Append(Number(from.X)).Append(' ').Append(Number(from.Y)).Append(" L").Append(Number(to.X)).Append(' ').Append(Number(to.Y));
        }

        svg.Append("\"/>");
    }

    private static void Rings(StringBuilder svg, PlanFrame frame, StandingTrunks others, double percent)
    {
        for (var index = 0; index < Math.Min(others.Count, MostCentres); index++)
        {
            var centre = others.Sections[index].Centre;
            var (x, y) = frame.PageOf(centre);
            var near = others.NeighboursOf(index);
            foreach (var other in near[..Math.Min(near.Length, MostGaps)])
            {
                var gap = centre.DistanceTo(others.Sections[other].Centre).Millimetres * frame.Scale;
                foreach (var (factor, opacity) in new[] { (1 - (percent / 100), 0.35), (1, 0.6), (1 / (1 - (percent / 100)), 0.35) })
                {
                    svg.Append("<circle class=\"ring\" cx=\"").Append(Number(x)).Append("\" cy=\"").Append(Number(y)).Append("\" r=\"").Append(Number(gap * factor))
                        .Append("\" stroke-opacity=\"").Append(Number(opacity)).Append("\" stroke-width=\"0.6\"/>");
                }
            }
        }
    }

    private static string Number(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);
}
