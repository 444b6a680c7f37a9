using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Plan;

/// <summary>All that is written into a plan, found a place for together: numbers of findings, names, the viewer's caption, lengths of gaps.</summary>
internal sealed class PlanLabels
{
    private const double GapText = 12;
    private const double CaptionText = 15;
    private const double CaptionLine = 17;
    private const double BeyondMark = 2;
    private const double SteepestLine = 50;
    private readonly PlanLayout layout;
    private readonly List<GapLine> gaps;
    private readonly List<FindingMark> marks;
    private readonly string unit;
    private readonly PlanLayer? layer;
    private readonly List<(int Label, FindingMark Mark)> askedMarks = [];
    private readonly List<(int Label, DrawnTrunk Trunk, string Shown, string Whole)> askedNames = [];
    private readonly List<(int Label, GapLine Gap, string Text, double Turn)> askedGaps = [];
    private LabelPlacement?[] places = [];
    private int captionLabel;
    private string[] caption = [];
    private double nameSize;
    private double eyeX;

    /// <summary>Starts with nothing asked for.</summary>
    /// <param name="layout">The plan.</param>
    /// <param name="gaps">Its gaps; those under a rod are moved beside it.</param>
    /// <param name="marks">Its findings' strokes.</param>
    /// <param name="units">The units that are read.</param>
    /// <param name="layer">What the plan carries besides; null for nothing.</param>
    public PlanLabels(PlanLayout layout, List<GapLine> gaps, List<FindingMark> marks, UnitSystem units, PlanLayer? layer)
    {
        this.layout = layout;
        this.layer = layer;
        this.gaps = gaps;
        this.marks = marks;
        unit = DrawnLength.UnitFor(Length.FromMillimetres(Math.Min(1e9, layout.Extents.Width / layout.Scale)), units);
        Placer = new LabelPlacer(layout.LabelPage);
        MoveGapsBesideRods();
    }

    /// <summary>Finds the places.</summary>
    public LabelPlacer Placer { get; }

    /// <summary>Where a label stands that was asked for beside the plan's own.</summary>
    /// <param name="label">What the placer gave for it, before <see cref="Find"/>.</param>
    /// <returns>The place; null where there was no room.</returns>
    public LabelPlacement? PlaceOf(int label) => places[label];

    /// <summary>Asks for all labels and finds their places.</summary>
    /// <param name="eye">The viewer.</param>
    /// <param name="named">The trunks to name, the most important first.</param>
    public void Find(ViewerEye eye, DrawnTrunk[] named)
    {
        AddObstacles(eye);
        AskMarks();
        AskNames(named);
        AskCaption(eye);
        AskGaps();
        places = Placer.Place();
    }

    /// <summary>Writes the dotted lines of the gaps.</summary>
    /// <param name="svg">Where to.</param>
    public void WriteGapLines(SvgWriter svg)
    {
        foreach (var gap in gaps)
        {
            var (first, last) = gap.Free;
            if (last > first)
            {
                var from = gap.At(first);
                var to = gap.At(last);
                svg.Line("gs-gap", from.X, from.Y, to.X, to.Y);
            }
        }
    }

    /// <summary>Writes the findings' strokes and numbers.</summary>
    /// <param name="svg">Where to.</param>
    public void WriteFindings(SvgWriter svg)
    {
        foreach (var (label, mark) in askedMarks)
        {
            FindingMarks.Write(svg, layout, mark, places[label]?.Box);
        }
    }

    /// <summary>Writes lengths, names with their leaders, and the viewer's caption.</summary>
    /// <param name="svg">Where to.</param>
    public void WriteNames(SvgWriter svg)
    {
        foreach (var (label, _, text, turn) in askedGaps)
        {
            if (places[label] is { } place)
            {
                // The baseline runs below the middle of the box by the half of a numeral's height.
                var (sin, cos) = Math.SinCos(turn * Math.PI / 180);
                var drop = GapText * 0.25;
                svg.Text("gs-gap-length", place.Box.CentreX - (sin * drop), place.Box.CentreY + (cos * drop), GapText, text, TextAnchor.Middle, turnDegrees: turn);
            }
        }

        foreach (var (label, trunk, _, _) in askedNames)
        {
            if (places[label] is { HasLeader: true } place)
            {
                NameLeader.Write(svg, trunk.X, trunk.Y, trunk.FlareRadius, place.Box);
            }
        }

        foreach (var (label, trunk, shown, whole) in askedNames)
        {
            if (places[label] is { } place)
            {
                var (x, anchor) = TowardWhatItNames(place.Box, trunk.X);
                svg.Text(
                    trunk.State.Presence == Presence.Removed ? "gs-name-gone" : "gs-name",
                    x,
                    place.Box.CentreY + (nameSize * 0.255),
                    nameSize,
                    shown,
                    anchor,
                    trunk.Origin,
                    title: shown == whole ? null : whole);
            }
        }

        if (places[captionLabel] is { } beside)
        {
            var (x, anchor) = TowardWhatItNames(beside.Box, eyeX);
            for (var line = 0; line < caption.Length; line++)
            {
                var y = beside.Box.CentreY + ((line - ((caption.Length - 1) / 2.0)) * CaptionLine);
                svg.Text("gs-caption", x, y + (CaptionText * 0.255), CaptionText, caption[line], anchor);
            }
        }
    }

    // The box is kept wider than the text is likely to be, so the text stands at the end that is nearer to what it names.
    private static (double X, TextAnchor Anchor) TowardWhatItNames(Box box, double x) =>
        x < box.Left + (box.Width * 0.2) ? (box.Left + 3, TextAnchor.Start)
        : x > box.Right - (box.Width * 0.2) ? (box.Right - 3, TextAnchor.End)
        : (box.CentreX, TextAnchor.Middle);

    // A gap whose line a rod runs along is drawn beside it, as a length is on a surveyor's sheet.
    private void MoveGapsBesideRods()
    {
        foreach (var gap in gaps)
        {
            foreach (var rod in marks.Where(mark => mark.IsRod))
            {
                if (DistanceToRod(rod, gap.From) < gap.From.Radius + 3 && DistanceToRod(rod, gap.To) < gap.To.Radius + 3)
                {
                    gap.Beside = Math.Max(gap.Beside, 7);
                }
            }
        }
    }

    private static double DistanceToRod(FindingMark rod, DrawnTrunk trunk)
    {
        var (from, to) = (rod.Stroke[0], rod.Stroke[1]);
        var (x, y) = (to.X - from.X, to.Y - from.Y);
        var square = Math.Max(1e-9, (x * x) + (y * y));
        var share = Math.Clamp((((trunk.X - from.X) * x) + ((trunk.Y - from.Y) * y)) / square, 0, 1);
        return Math.Sqrt(Math.Pow(trunk.X - from.X - (x * share), 2) + Math.Pow(trunk.Y - from.Y - (y * share), 2));
    }

    private void AddObstacles(ViewerEye eye)
    {
        Placer.Obstacles.Expect(layout.Trunks.Length + 1);
        Placer.Obstacles.Avoid(eye.Box);
        PlanObstacles.Add(Placer.Obstacles, layout);
        foreach (var mark in marks)
        {
            for (var i = 1; i < mark.Stroke.Length; i++)
            {
                Placer.Obstacles.AvoidLine(mark.Stroke[i - 1].X, mark.Stroke[i - 1].Y, mark.Stroke[i].X, mark.Stroke[i].Y, 22);
            }
        }

        foreach (var gap in gaps)
        {
            var (from, to) = (gap.At(0), gap.At(1));
            Placer.Obstacles.AvoidLine(from.X, from.Y, to.X, to.Y, 7);
        }
    }

    private void AskMarks()
    {
        foreach (var mark in marks)
        {
            var size = (2 * Plate.RadiusOfMark(mark.Number)) + 4;
            var anchor = mark.NumberPlaces[0];
            askedMarks.Add((Placer.Ask(new LabelRequest
            {
                Width = size,
                Height = size,
                AnchorX = anchor.X,
                AnchorY = anchor.Y,
                Reach = 4,
                Turn = mark.IsRod ? 0 : 2,
                IsRequired = true,

                // In a wood a number may stand on trunks rather than far from what it tells.
                Bears = layout.Detail == PlanDetail.Full ? 45 : double.PositiveInfinity,
                Candidates = [.. mark.NumberPlaces.Select((place, i) => new LabelCandidate(place.X, place.Y, mark.CostOfPlace(i)))],
            }), mark));
        }
    }

    private void AskNames(DrawnTrunk[] named)
    {
        nameSize = named.Length switch { <= 15 => 20, <= 30 => 17, <= NamesAll => 15, _ => 13 };
        var isRequired = layout.Trunks.Length <= NamesAll;
        foreach (var trunk in named)
        {
            var whole = DrawnText.Clean(trunk.Name);
            var shown = DrawnText.Shortened(whole, nameSize * (named.Length > 30 ? 11 : 14), nameSize, Face.Italic);
            var width = TextMetrics.ReservedWidth(shown, nameSize, Face.Italic) + 6;
            var height = nameSize * (TextMetrics.Ascent + TextMetrics.Descent);
            var reach = Math.Max(trunk.FlareRadius, layer?.ReachOf(trunk) ?? 0);
            var candidates = LabelRequest.Around(trunk.X, trunk.Y, trunk.FlareRadius, width, height);
            if (reach > trunk.FlareRadius)
            {
                candidates.AddRange(LabelRequest.Around(trunk.X, trunk.Y, reach, width, height).Select(place => place with { Cost = place.Cost + BeyondMark }));
            }

            askedNames.Add((Placer.Ask(new LabelRequest
            {
                Width = width,
                Height = height,
                AnchorX = trunk.X,
                AnchorY = trunk.Y,
                Reach = reach,
                Turn = 1,
                IsRequired = isRequired,
                Candidates = candidates,
            }), trunk, shown, whole));
        }
    }

    private const int NamesAll = 60;

    private void AskCaption(ViewerEye eye)
    {
        caption = eye.Caption;
        eyeX = eye.X;
        var width = caption.Max(line => TextMetrics.ReservedWidth(line, CaptionText, Face.Italic)) + 6;
        var height = ((caption.Length - 1) * CaptionLine) + (CaptionText * (TextMetrics.Ascent + TextMetrics.Descent));
        captionLabel = Placer.Ask(new LabelRequest
        {
            Width = width,
            Height = height,
            AnchorX = eye.X,
            AnchorY = eye.Y,
            Reach = 400,
            Turn = 0,
            IsRequired = true,
            Candidates = eye.CaptionPlaces(width, height),
        });
    }

    private void AskGaps()
    {
        foreach (var gap in gaps)
        {
            var text = DrawnLength.Bare(gap.Distance, unit);
            var width = TextMetrics.ReservedWidth(text, GapText) + 2;
            const double Height = GapText * 1.1;
            var (first, last) = gap.Free;
            var slope = Math.Atan2(gap.To.Y - gap.From.Y, gap.To.X - gap.From.X) * 180 / Math.PI;
            slope = Math.Round(slope > 90 ? slope - 180 : slope <= -90 ? slope + 180 : slope, 1);

            // Along the line where there is room; upright beside one that is short, or so steep that 66 and 99 would read alike.
            var isUpright = (last - first) * gap.PixelLength < width || Math.Abs(slope) > SteepestLine;
            var turn = isUpright ? 0 : slope;
            var (sin, cos) = Math.SinCos(turn * Math.PI / 180);
            var candidates = isUpright ? UprightPlaces(gap, slope, width, Height) : new List<LabelCandidate>();
            foreach (var share in isUpright ? [] : (ReadOnlySpan<double>)[0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74])
            {
                foreach (var beside in (ReadOnlySpan<double>)[8, -8])
                {
                    var (x, y) = gap.At(first + ((last - first) * share), beside);
                    candidates.Add(new LabelCandidate(x, y, Math.Abs(share - 0.5) * 20));
                }
            }

            askedGaps.Add((Placer.Ask(new LabelRequest
            {
                Width = (Math.Abs(cos) * width) + (Math.Abs(sin) * Height),
                Height = (Math.Abs(sin) * width) + (Math.Abs(cos) * Height),
                AnchorX = gap.At(0.5).X,
                AnchorY = gap.At(0.5).Y,
                Reach = 20,
                Turn = 3,
                Candidates = candidates,
            }), gap, text, turn));
        }
    }

    private static List<LabelCandidate> UprightPlaces(GapLine gap, double slope, double width, double height)
    {
        var (sin, cos) = Math.SinCos(slope * Math.PI / 180);
        var (first, last) = gap.Free;
        var clear = (Math.Abs(sin) * width / 2) + (Math.Abs(cos) * height / 2) + 2;
        var middle = Math.Clamp((first + last) / 2, 0, 1);
        var spread = Math.Max(0, last - first) * 0.3;
        var places = new List<LabelCandidate>();
        for (var step = 0; step < 4; step++)
        {
            foreach (var share in (ReadOnlySpan<double>)[middle, middle - spread, middle + spread])
            {
                foreach (var side in (ReadOnlySpan<int>)[1, -1])
                {
                    var (x, y) = gap.At(share, side * (clear + (step * 4)));
                    places.Add(new LabelCandidate(x, y, (step * 4) + (share == middle ? 0 : 5)));
                }
            }
        }

        return places;
    }
}
