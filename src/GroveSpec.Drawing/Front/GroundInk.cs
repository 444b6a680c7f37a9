using System.Collections.Immutable;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model;
using GroveSpec.Model.Containers;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Drawing.Front;

/// <summary>Draws what the trunks stand in.</summary>
internal static class GroundInk
{
    /// <summary>Draws a container, or the patch of ground about the trunks where there is none.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="ground">The figure.</param>
    /// <param name="isPatch">Whether it is only ground.</param>
    /// <param name="fullness">How much texture, up to 1.</param>
    public static void Draw(SvgWriter svg, GroundFigure ground, bool isPatch, double fullness)
    {
        svg.OpenGroup("gs-container", isPatch ? null : ground.Container.Origin.Id);
        var isSlab = ground.Container is Container.Slab;
        if (!isPatch)
        {
            if (!isSlab)
            {
                Path(svg, "gs-wall", ground.DrawFeet);
            }

            Path(svg, isSlab ? "gs-stone" : "gs-wall", ground.DrawWall);
            if (isSlab)
            {
                Path(svg, "gs-grain", ground.DrawGrain);
            }
            else
            {
                Path(svg, "gs-hatch", ground.DrawShade);
                Path(svg, "gs-hatch", ground.DrawLip);
            }
        }

        Path(svg, isPatch ? "gs-patch" : "gs-soil", ground.DrawRim);
        if (!isPatch)
        {
            Path(svg, "gs-soil-edge", ground.DrawFront);
        }

        Path(svg, "gs-moss", pen => ground.DrawMoss(pen, fullness));
        svg.CloseGroup();
    }

    /// <summary>A patch of ground about places, where no container is stated.</summary>
    /// <param name="places">The places.</param>
    /// <param name="marginMillimetres">How far it reaches beyond them.</param>
    /// <returns>Its outline as a slab without thickness.</returns>
    public static Container Patch(IEnumerable<PlanPoint> places, double marginMillimetres)
    {
        const int Corners = 24;
        double left = double.MaxValue, right = double.MinValue, front = double.MaxValue, back = double.MinValue;
        foreach (var place in places)
        {
            (left, right) = (Math.Min(left, place.X.Millimetres), Math.Max(right, place.X.Millimetres));
            (front, back) = (Math.Min(front, place.Y.Millimetres), Math.Max(back, place.Y.Millimetres));
        }

        var outline = ImmutableArray.CreateBuilder<PlanPoint>(Corners);
        for (var corner = 0; corner < Corners; corner++)
        {
            var (sine, cosine) = Math.SinCos(corner * Math.Tau / Corners);
            outline.Add(PlanPoint.FromMillimetres(
                ((left + right) / 2) + (cosine * (((right - left) * 0.6) + marginMillimetres)),
                ((front + back) / 2) + (sine * (((back - front) * 0.6) + marginMillimetres))));
        }

        return new Container.Slab(outline.MoveToImmutable()) { Depth = new Length(1), Origin = Origin.Default };
    }

    private static void Path(SvgWriter svg, string cls, Action<Pen> draw)
    {
        svg.BeginPath(cls);
        draw(new Pen(svg));
        svg.EndPath();
    }
}
