using GroveSpec.Checks.Ground;
using GroveSpec.Checks.Moving;
using GroveSpec.Drawing.Plan;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Ground;

/// <summary>What a plan with free ground carries besides: the ground, what bounds it, the spots, and where the trunk has its place now.</summary>
internal sealed class GroundLayer : PlanLayer
{
    private const double LeastHatch = 5;
    private const double MarkRoom = 24;
    private const double CostOfOutline = 6;

    private readonly GroundAnswer answer;
    private readonly Length diameter;
    private readonly GroundBounds bounds;
    private readonly PresentPlace? present;
    private readonly List<int> asked = [];

    /// <summary>Prepares the layer.</summary>
    /// <param name="state">The planting on its day, with the trunk that ground is looked for.</param>
    /// <param name="answer">What was found.</param>
    /// <param name="units">The units that are read.</param>
    public GroundLayer(PlantingState state, GroundAnswer answer, UnitSystem units)
    {
        this.answer = answer;
        diameter = answer.Trunk?.Diameter?.Value ?? Length.Zero;
        bounds = new(answer, diameter);
        present = PresentPlace.Of(answer.IsOneMore ? null : state.Trunks.FirstOrDefault(trunk => trunk.Name == answer.Trunk?.Name));
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
    public override string NoteOn(PlanLayout layout) => DrawnText.Clean(string.Join(' ', [Note, .. present is null ? [] : new[] { present.Meaning }, .. bounds.MeaningOn(layout)]));

    /// <inheritdoc/>
    public override IEnumerable<PlanPoint> Reaches =>
    [
        .. answer.Outline.SelectMany(ring => ring),
        .. answer.Spots.SelectMany(spot => Corners(spot.Place, spot.Room + (diameter * 0.5))),
        .. present?.Corners ?? [],
    ];

    /// <inheritdoc/>
    public override StyleSheet Sheet() => GroundStyle.Sheet();

    /// <inheritdoc/>
    public override void WriteBelow(SvgWriter svg, PlanLayout layout)
    {
        var rings = answer.Outline.Select(ring => ring.Select(point => (X: layout.ToX(point.X.Millimetres), Y: layout.ToY(point.Y.Millimetres))).ToArray()).Where(ring => ring.Length >= 3).ToArray();
        bounds.Write(svg, layout);
        if (rings.Length > 0)
        {
            WriteFree(svg, rings);
        }

        present?.WriteRing(svg, layout);
    }

    /// <inheritdoc/>
    public override void Ask(LabelPlacer placer, PlanLayout layout)
    {
        asked.Clear();
        foreach (var ring in answer.Outline)
        {
            for (var index = 0; index < ring.Length; index++)
            {
                var (from, to) = (ring[index], ring[(index + 1) % ring.Length]);
                placer.Obstacles.AvoidLine(layout.ToX(from.X.Millimetres), layout.ToY(from.Y.Millimetres), layout.ToX(to.X.Millimetres), layout.ToY(to.Y.Millimetres), CostOfOutline);
            }
        }

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

        present?.Ask(placer, layout);
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

        present?.WriteName(svg, layout, labels);
    }

    private static void WriteFree(SvgWriter svg, (double X, double Y)[][] rings)
    {
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

    private (double X, double Y, double Radius) OnPage(PlanLayout layout, GroundSpot spot) =>
        (layout.ToX(spot.Place.X.Millimetres), layout.ToY(spot.Place.Y.Millimetres), Math.Max(diameter.Millimetres / 2 * layout.Scale, 2.5));

    private static PlanPoint[] Corners(PlanPoint place, Length far) => [new(place.X - far, place.Y - far), new(place.X + far, place.Y + far)];
}
