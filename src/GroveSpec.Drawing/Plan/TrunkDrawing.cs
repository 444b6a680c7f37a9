using GroveSpec.Drawing.Scene;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Plan;

/// <summary>Draws one trunk as a cut section, and its crown. Every wobble comes from its name.</summary>
internal static class TrunkDrawing
{
    /// <summary>Writes a crown: a lobed line with a wash; one that nobody stated as a broken line without.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="trunk">The trunk.</param>
    /// <param name="detail">How much texture is drawn.</param>
    public static void WriteCrown(SvgWriter svg, DrawnTrunk trunk, PlanDetail detail)
    {
        var origin = trunk.State.Crown?.Origin.Id ?? trunk.Origin;
        var (x, y) = trunk.CrownCentre;
        if (detail != PlanDetail.Full || trunk.CrownRadius < 6)
        {
            svg.Circle(trunk.IsCrownAssumed ? "gs-crown-assumed" : "gs-crown", x, y, trunk.CrownRadius, origin);
            return;
        }

        var hand = Wobble.Of(trunk.Name, "crown");
        var shape = hand.NextUndulation();
        var lobes = (int)Math.Clamp(Math.Round(Math.Tau * trunk.CrownRadius / 31), 9, 27);
        svg.BeginPath(trunk.IsCrownAssumed ? "gs-crown-assumed" : "gs-crown", origin);
        var turn = hand.Between(0, Math.Tau);
        var angle = turn;
        var (startX, startY) = OnCrown(trunk.CrownRadius, x, y, angle, shape);
        svg.MoveTo(startX, startY);
        var (fromX, fromY) = (startX, startY);
        for (var lobe = 0; lobe < lobes; lobe++)
        {
            // Lobes of uneven width that still close the round.
            angle = turn + ((lobe + 1 + (lobe + 1 < lobes ? hand.Between(-0.3, 0.3) : 0)) * Math.Tau / lobes);
            var (toX, toY) = lobe + 1 < lobes ? OnCrown(trunk.CrownRadius, x, y, angle, shape) : (startX, startY);
            var chord = Math.Sqrt(Math.Pow(toX - fromX, 2) + Math.Pow(toY - fromY, 2));
            svg.ArcTo(chord * hand.Between(0.54, 0.66), false, true, toX, toY);
            (fromX, fromY) = (toX, toY);
        }

        svg.ClosePath();
        svg.EndPath();
    }

    /// <summary>Writes a section.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="trunk">The trunk.</param>
    /// <param name="detail">How much texture is drawn.</param>
    /// <param name="title">What a pointer on it is told; null for nothing.</param>
    public static void Write(SvgWriter svg, DrawnTrunk trunk, PlanDetail detail, string? title)
    {
        if (detail == PlanDetail.Least)
        {
            WriteOutline(svg, trunk, trunk.Origin);
            return;
        }

        if (detail == PlanDetail.Less)
        {
            WriteOutline(svg, trunk, trunk.Origin);
            if (trunk.State.Presence == Presence.Standing && trunk.Radius >= 3)
            {
                svg.Circle("gs-rings", trunk.X, trunk.Y, trunk.Radius * 0.5);
            }

            WriteLean(svg, trunk);
            return;
        }

        svg.OpenGroup("gs-trunk", trunk.Origin, title);
        if (trunk.State.Presence != Presence.Standing || trunk.Radius < 3)
        {
            WriteOutline(svg, trunk, null);
        }
        else
        {
            WriteFlare(svg, trunk);
            WriteBark(svg, trunk);
            WriteRings(svg, trunk);
        }

        WriteLean(svg, trunk);
        svg.CloseGroup();
    }

    private static (double X, double Y) OnCrown(double radius, double x, double y, double angle, Undulation shape)
    {
        var reach = radius * (0.94 + (0.07 * shape.At(angle)));
        return (x + (reach * Math.Cos(angle)), y + (reach * Math.Sin(angle)));
    }

    private static double BarkWidth(double radius) => Math.Clamp(0.8 + (radius * 0.1), 0.9, 5);

    private static void WriteOutline(SvgWriter svg, DrawnTrunk trunk, string? origin)
    {
        var width = trunk.State.Presence == Presence.Standing ? Math.Min(BarkWidth(trunk.Radius), trunk.Radius * 0.8) : 0;
        var kind = trunk.State.Presence switch
        {
            Presence.Removed => "gs-removed",
            Presence.Planned => "gs-planned",
            _ => "gs-section",
        };

        // A hand that swerves by a twentieth of so little is not seen.
        if (trunk.Radius < 4)
        {
            svg.Circle(kind, trunk.X, trunk.Y, trunk.Radius - (width / 2), origin, width);
            return;
        }

        var hand = Wobble.Of(trunk.Name, "bark");
        svg.BeginPath(kind, origin, width);
        ClosedCurve.WriteRing(svg, trunk.X, trunk.Y, trunk.Radius - (width / 2), hand.NextUndulation(), 0.05, trunk.Radius < 5 ? 5 : 7);
        svg.EndPath();
    }

    // The roots' first swelling: a ring of its own, drawn out where roots run.
    private static void WriteFlare(SvgWriter svg, DrawnTrunk trunk)
    {
        var hand = Wobble.Of(trunk.Name, "flare");
        var roots = 5 + (int)(hand.Next() * 3);
        var points = roots * 2;
        Span<(double X, double Y)> flare = stackalloc (double, double)[16];
        var turn = hand.Between(0, Math.Tau);
        for (var i = 0; i < points; i++)
        {
            var reach = i % 2 == 0 ? (trunk.Radius * hand.Between(1.2, 1.33)) + 1.5 : (trunk.Radius * hand.Between(1.1, 1.2)) + 1.5;
            var angle = turn + ((i + hand.Between(-0.2, 0.2)) * Math.Tau / points);
            flare[i] = (trunk.X + (reach * Math.Cos(angle)), trunk.Y + (reach * Math.Sin(angle)));
        }

        svg.BeginPath("gs-flare");
        ClosedCurve.Write(svg, flare[..points]);
        svg.EndPath();
    }

    // Bark is a filled ring whose inner edge runs freely, thick here and thin there as a pen would leave it.
    private static void WriteBark(SvgWriter svg, DrawnTrunk trunk)
    {
        var hand = Wobble.Of(trunk.Name, "bark");
        var outer = hand.NextUndulation();
        var width = BarkWidth(trunk.Radius);
        var points = trunk.Radius > 14 ? 12 : 9;
        Span<(double X, double Y)> edge = stackalloc (double, double)[12];
        Span<(double X, double Y)> inside = stackalloc (double, double)[12];
        var swell = Math.Min(0.06, 1.6 / trunk.Radius);
        for (var i = 0; i < points; i++)
        {
            var angle = i * Math.Tau / points;
            var (sin, cos) = Math.SinCos(angle);
            var reach = trunk.Radius * (1 + (swell * outer.At(angle)));
            var within = reach - (width * hand.Between(0.55, 1.3));
            edge[i] = (trunk.X + (reach * cos), trunk.Y + (reach * sin));
            inside[i] = (trunk.X + (within * cos), trunk.Y + (within * sin));
        }

        svg.Circle("gs-wood", trunk.X, trunk.Y, trunk.Radius - (width / 2));
        svg.BeginPath("gs-bark");
        ClosedCurve.Write(svg, edge[..points]);
        ClosedCurve.Write(svg, inside[..points]);
        svg.EndPath();
    }

    // Rings lie closer towards the bark, about a pith that is a little off the middle.
    private static void WriteRings(SvgWriter svg, DrawnTrunk trunk)
    {
        var hand = Wobble.Of(trunk.Name, "rings");
        var room = trunk.Radius - BarkWidth(trunk.Radius);
        var rings = (int)Math.Clamp(room / 3.6, 1, 7);
        var shape = hand.NextUndulation();
        var (offX, offY) = (hand.Between(-0.1, 0.1) * trunk.Radius, hand.Between(-0.1, 0.1) * trunk.Radius);
        svg.BeginPath("gs-rings");
        for (var ring = 1; ring <= rings; ring++)
        {
            var share = Math.Pow((ring + hand.Between(-0.25, 0.1)) / (rings + 0.6), 0.8);
            var own = hand.NextUndulation();
            var blended = new Undulation(shape.Second + (0.3 * own.Second / Math.Tau), shape.Third, own.Fifth);
            ClosedCurve.WriteRing(svg, trunk.X + (offX * (1 - share)), trunk.Y + (offY * (1 - share)), room * share, blended, 0.07, ring < 3 ? 5 : 8);
        }

        svg.EndPath();
    }

    private static void WriteLean(SvgWriter svg, DrawnTrunk trunk)
    {
        if (!trunk.Leans)
        {
            return;
        }

        var origin = trunk.State.Trunk.LineOrigin?.Id ?? trunk.State.Trunk.Lean?.Origin.Id ?? trunk.Origin;
        var run = trunk.Run;
        var (tipX, tipY) = trunk.Tip;
        var last = run[^2];
        var length = Math.Sqrt(Math.Pow(tipX - last.X, 2) + Math.Pow(tipY - last.Y, 2));
        const double Tip = 3;

        // The line stops at the small circle's edge.
        var share = length > Tip ? (length - Tip) / length : 0;
        var (endX, endY) = (last.X + ((tipX - last.X) * share), last.Y + ((tipY - last.Y) * share));
        svg.BeginPath("gs-lean", origin);
        svg.MoveTo(run[0].X, run[0].Y);
        for (var i = 1; i < run.Length; i++)
        {
            var from = run[i - 1];
            var to = i == run.Length - 1 ? (X: endX, Y: endY) : run[i];
            var before = i > 1 ? run[i - 2] : from;
            var after = i + 1 < run.Length ? run[i + 1] : to;
            if (run.Length == 2)
            {
                svg.LineTo(to.X, to.Y);
            }
            else
            {
                svg.CurveTo(
                    from.X + ((to.X - before.X) / 6), from.Y + ((to.Y - before.Y) / 6), to.X - ((after.X - from.X) / 6), to.Y - ((after.Y - from.Y) / 6), to.X, to.Y);
            }
        }

        svg.EndPath();
        svg.Circle("gs-tip", tipX, tipY, Tip, origin);
    }
}
