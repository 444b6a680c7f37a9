using GroveSpec.Checks.Ground;
using GroveSpec.Checks.Moving;
using GroveSpec.Craft.Composition;
using GroveSpec.Drawing.Plan;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Drawing.Ground;

/// <summary>What a plan with free ground carries besides: the ground, what bounds it, and the spots.</summary>
internal sealed class GroundLayer : PlanLayer
{
    private const double LeastHatch = 5;
    private const double MarkRoom = 24;

    private readonly GroundAnswer answer;
    private readonly Length diameter;
    private readonly List<int> asked = [];

    /// <summary>Prepares the layer.</summary>
    /// <param name="answer">What was found.</param>
    /// <param name="units">The units that are read.</param>
    public GroundLayer(GroundAnswer answer, UnitSystem units)
    {
        this.answer = answer;
        diameter = answer.Trunk?.Diameter?.Value ?? Length.Zero;
        Sentences = [.. answer.Spots.Select(spot => $"{PlaceWording.Say(spot.Place, units)}. {spot.Why}")];
        var about = answer.IsOneMore ? "one more trunk" : DrawnText.Isolated(answer.Trunk!.Name);
        var thick = DrawnLength.Text(diameter, units);
        var high = answer.Trunk?.Height is { } height ? $", {DrawnLength.Text(height.Value, units)} high" : "";
        Remark = DrawnText.Clean($"Free ground for {about}, {thick} thick{high} · from above");
        Note = answer.Outline.IsEmpty
            ? "No ground is free: the numbered rings are the least bad spots."
            : "Hatched ground is free for the middle of the trunk. Numbered rings are the best spots; the dotted ring round each is as far as its bark may come.";
    }

    /// <inheritdoc/>
    public override string Title => "free ground";

    /// <inheritdoc/>
    public override string Mark => GroundStyle.Mark;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Sentences { get; }

    /// <inheritdoc/>
    public override string Remark { get; }

    /// <inheritdoc/>
    public override string Note { get; }

    /// <inheritdoc/>
    public override IEnumerable<PlanPoint> Reaches =>
    [
        .. answer.Outline.SelectMany(ring => ring),
        .. answer.Spots.SelectMany(spot => Corners(spot.Place, spot.Room + (diameter * 0.5))),
    ];

    /// <inheritdoc/>
    public override StyleSheet Sheet() => GroundStyle.Sheet();

    /// <inheritdoc/>
    public override void WriteBelow(SvgWriter svg, PlanLayout layout)
    {
        var rings = answer.Outline.Select(ring => ring.Select(point => (X: layout.ToX(point.X.Millimetres), Y: layout.ToY(point.Y.Millimetres))).ToArray()).Where(ring => ring.Length >= 3).ToArray();
        WriteBounds(svg, layout);
        if (rings.Length == 0)
        {
            return;
        }

        svg.BeginPath("gs-free");
        foreach (var ring in rings)
        {
            svg.MoveTo(ring[0].X, ring[0].Y);
            foreach (var (x, y) in ring.Skip(1))
            {
                svg.LineTo(x, y);
            }

            svg.ClosePath();
        }

        svg.EndPath();
        svg.BeginPath("gs-free-hatch");
        foreach (var (from, to) in Hatching.Of(rings, LeastHatch))
        {
            svg.MoveTo(from.X, from.Y);
            svg.LineTo(to.X, to.Y);
        }

        svg.EndPath();
    }

    /// <inheritdoc/>
    public override void Ask(LabelPlacer placer, PlanLayout layout)
    {
        asked.Clear();
        foreach (var spot in answer.Spots)
        {
            var (x, y, radius) = OnPage(layout, spot);
            placer.Obstacles.AvoidDisc(x, y, radius + 2, 120);
            asked.Add(placer.Ask(new LabelRequest
            {
                Width = MarkRoom,
                Height = MarkRoom,
                AnchorX = x,
                AnchorY = y,
                Reach = radius,
                Turn = 0,
                IsRequired = true,
                Candidates = LabelRequest.Around(x, y, radius, MarkRoom, MarkRoom),
            }));
        }
    }

    /// <inheritdoc/>
    public override void WriteAbove(SvgWriter svg, PlanLayout layout, PlanLabels labels)
    {
        for (var index = 0; index < answer.Spots.Length; index++)
        {
            var (x, y, radius) = OnPage(layout, answer.Spots[index]);
            if (answer.Spots[index].Room.Millimetres * layout.Scale is > 3 and var room)
            {
                svg.Circle("gs-room", x, y, room + radius);
            }

            svg.Circle("gs-spot", x, y, radius);
            if (labels.PlaceOf(asked[index]) is { } place)
            {
                var (toX, toY) = (place.Box.CentreX - x, place.Box.CentreY - y);
                var length = Math.Max(1e-9, Math.Sqrt((toX * toX) + (toY * toY)));
                if (length > radius + Plate.RadiusOfMark(index + 1) + 3)
                {
                    svg.Line("gs-leader", x + (toX / length * radius), y + (toY / length * radius), x + (toX / length * (length - Plate.RadiusOfMark(index + 1))), y + (toY / length * (length - Plate.RadiusOfMark(index + 1))));
                }

                Plate.WriteMark(svg, place.Box.CentreX, place.Box.CentreY, index + 1, null, GroundStyle.Mark);
            }
        }
    }

    private (double X, double Y, double Radius) OnPage(PlanLayout layout, GroundSpot spot) =>
        (layout.ToX(spot.Place.X.Millimetres), layout.ToY(spot.Place.Y.Millimetres), Math.Max(diameter.Millimetres / 2 * layout.Scale, 2.5));

    /// <summary>The strips and rings at which the spots' nearest findings begin.</summary>
    private void WriteBounds(SvgWriter svg, PlanLayout layout)
    {
        var state = answer.Without!;
        var standing = StandingTrunks.Of(state);
        var drawn = new HashSet<string>(StringComparer.Ordinal);
        foreach (var spot in answer.Spots.Where(spot => spot is { LimitedBy: not null, LimitedByTrunks.Length: 2 }))
        {
            if (drawn.Add($"{spot.LimitedBy} {string.Join(' ', spot.LimitedByTrunks)}")
                && Find(standing, spot.LimitedByTrunks[0]) is { } one && Find(standing, spot.LimitedByTrunks[1]) is { } other)
            {
                if (spot.LimitedBy == "three-in-line")
                {
                    WriteStrip(svg, layout, one, other);
                }
                else if (spot.LimitedBy == "even-gaps")
                {
                    WriteRings(svg, layout, one, other, spot);
                }
            }
        }
    }

    private static TrunkSection? Find(StandingTrunks standing, string name)
    {
        for (var index = 0; index < standing.Count; index++)
        {
            if (standing.Trunks[index].Name == name)
            {
                return standing.Sections[index];
            }
        }

        return null;
    }

    private void WriteStrip(SvgWriter svg, PlanLayout layout, TrunkSection one, TrunkSection other)
    {
        var reach = Length.FromMillimetres(Math.Min(1e6, (layout.Extents.Width + layout.Extents.Height) / layout.Scale));
        var outline = LineStrip.Between(one, other, diameter * 0.5, answer.LineLimit, reach);
        if (!outline.IsEmpty)
        {
            var points = outline.Select(point => (X: layout.ToX(point.X.Millimetres), Y: layout.ToY(point.Y.Millimetres))).ToArray();
            RimClip.Write(svg, "gs-strip", layout.RimOnPage, points[..4]);
            RimClip.Write(svg, "gs-strip", layout.RimOnPage, points[4..]);
        }
    }

    /// <summary>The ring about the trunk that stands as far from the other as the spot would.</summary>
    private static void WriteRings(SvgWriter svg, PlanLayout layout, TrunkSection one, TrunkSection other, GroundSpot spot)
    {
        var edge = spot.NearestEdge!.Value;
        Length left = edge.DistanceTo(one.Centre), right = edge.DistanceTo(other.Centre), between = one.Centre.DistanceTo(other.Centre);
        var (fromBoth, fromOne, fromOther) = (Likeness.DifferenceInPercent(left, right), Likeness.DifferenceInPercent(left, between), Likeness.DifferenceInPercent(right, between));
        var (centre, gap) = fromBoth <= fromOne && fromBoth <= fromOther ? (edge, Length.Zero) : fromOne <= fromOther ? (one.Centre, left) : (other.Centre, right);
        if (gap > Length.Zero)
        {
            RimClip.Write(svg, "gs-ring", layout.RimOnPage, Circle(layout, centre, gap));
        }
    }

    private static (double X, double Y)[] Circle(PlanLayout layout, PlanPoint centre, Length radius)
    {
        const int Pieces = 120;
        var points = new (double X, double Y)[Pieces + 1];
        for (var index = 0; index <= Pieces; index++)
        {
            var (sine, cosine) = Math.SinCos(index * Math.Tau / Pieces);
            points[index] = (layout.ToX(centre.X.Millimetres + (radius.Millimetres * cosine)), layout.ToY(centre.Y.Millimetres + (radius.Millimetres * sine)));
        }

        return points;
    }

    private static PlanPoint[] Corners(PlanPoint place, Length far) => [new(place.X - far, place.Y - far), new(place.X + far, place.Y + far)];
}
