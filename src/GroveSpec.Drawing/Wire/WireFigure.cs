using GroveSpec.Craft.Views;
using GroveSpec.Craft.Wire;
using GroveSpec.Drawing.Front;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Drawing.Wire;

/// <summary>
/// A wired trunk drawn straight and to scale, so that the turns stand at their true angle; it is turned so that a bend goes to the
/// right of the drawing, and the turn that belongs outside the bend is on the left.
/// </summary>
internal sealed class WireFigure
{
    private const int StationsPerTurn = 28;
    private const int MostStations = 6000;
    private const double RulerWidth = 62;
    private const double SoilRoom = 46;
    private const double HeadRoom = 10;
    private const double LargestScale = 5;

    private readonly WirePlan plan;
    private readonly WireWinding winding;
    private readonly double scale;
    private readonly double shown;
    private readonly double axisX;
    private readonly double soilY;
    private readonly double rulerX;
    private readonly double diameter;
    private readonly double wire;

    /// <summary>Fits a trunk into a room.</summary>
    /// <param name="plan">The wire; its winding is known.</param>
    /// <param name="room">Where it may be drawn.</param>
    public WireFigure(WirePlan plan, Box room)
    {
        this.plan = plan;
        winding = plan.Winding!;
        diameter = plan.Trunk.Diameter!.Value.Value.Millimetres;
        wire = plan.Used!.Value.Diameter.Millimetres;
        var part = (winding.Part.To - winding.Part.From).Millimetres;
        var above = winding.Part.To.Millimetres + Math.Max(part * 0.16, diameter * 0.8);
        shown = plan.Run is { } run ? Math.Min(run.Millimetres, above) : above;
        var goal = Goal();
        var widest = HalfAt(0) + wire;
        var (left, right) = (widest, Math.Max(widest, goal.Select(spot => spot.X).DefaultIfEmpty(0).Max() + (diameter / 2)));
        scale = Math.Min(LargestScale, Math.Min((room.Height - SoilRoom - HeadRoom) / shown, (room.Width - RulerWidth - 16) / (left + right)));
        soilY = room.Top + HeadRoom + (shown * scale) + Math.Max(0, (room.Height - SoilRoom - HeadRoom - (shown * scale)) / 2);
        rulerX = room.Left + RulerWidth - 14;
        axisX = room.Left + RulerWidth + (left * scale) + Math.Max(0, (room.Width - RulerWidth - ((left + right) * scale)) / 2);
    }

    /// <summary>Draws it.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="units">The units of the ruler.</param>
    public void Draw(SvgWriter svg, UnitSystem units)
    {
        DrawRuler(svg, units);
        var turns = Turns();
        DrawWire(svg, turns, isFront: false);
        DrawTrunk(svg);
        DrawHidden(svg, turns);
        DrawWire(svg, turns, isFront: true);
        DrawSoil(svg);
        DrawGoal(svg);
    }

    private double HalfAt(double along) => plan.Run is { } run
        ? Taper.RadiusAt(Length.FromMillimetres(diameter), run, along / run.Millimetres).Millimetres
        : (diameter / 2) + (diameter / 2 * Taper.Flare(along / diameter));

    private double RadiusOfWire(double along) => ((plan.Run is { } run ? Taper.ThicknessAt(Length.FromMillimetres(diameter), run, Length.FromMillimetres(along)).Millimetres : diameter) + wire) / 2;

    private Spot OnPage(double x, double along) => new(axisX + (x * scale), soilY - (along * scale));

    /// <summary>The wires: how far along the trunk and how far round each station is. A quarter turn is the right edge, half a turn the back.</summary>
    private List<(double Along, double Turned)[]> Turns()
    {
        var from = winding.Anchor == WireAnchor.Soil ? 0 : winding.Part.From.Millimetres - (1.5 * winding.Pitch.Lower.Millimetres);
        var to = winding.Part.To.Millimetres;
        var count = (int)Math.Clamp(winding.Turns * StationsPerTurn * (to - from) / Math.Max(1e-6, to - winding.Part.From.Millimetres), 40, MostStations);
        var climb = Math.Tan(plan.Coil.Radians);
        var stations = new (double Along, double Turned)[count + 1];
        var turned = 0.0;
        for (var index = 0; index <= count; index++)
        {
            var along = from + ((to - from) * index / count);
            stations[index] = (along, turned);
            turned += (to - from) / count * climb / RadiusOfWire(along + ((to - from) / count / 2));
        }

        // The turn at the middle of the bend goes to the left edge, a quarter turn back; without a bend to the front.
        var place = plan.Place.Millimetres;
        var middle = stations.MinBy(station => Math.Abs(station.Along - place)).Turned;
        var shift = (plan.Bend is null ? 0 : -Math.PI / 2) - middle;
        var apart = wire / Math.Max(0.1, Math.Sin(plan.Coil.Radians));
        var wires = new List<(double Along, double Turned)[]>();
        for (var strand = 0; strand < winding.Strands; strand++)
        {
            var lift = (strand - ((winding.Strands - 1) / 2.0)) * apart;
            wires.Add([.. stations.Select(station => (station.Along + lift, station.Turned + shift))]);
        }

        return wires;
    }

    private void DrawWire(SvgWriter svg, List<(double Along, double Turned)[]> wires, bool isFront)
    {
        var thick = Math.Max(1.4, wire * scale);
        foreach (var stations in wires)
        {
            foreach (var (first, last) in Arcs(stations, isFront))
            {
                var points = Points(stations, first, last);
                Stroke(svg, "gs-wr-edge", points, thick + 0.6);
                if (thick > 2.6)
                {
                    Stroke(svg, "gs-wr-core", points, thick - 1.2);
                }
            }
        }
    }

    private void DrawHidden(SvgWriter svg, List<(double Along, double Turned)[]> wires)
    {
        // Of wires side by side one tells where they run behind the trunk.
        var stations = wires[wires.Count / 2];
        svg.BeginPath("gs-wr-hidden");
        var pen = new Pen(svg);
        foreach (var (first, last) in Arcs(stations, isFront: false))
        {
            var points = Points(stations, first, last);
            pen.Move(points[0]).Through(points);
        }

        svg.EndPath();
    }

    private static void Stroke(SvgWriter svg, string cls, Spot[] points, double width)
    {
        svg.BeginPath(cls, null, width);
        new Pen(svg).Move(points[0]).Through(points);
        svg.EndPath();
    }

    private Spot[] Points((double Along, double Turned)[] stations, int first, int last)
    {
        var points = new Spot[last - first + 1];
        for (var index = first; index <= last; index++)
        {
            var (along, turned) = stations[index];
            var visible = Math.Max(RadiusOfWire(along), HalfAt(Math.Max(0, along)) + (wire / 2));
            points[index - first] = OnPage(visible * Math.Sin(turned), along);
        }

        return points;
    }

    /// <summary>The stretches of stations that lie in front of the trunk, or behind it; each reaches one station into the next, so that no gap shows.</summary>
    private static IEnumerable<(int First, int Last)> Arcs((double Along, double Turned)[] stations, bool isFront)
    {
        var start = -1;
        for (var index = 0; index < stations.Length; index++)
        {
            var isInside = Math.Cos(stations[index].Turned) >= 0 == isFront;
            if (isInside && start < 0)
            {
                start = Math.Max(0, index - 1);
            }
            else if (!isInside && start >= 0)
            {
                yield return (start, index);
                start = -1;
            }
        }

        if (start >= 0 && start < stations.Length - 1)
        {
            yield return (start, stations.Length - 1);
        }
    }

    private void DrawTrunk(SvgWriter svg)
    {
        const int Stations = 18;
        var (left, right) = (new Spot[Stations + 1], new Spot[Stations + 1]);
        for (var index = 0; index <= Stations; index++)
        {
            // Closer stations near the soil, where the flare turns.
            var along = shown * Math.Pow(index / (double)Stations, 1.6);
            var half = HalfAt(along);
            (left[index], right[Stations - index]) = (OnPage(-half, along), OnPage(half, along));
        }

        svg.BeginPath("gs-wr-bole");
        var pen = new Pen(svg).Move(left[0]).Through(left);
        if (plan.Run is { } run && shown >= run.Millimetres)
        {
            pen.Line(right[0]);
        }
        else
        {
            // It goes on above: the cut is a ragged line, as a drawing breaks a shaft.
            var (from, to) = (left[^1], right[0]);
            pen.Line(from.Toward(to, 0.3) + new Spot(0, -5)).Line(from.Toward(to, 0.55) + new Spot(0, 4)).Line(from.Toward(to, 0.8) + new Spot(0, -3)).Line(to);
        }

        pen.Through(right).Close();
        svg.EndPath();
        DrawBark(svg);
    }

    private void DrawBark(SvgWriter svg)
    {
        var hand = Wobble.Of(plan.Trunk.Name, "wire");
        svg.BeginPath("gs-wr-bark");
        for (var stroke = 0; stroke < 26; stroke++)
        {
            var along = shown * (stroke + hand.Between(0.1, 0.9)) / 26;
            var half = HalfAt(along);
            var side = hand.Between(0.35, 0.92);
            var reach = Math.Min(half * hand.Between(0.6, 1.4), shown - along);
            var (from, to) = (OnPage(half * side, along), OnPage(HalfAt(along + reach) * side, along + reach));
            new Pen(svg).Move(from).Bend(from.Toward(to, 0.5) + new Spot(hand.Between(-1, 1), 0), to);
        }

        svg.EndPath();
    }

    private void DrawSoil(SvgWriter svg)
    {
        var hand = Wobble.Of(plan.Trunk.Name, "soil");
        var half = (HalfAt(0) * scale) + 34;
        svg.BeginPath("gs-wr-soil");
        svg.MoveTo(axisX - half, soilY + 2);
        svg.QuadraticTo(axisX - (half / 2), soilY - hand.Between(0.5, 2.5), axisX - (HalfAt(0) * scale * 0.9), soilY);
        svg.MoveTo(axisX + (HalfAt(0) * scale * 0.9), soilY);
        svg.QuadraticTo(axisX + (half / 2), soilY - hand.Between(0.5, 2.5), axisX + half, soilY + 2);
        svg.EndPath();
        svg.BeginPath("gs-wr-grain");
        for (var grain = 0; grain < 14; grain++)
        {
            var x = axisX + (half * hand.Between(-0.95, 0.95));
            var y = soilY + hand.Between(5, 20);
            svg.MoveTo(x, y);
            svg.LineTo(x + hand.Between(2, 5), y + hand.Between(-1, 1));
        }

        svg.EndPath();
        if (winding.Anchor == WireAnchor.Soil)
        {
            svg.BeginPath("gs-wr-hidden");
            var x = axisX + ((HalfAt(0) + wire) * scale * 0.6);
            svg.MoveTo(x, soilY + 2);
            svg.LineTo(x + 2, soilY + 26);
            svg.EndPath();
        }
    }

    private void DrawRuler(SvgWriter svg, UnitSystem units)
    {
        svg.Line("gs-wr-rule", rulerX, soilY, rulerX, soilY - (shown * scale));
        var taken = new List<double>();
        foreach (var (along, isPlace) in new[] { (plan.Place, true), (winding.Part.From, false), (winding.Part.To, false), (Length.Zero, false) })
        {
            var y = soilY - (along.Millimetres * scale);
            svg.Line("gs-wr-rule", rulerX - 4, y, rulerX + 4, y);
            if (isPlace)
            {
                svg.Line("gs-wr-level", rulerX + 8, y, axisX - ((HalfAt(along.Millimetres) + wire) * scale) - 4, y);
            }

            if (taken.TrueForAll(other => Math.Abs(other - y) >= Plate.SmallText + 1))
            {
                taken.Add(y);
                svg.Text("gs-number", rulerX - 8, y + 4, Plate.SmallText, DrawnLength.Text(along, units), TextAnchor.End);
            }
        }
    }

    private void DrawGoal(SvgWriter svg)
    {
        var goal = Goal();
        if (goal.Count == 0)
        {
            return;
        }

        var points = goal.Select(spot => OnPage(spot.X, spot.Y)).ToArray();
        svg.BeginPath("gs-wr-goal");
        new Pen(svg).Move(points[0]).Through(points);
        svg.EndPath();
        var (last, before) = (points[^1], points[^2]);
        var way = (last - before) * (1 / Math.Max(1e-6, (last - before).Size));
        svg.BeginPath("gs-wr-rule");
        new Pen(svg).Move(last - (way * 8) + (new Spot(-way.Y, way.X) * 4)).Line(last).Line(last - (way * 8) - (new Spot(-way.Y, way.X) * 4));
        svg.EndPath();
    }

    /// <summary>The axis as it will run once it is bent, in millimetres from the axis to the right and from the soil up; empty without a bend.</summary>
    private List<Spot> Goal()
    {
        if (plan.Bend is not { } bend)
        {
            return [];
        }

        const int Steps = 48;
        var start = Math.Max(0, (plan.Place - (bend.Over * 0.5)).Millimetres);
        var (x, y) = (0.0, start);
        var points = new List<Spot> { new(x, y) };
        for (var step = 0; step < Steps; step++)
        {
            var length = (shown - start) / Steps;
            var along = (step + 0.5) * length;
            var turned = bend.Stated.Angle.Radians * Math.Clamp(along / bend.Over.Millimetres, 0, 1);
            (x, y) = (x + (Math.Sin(turned) * length), y + (Math.Cos(turned) * length));
            points.Add(new(x, y));
        }

        return shown > start ? points : [];
    }
}
