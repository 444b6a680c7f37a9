using GroveSpec.Checks;
using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Front;

/// <summary>The marks of findings about the view: dash-dot lines and numbered rings, and a band of gap lines below the picture.</summary>
internal sealed class FindingMarks
{
    /// <summary>The height of one line of gaps.</summary>
    public const double BandHeight = 23;

    private const string CentreLine = "centred-main";
    private const string HiddenTrunk = "hidden-trunk";

    private static readonly string[] ViewChecks = [HiddenTrunk, "even-gaps-in-view", "level-tops", CentreLine, "depth-reversed"];

    private readonly List<(int Number, Finding Finding)> findings = [];

    /// <summary>Picks the findings that are about the view.</summary>
    /// <param name="subject">What is drawn.</param>
    public FindingMarks(DrawingSubject subject)
    {
        for (var index = 0; index < subject.Findings.Length; index++)
        {
            if (IsOfView(subject.Findings[index]))
            {
                findings.Add((index + 1, subject.Findings[index]));
            }
        }
    }

    /// <summary>The numbers of the findings, as everywhere: the place in the list, from 1.</summary>
    public List<int> Numbers => [.. findings.Select(finding => finding.Number)];

    /// <summary>The trunks that are told to be hidden.</summary>
    public IEnumerable<string> HiddenTrunks => findings.Where(finding => finding.Finding.Check.Name == HiddenTrunk).SelectMany(finding => finding.Finding.Trunks);

    /// <summary>Their sentences.</summary>
    public IEnumerable<string> Sentences => findings.Select(finding => finding.Finding.Message);

    /// <summary>Lays the gap lines out one below the other, so that none meets another.</summary>
    /// <param name="dropOf">Where a trunk's leader drops; null for a trunk that is not seen.</param>
    /// <param name="right">The right end of the picture.</param>
    /// <returns>The lines: number, the places of its ticks from left to right, its ring, its line; and how many lines there are.</returns>
    public (List<(int Number, double[] Ticks, double Ring, int Band)> Gaps, int Bands) LayOutGaps(Func<string, double?> dropOf, double right)
    {
        var gaps = new List<(int Number, double[] Ticks, double Ring, int Band)>();
        var ends = new List<double>();
        foreach (var (number, finding) in findings)
        {
            var ticks = finding.Figures.OfType<Figure.GapInView>()
                .SelectMany(gap => new[] { dropOf(gap.From), dropOf(gap.To) })
                .OfType<double>().Distinct().Order().ToArray();
            if (ticks.Length >= 2)
            {
                var reach = Plate.RadiusOfMark(number) + 5;
                var ring = ticks[^1] + (2 * reach) > right ? ticks[0] - reach : ticks[^1] + reach;
                gaps.Add((number, ticks, ring, 0));
            }
        }

        gaps.Sort((one, other) => (Math.Min(one.Ticks[0], one.Ring), one.Number).CompareTo((Math.Min(other.Ticks[0], other.Ring), other.Number)));
        for (var index = 0; index < gaps.Count; index++)
        {
            var (number, ticks, ring, _) = gaps[index];
            var band = ends.FindIndex(end => end < Math.Min(ticks[0], ring - 14));
            if (band < 0)
            {
                band = ends.Count;
                ends.Add(0);
            }

            ends[band] = Math.Max(ticks[^1], ring + 14) + 6;
            gaps[index] = (number, ticks, ring, band);
        }

        return (gaps, ends.Count);
    }

    /// <summary>Draws the gap lines.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="gaps">What <see cref="LayOutGaps"/> gave.</param>
    /// <param name="top">The upper edge of the first line.</param>
    public static void DrawGaps(SvgWriter svg, List<(int Number, double[] Ticks, double Ring, int Band)> gaps, double top)
    {
        foreach (var (number, ticks, ring, band) in gaps)
        {
            var y = top + ((band + 0.5) * BandHeight);
            svg.BeginPath("gs-finding");
            for (var tick = 1; tick < ticks.Length; tick++)
            {
                svg.MoveTo(ticks[tick - 1] + 2, y);
                svg.LineTo(ticks[tick] - 2, y);
            }

            svg.EndPath();
            svg.BeginPath("gs-tick");
            foreach (var tick in ticks)
            {
                svg.MoveTo(tick, y - 5);
                svg.LineTo(tick, y + 5);
            }

            svg.EndPath();
            Plate.WriteMark(svg, ring, y, number, null);
        }
    }

    /// <summary>Draws the lines and rings over the picture.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="room">Where numbers may stand.</param>
    /// <param name="trunkOf">A trunk's figure; null for a trunk that is not seen.</param>
    /// <param name="centre">Where the centre line runs.</param>
    /// <param name="picture">The picture's box, which the centre line crosses.</param>
    public void DrawOver(SvgWriter svg, Box room, Func<string, TrunkFigure?> trunkOf, double centre, Box picture)
    {
        var placer = new LabelPlacer(room);
        var asked = new List<(int Number, Spot[] Starts)>();
        foreach (var (number, finding) in findings)
        {
            if (finding.Check.Name == CentreLine)
            {
                var y = picture.Top - 4;
                svg.Line("gs-finding", centre, y, centre, picture.Bottom);
                Ask(placer, asked, number, [new Spot(centre, y)], 0, [new(centre, y - 12, 0), new(centre + 14, y, 1), new(centre - 14, y, 1)]);
                continue;
            }

            foreach (var figure in finding.Figures)
            {
                Draw(svg, placer, asked, number, figure, trunkOf);
            }
        }

        var places = placer.Place();
        for (var index = 0; index < asked.Count; index++)
        {
            if (places[index] is { } place)
            {
                // A number that does not touch its line has a fine lead to the nearest place of it.
                var (number, starts) = asked[index];
                var ring = new Spot(place.Box.CentreX, place.Box.CentreY);
                var start = starts.MinBy(spot => (spot - ring).Size);
                if ((start - ring).Size > Plate.RadiusOfMark(number) + 3)
                {
                    svg.Line("gs-finding-leader", start.X, start.Y, ring.X, ring.Y);
                }

                Plate.WriteMark(svg, place.Box.CentreX, place.Box.CentreY, number, null);
            }
        }
    }

    private static bool IsOfView(Finding finding) =>
        Array.IndexOf(ViewChecks, finding.Check.Name) >= 0
        || finding.Figures.Any(figure => figure is Figure.GapInView or Figure.Tops);

    private static void Draw(
        SvgWriter svg, LabelPlacer placer, List<(int Number, Spot[] Starts)> asked, int number, Figure figure, Func<string, TrunkFigure?> trunkOf)
    {
        switch (figure)
        {
            case Figure.Tops tops when trunkOf(tops.From) is { } from && trunkOf(tops.To) is { } to:
                var (left, right) = from.Tip.X <= to.Tip.X ? (from.Tip, to.Tip) : (to.Tip, from.Tip);
                var way = right - left;
                var past = way * (18 / Math.Max(18, way.Size));
                var (start, end) = (left - past, right + past);
                svg.Line("gs-finding", start.X, start.Y, end.X, end.Y);
                placer.Obstacles.AvoidLine(start.X, start.Y, end.X, end.Y, 20);
                Ask(placer, asked, number, [end, start], 0, [new(end.X + 11, end.Y, 0), new(start.X - 11, start.Y, 0.5), .. LabelRequest.Around(end.X, end.Y, 2, 20, 20)]);
                break;
            case Figure.Ring ring when trunkOf(ring.Name) is { } trunk:
                var (across, up) = ((trunk.FootHalf * 1.25) + 5, (trunk.Dip * 1.3) + 4);
                svg.BeginPath("gs-finding");
                new Pen(svg).Ellipse(trunk.Foot, across, up);
                svg.EndPath();
                var edge = Enumerable.Range(0, 24).Select(step => new Spot(trunk.Foot.X + (across * Math.Cos(step * Math.Tau / 24)), trunk.Foot.Y + (up * Math.Sin(step * Math.Tau / 24))));
                Ask(placer, asked, number, [.. edge], across, LabelRequest.Around(trunk.Foot.X, trunk.Foot.Y, across, 20, 20));
                break;
        }
    }

    private static void Ask(
        LabelPlacer placer, List<(int Number, Spot[] Starts)> asked, int number, Spot[] starts, double reach, List<LabelCandidate> candidates)
    {
        var size = (2 * Plate.RadiusOfMark(number)) + 3;
        var anchor = reach > 0 ? new Spot(starts.Average(spot => spot.X), starts.Average(spot => spot.Y)) : starts[0];
        placer.Ask(new LabelRequest
        {
            Width = size,
            Height = size,
            AnchorX = anchor.X,
            AnchorY = anchor.Y,
            Reach = reach,
            Turn = number,
            IsRequired = true,
            Candidates = candidates,
        });
        asked.Add((number, starts));
    }
}
