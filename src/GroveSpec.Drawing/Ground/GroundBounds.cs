using GroveSpec.Checks.Ground;
using GroveSpec.Craft.Composition;
using GroveSpec.Drawing.Plan;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Drawing.Ground;

/// <summary>The circles and strips at which the nearest findings of the spots begin, and what they mean.</summary>
internal sealed class GroundBounds
{
    private readonly Length diameter;
    private readonly double lineLimit;
    private readonly List<(string Centre, string Other, PlanPoint Place, Length Gap)> circles = [];
    private readonly List<(string One, string Other, TrunkSection OneSection, TrunkSection OtherSection)> strips = [];

    /// <summary>Finds what bounds the spots.</summary>
    /// <param name="answer">What was found.</param>
    /// <param name="diameter">The thickness of the trunk that ground is looked for.</param>
    public GroundBounds(GroundAnswer answer, Length diameter)
    {
        (this.diameter, lineLimit) = (diameter, answer.LineLimit);
        var standing = StandingTrunks.Of(answer.Without!);
        var found = new HashSet<string>(StringComparer.Ordinal);
        foreach (var spot in answer.Spots.Where(spot => spot is { LimitedBy: not null, LimitedByTrunks.Length: 2 }))
        {
            var (one, other) = (spot.LimitedByTrunks[0], spot.LimitedByTrunks[1]);
            if (!found.Add($"{spot.LimitedBy} {one} {other}") || Find(standing, one) is not { } first || Find(standing, other) is not { } second)
            {
                continue;
            }

            if (spot.LimitedBy == "three-in-line")
            {
                strips.Add((one, other, first, second));
            }
            else if (spot.LimitedBy == "even-gaps")
            {
                AddCircle(one, other, first.Centre, second.Centre, spot.NearestEdge!.Value);
            }
        }
    }

    /// <summary>What the circles and strips mean that a plan shows.</summary>
    /// <param name="layout">The plan.</param>
    /// <returns>A sentence for each kind; none where nothing of it lies within the rim.</returns>
    public IEnumerable<string> MeaningOn(PlanLayout layout)
    {
        var shown = circles.Where(circle => RimClip.Pieces(layout.RimOnPage, Circle(layout, circle.Place, circle.Gap)).Any()).ToArray();
        if (shown.Length == 1)
        {
            var centre = DrawnText.Isolated(shown[0].Centre);
            yield return $"On the thin circle round {centre} even gaps begin: a trunk there would stand nearly as far from {centre} as {DrawnText.Isolated(shown[0].Other)} does.";
        }
        else if (shown.Length > 1)
        {
            yield return "On each thin circle even gaps begin: a trunk there would stand nearly as far from the one in the middle of the circle as another does.";
        }

        var lines = strips.Where(strip => Sides(layout, strip.OneSection, strip.OtherSection).Any(side => RimClip.Pieces(layout.RimOnPage, side).Any())).ToArray();
        if (lines.Length == 1)
        {
            yield return $"Between the thin broken lines a trunk would stand in one line with {DrawnText.Isolated(lines[0].One)} and {DrawnText.Isolated(lines[0].Other)}.";
        }
        else if (lines.Length > 1)
        {
            yield return "Between two thin broken lines a trunk would stand in one line with two others.";
        }
    }

    /// <summary>Writes what of them lies within the rim.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="layout">The plan.</param>
    public void Write(SvgWriter svg, PlanLayout layout)
    {
        foreach (var strip in strips)
        {
            foreach (var side in Sides(layout, strip.OneSection, strip.OtherSection))
            {
                RimClip.Write(svg, "gs-strip", layout.RimOnPage, side);
            }
        }

        foreach (var circle in circles)
        {
            RimClip.Write(svg, "gs-ring", layout.RimOnPage, Circle(layout, circle.Place, circle.Gap));
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

    /// <summary>The circle about the trunk that stands nearly as far from the other as from the place where the finding begins; none where that place is as far from both.</summary>
    private void AddCircle(string one, string other, PlanPoint oneCentre, PlanPoint otherCentre, PlanPoint edge)
    {
        Length left = edge.DistanceTo(oneCentre), right = edge.DistanceTo(otherCentre), between = oneCentre.DistanceTo(otherCentre);
        var (fromBoth, fromOne, fromOther) = (Likeness.DifferenceInPercent(left, right), Likeness.DifferenceInPercent(left, between), Likeness.DifferenceInPercent(right, between));
        if (fromBoth <= fromOne && fromBoth <= fromOther)
        {
            return;
        }

        var circle = fromOne <= fromOther ? (one, other, oneCentre, left) : (other, one, otherCentre, right);
        if (circle.Item4 > Length.Zero)
        {
            circles.Add(circle);
        }
    }

    private (double X, double Y)[][] Sides(PlanLayout layout, TrunkSection one, TrunkSection other)
    {
        var reach = Length.FromMillimetres(Math.Min(1e6, (layout.Extents.Width + layout.Extents.Height) / layout.Scale));
        var outline = LineStrip.Between(one, other, diameter * 0.5, lineLimit, reach);
        (double X, double Y)[] points = [.. outline.Select(point => (layout.ToX(point.X.Millimetres), layout.ToY(point.Y.Millimetres)))];
        return points.Length == 0 ? [] : [points[..4], points[4..]];
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
}
