using GroveSpec.Checks;
using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Plan;

/// <summary>Turns what findings can show into strokes on the plan.</summary>
internal static class FindingMarks
{
    private const double PastTheEnds = 30;

    /// <summary>The strokes of all findings that show in a plan.</summary>
    /// <param name="layout">The plan.</param>
    /// <param name="findings">What was noticed, ranked.</param>
    /// <returns>The strokes in the order of their numbers; a finding without a figure for the plan has none.</returns>
    public static List<FindingMark> Of(PlanLayout layout, IReadOnlyList<Finding> findings)
    {
        var byName = new Dictionary<string, DrawnTrunk>(StringComparer.Ordinal);
        foreach (var trunk in layout.Trunks)
        {
            byName.TryAdd(trunk.Name, trunk);
        }

        var marks = new List<FindingMark>();
        var ringsByTrunk = new Dictionary<string, int>(StringComparer.Ordinal);
        var arcsByGap = new Dictionary<(string From, string To), int>();
        for (var i = 0; i < findings.Count; i++)
        {
            foreach (var figure in findings[i].Figures)
            {
                switch (figure)
                {
                    case Figure.Rod rod:
                        marks.Add(RodMark(layout, i + 1, rod));
                        break;
                    case Figure.Gap gap when byName.TryGetValue(gap.From, out var from) && byName.TryGetValue(gap.To, out var to) && from != to:
                        var pair = string.CompareOrdinal(gap.From, gap.To) < 0 ? (gap.From, gap.To) : (gap.To, gap.From);
                        var before = arcsByGap.GetValueOrDefault(pair);
                        arcsByGap[pair] = before + 1;
                        marks.Add(ArcMark(layout, i + 1, from, to, before));
                        break;
                    case Figure.Ring ring when byName.TryGetValue(ring.Name, out var ringed):
                        var nested = ringsByTrunk.GetValueOrDefault(ring.Name);
                        ringsByTrunk[ring.Name] = nested + 1;
                        marks.Add(RingMark(i + 1, ringed, nested));
                        break;
                    default:
                        break;
                }
            }
        }

        return marks;
    }

    /// <summary>Writes a stroke, drawn to where its number stands.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="layout">The plan.</param>
    /// <param name="mark">The stroke.</param>
    /// <param name="number">The box of its number.</param>
    public static void Write(SvgWriter svg, PlanLayout layout, FindingMark mark, Box? number)
    {
        svg.Raw("<g class=\"gs-findings\" data-finding=\"");
        svg.Number(mark.Number);
        svg.Raw("\">\n");
        svg.BeginPath("gs-finding");
        if (mark.IsRod)
        {
            WriteRod(svg, layout, mark, number);
        }
        else
        {
            svg.MoveTo(mark.Stroke[0].X, mark.Stroke[0].Y);
            for (var i = 1; i + 1 < mark.Stroke.Length; i += 2)
            {
                svg.QuadraticTo(mark.Stroke[i].X, mark.Stroke[i].Y, mark.Stroke[i + 1].X, mark.Stroke[i + 1].Y);
            }

            if (mark.IsRing)
            {
                svg.ClosePath();
            }
        }

        svg.EndPath();
        if (number is { } box)
        {
            WriteLeader(svg, mark, box);
            Plate.WriteMark(svg, box.CentreX, box.CentreY, mark.Number, null);
        }

        svg.CloseGroup();
    }

    private static FindingMark RodMark(PlanLayout layout, int number, Figure.Rod rod)
    {
        var from = (X: layout.ToX(rod.From.X.Millimetres), Y: layout.ToY(rod.From.Y.Millimetres));
        var to = (X: layout.ToX(rod.To.X.Millimetres), Y: layout.ToY(rod.To.Y.Millimetres));
        var length = Math.Max(1e-9, Math.Sqrt(Math.Pow(to.X - from.X, 2) + Math.Pow(to.Y - from.Y, 2)));
        var (x, y) = ((to.X - from.X) / length, (to.Y - from.Y) / length);

        // Past the outermost trunk it still has to show.
        var before = PastTheEnds + RadiusAt(layout, from);
        var after = PastTheEnds + RadiusAt(layout, to);
        var places = new List<(double X, double Y)>();
        for (var step = 0; step < 14; step++)
        {
            places.Add((to.X + (x * (after + 10 + (step * 9))), to.Y + (y * (after + 10 + (step * 9)))));
            places.Add((from.X - (x * (before + 10 + (step * 9))), from.Y - (y * (before + 10 + (step * 9)))));
        }

        return new FindingMark
        {
            Number = number,
            IsRod = true,
            Stroke = [(from.X - (x * before), from.Y - (y * before)), (to.X + (x * after), to.Y + (y * after))],
            NumberPlaces = places,
            PlacesOnStroke = places.Count,
        };
    }

    private static double RadiusAt(PlanLayout layout, (double X, double Y) end)
    {
        double radius = 0;
        foreach (var trunk in layout.Trunks)
        {
            var (x, y) = (trunk.X - end.X, trunk.Y - end.Y);
            if ((x * x) + (y * y) < trunk.FlareRadius * trunk.FlareRadius)
            {
                radius = Math.Max(radius, trunk.FlareRadius);
            }
        }

        return radius;
    }

    // An arc beside the gap, on the side away from the middle of the planting; a second one on the same gap bows the other way.
    private static FindingMark ArcMark(PlanLayout layout, int number, DrawnTrunk from, DrawnTrunk to, int before)
    {
        if (from.X > to.X || (from.X == to.X && from.Y > to.Y))
        {
            (from, to) = (to, from);
        }

        var (x, y) = (to.X - from.X, to.Y - from.Y);
        var length = Math.Max(1e-9, Math.Sqrt((x * x) + (y * y)));
        (x, y) = (x / length, y / length);
        var outward = ((((from.X + to.X) / 2) - layout.Extents.CentreX) * y) - ((((from.Y + to.Y) / 2) - layout.Extents.CentreY) * x) >= 0 ? 1 : -1;
        var bow = Math.Clamp(length * 0.22, 12, 44) + (before / 2 * 9);
        bow *= before % 2 == 0 ? outward : -outward;

        // Begun and ended on the flares, a little turned to the side of the bow.
        var start = (X: from.X + (((x * 0.8) + (y * 0.6 * Math.Sign(bow))) * (from.FlareRadius + 2)), Y: from.Y + (((y * 0.8) - (x * 0.6 * Math.Sign(bow))) * (from.FlareRadius + 2)));
        var end = (X: to.X + (((-x * 0.8) + (y * 0.6 * Math.Sign(bow))) * (to.FlareRadius + 2)), Y: to.Y + (((-y * 0.8) - (x * 0.6 * Math.Sign(bow))) * (to.FlareRadius + 2)));
        var middle = (X: ((start.X + end.X) / 2) + (y * bow), Y: ((start.Y + end.Y) / 2) - (x * bow));
        var apex = (X: ((start.X + end.X) / 4) + (middle.X / 2), Y: ((start.Y + end.Y) / 4) + (middle.Y / 2));
        var places = new List<(double X, double Y)> { apex };
        foreach (var share in (ReadOnlySpan<double>)[0.4, 0.6, 0.3, 0.7, 0.2, 0.8])
        {
            var rest = 1 - share;
            places.Add((
                (rest * rest * start.X) + (2 * rest * share * middle.X) + (share * share * end.X),
                (rest * rest * start.Y) + (2 * rest * share * middle.Y) + (share * share * end.Y)));
        }

        for (var step = 1; step < 6; step++)
        {
            places.Add((apex.X + (y * Math.Sign(bow) * step * 10), apex.Y - (x * Math.Sign(bow) * step * 10)));
        }

        return new FindingMark { Number = number, Stroke = [start, middle, end], NumberPlaces = places, PlacesOnStroke = 7 };
    }

    private static FindingMark RingMark(int number, DrawnTrunk trunk, int nested)
    {
        var radius = trunk.FlareRadius + (trunk.Radius * 0.25) + 5 + (nested * 6);
        const int Pieces = 8;
        var stroke = new (double X, double Y)[(Pieces * 2) + 1];
        for (var i = 0; i < stroke.Length; i++)
        {
            // A control point lies where the tangents of its piece meet.
            var reach = i % 2 == 0 ? radius : radius / Math.Cos(Math.PI / Pieces);
            var angle = i * Math.PI / Pieces;
            stroke[i] = (trunk.X + (reach * Math.Cos(angle)), trunk.Y + (reach * Math.Sin(angle)));
        }

        var places = new List<(double X, double Y)>();
        for (var ring = 0; ring < 3; ring++)
        {
            for (var step = 0; step < 16; step++)
            {
                var angle = (-0.25 * Math.PI) + ((step % 2 == 0 ? step : -(step + 1)) / 2 * Math.Tau / 16);
                places.Add((trunk.X + ((radius + (ring * 12)) * Math.Cos(angle)), trunk.Y + ((radius + (ring * 12)) * Math.Sin(angle))));
            }
        }

        return new FindingMark { Number = number, IsRing = true, Stroke = stroke, NumberPlaces = places, PlacesOnStroke = 16 };
    }

    // The rod is drawn out to its number's ring and broken round every trunk it meets, so that the section stays clear.
    private static void WriteRod(SvgWriter svg, PlanLayout layout, FindingMark mark, Box? number)
    {
        var (from, to) = (mark.Stroke[0], mark.Stroke[1]);
        var length = Math.Max(1e-9, Math.Sqrt(Math.Pow(to.X - from.X, 2) + Math.Pow(to.Y - from.Y, 2)));
        var (x, y) = ((to.X - from.X) / length, (to.Y - from.Y) / length);
        double first = 0;
        var last = length;
        if (number is { } box)
        {
            var along = ((box.CentreX - from.X) * x) + ((box.CentreY - from.Y) * y);
            var beside = Math.Abs(((box.CentreX - from.X) * y) - ((box.CentreY - from.Y) * x));
            if (beside < 1)
            {
                first = Math.Min(first, along + Plate.RadiusOfMark(mark.Number));
                last = Math.Max(last, along - Plate.RadiusOfMark(mark.Number));
            }
        }

        var breaks = new List<(double From, double To)>();
        foreach (var trunk in layout.Trunks)
        {
            var along = ((trunk.X - from.X) * x) + ((trunk.Y - from.Y) * y);
            var beside = ((trunk.X - from.X) * y) - ((trunk.Y - from.Y) * x);
            var reach = trunk.FlareRadius + 1;
            if (Math.Abs(beside) < reach)
            {
                var half = Math.Sqrt((reach * reach) - (beside * beside));
                breaks.Add((along - half, along + half));
            }
        }

        breaks.Sort();
        breaks.Add((last, last));
        var at = first;
        foreach (var (begin, end) in breaks)
        {
            var stop = Math.Min(begin, last);
            if (stop > at + 0.5)
            {
                svg.MoveTo(from.X + (x * at), from.Y + (y * at));
                svg.LineTo(from.X + (x * stop), from.Y + (y * stop));
            }

            at = Math.Max(at, end);
        }
    }

    // A number that had to stand off its stroke is led back to the nearest place on it.
    private static void WriteLeader(SvgWriter svg, FindingMark mark, Box number)
    {
        if (mark.IsRod)
        {
            var (from, to) = (mark.Stroke[0], mark.Stroke[1]);
            var length = Math.Max(1e-9, Math.Sqrt(Math.Pow(to.X - from.X, 2) + Math.Pow(to.Y - from.Y, 2)));
            if (Math.Abs(((number.CentreX - from.X) * (to.Y - from.Y)) - ((number.CentreY - from.Y) * (to.X - from.X))) / length < 1)
            {
                return;
            }
        }

        var nearest = mark.NumberPlaces[0];
        var best = double.PositiveInfinity;
        for (var i = 0; i < mark.Stroke.Length; i += mark.IsRod ? 1 : 2)
        {
            Consider(mark.Stroke[i]);
        }

        if (!mark.IsRing && !mark.IsRod)
        {
            Consider(mark.NumberPlaces[0]);
        }

        var distance = Math.Sqrt(best);
        var radius = Plate.RadiusOfMark(mark.Number);
        if (distance > radius + 2)
        {
            var (x, y) = ((nearest.X - number.CentreX) / distance, (nearest.Y - number.CentreY) / distance);
            svg.Line("gs-finding-leader", number.CentreX + (x * radius), number.CentreY + (y * radius), nearest.X, nearest.Y);
        }

        void Consider((double X, double Y) place)
        {
            var square = Math.Pow(place.X - number.CentreX, 2) + Math.Pow(place.Y - number.CentreY, 2);
            if (square < best)
            {
                (nearest, best) = (place, square);
            }
        }
    }
}
