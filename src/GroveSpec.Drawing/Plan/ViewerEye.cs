using GroveSpec.Drawing.Scene;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Drawing.Plan;

/// <summary>The viewer, as an eye outside the planting at the bearing where the viewer stands.</summary>
internal sealed class ViewerEye
{
    private const double HalfWidth = 26;
    private const double HalfHeight = 9;
    private readonly double towardX;
    private readonly double towardY;
    private readonly string? origin;

    private ViewerEye(PlanLayout layout, Planting planting, UnitSystem units)
    {
        // On the page the back is up; the eye looks the opposite way from where it stands.
        (towardX, towardY) = (-layout.ViewedFrom.Rightward, layout.ViewedFrom.Backward);
        origin = planting.Viewed?.Origin.Id;
        var words = Words(planting, units);

        // Beside the planting there is little room to the page's edge: a line for each part.
        Caption = Math.Abs(towardX) > 0.7 ? [.. words.Select((part, index) => index < words.Count - 1 ? part + "," : part)] : [string.Join(", ", words)];
        var (x, y) = Start(layout);
        X = x;
        Y = y;
        ArrowEndX = x + (towardX * 32);
        ArrowEndY = y + (towardY * 32);
    }

    /// <summary>The eye's middle.</summary>
    public double X { get; }

    /// <summary>The eye's middle, downward.</summary>
    public double Y { get; }

    /// <summary>What is said of it, in lines.</summary>
    public string[] Caption { get; }

    /// <summary>The eye and its arrow.</summary>
    public Box Box => Box.About(X, Y, (2 * HalfWidth) + 4, (2 * HalfHeight) + 4).With(Box.About(ArrowEndX, ArrowEndY, 10, 10));

    private double ArrowEndX { get; }

    private double ArrowEndY { get; }

    /// <summary>The eye of a planting's viewer.</summary>
    /// <param name="layout">The plan.</param>
    /// <param name="planting">The planting.</param>
    /// <param name="units">The units that are read.</param>
    /// <returns>The eye; at the front where nobody says otherwise.</returns>
    public static ViewerEye Of(PlanLayout layout, Planting planting, UnitSystem units) => new(layout, planting, units);

    /// <summary>Writes it.</summary>
    /// <param name="svg">Where to.</param>
    public void Write(SvgWriter svg)
    {
        svg.OpenGroup("gs-viewer", origin);
        svg.BeginPath("gs-eye");
        svg.MoveTo(X - HalfWidth, Y);
        svg.CurveTo(X - (HalfWidth * 0.45), Y - (HalfHeight * 1.35), X + (HalfWidth * 0.45), Y - (HalfHeight * 1.35), X + HalfWidth, Y);
        svg.CurveTo(X + (HalfWidth * 0.5), Y + HalfHeight, X - (HalfWidth * 0.5), Y + HalfHeight, X - HalfWidth, Y);
        svg.ClosePath();
        svg.EndPath();
        svg.Circle("gs-iris", X, Y - 0.8, 5.4);
        svg.Circle("gs-pupil", X, Y - 0.8, 2.1);
        svg.BeginPath("gs-lashes");
        foreach (var share in (ReadOnlySpan<double>)[-0.62, -0.3, 0, 0.3, 0.62])
        {
            var top = Y - (HalfHeight * (1.02 - (share * share * 0.95)));
            svg.MoveTo(X + (share * HalfWidth), top - 1.5);
            svg.LineTo(X + (share * HalfWidth * 1.14), top - 6);
        }

        svg.EndPath();
        var (startX, startY) = (ArrowEndX - (towardX * 13), ArrowEndY - (towardY * 13));
        svg.BeginPath("gs-arrow");
        svg.MoveTo(startX, startY);
        svg.LineTo(ArrowEndX, ArrowEndY);
        svg.MoveTo(ArrowEndX - (towardX * 5) + (towardY * 4), ArrowEndY - (towardY * 5) - (towardX * 4));
        svg.LineTo(ArrowEndX, ArrowEndY);
        svg.LineTo(ArrowEndX - (towardX * 5) - (towardY * 4), ArrowEndY - (towardY * 5) + (towardX * 4));
        svg.EndPath();
        svg.CloseGroup();
    }

    /// <summary>Where its caption could stand.</summary>
    /// <param name="width">The width of the caption's box.</param>
    /// <param name="height">The height of the caption's box.</param>
    /// <returns>Beside it first, then below and above, then along the foot of the plot.</returns>
    public List<LabelCandidate> CaptionPlaces(double width, double height)
    {
        var places = new List<LabelCandidate>();
        for (var step = 0; step < 12; step++)
        {
            places.Add(new LabelCandidate(X + HalfWidth + 12 + (width / 2) + (step * 12), Y, step * 2));
            places.Add(new LabelCandidate(X - HalfWidth - 12 - (width / 2) - (step * 12), Y, 1 + (step * 2)));
            for (var shift = -4; shift <= 4; shift++)
            {
                var cost = 3 + (step * 3) + Math.Abs(shift);
                places.Add(new LabelCandidate(X + (shift * width / 8), Y + HalfHeight + 6 + (height / 2) + (step * 12), cost));
                places.Add(new LabelCandidate(X + (shift * width / 8), Y - HalfHeight - 12 - (height / 2) - (step * 12), cost + 1));
            }
        }

        return places;
    }

    // From the middle of the plan outward along the bearing until all that is drawn to scale lies behind.
    private (double X, double Y) Start(PlanLayout layout)
    {
        var box = layout.Extents;
        var (fromX, fromY) = (Math.Clamp(layout.ToX(0), box.Left, box.Right), Math.Clamp(layout.ToY(0), box.Top, box.Bottom));
        var acrossRoom = towardX == 0 ? double.PositiveInfinity : ((towardX < 0 ? box.Right : box.Left) - fromX) / -towardX;
        var alongRoom = towardY == 0 ? double.PositiveInfinity : ((towardY < 0 ? box.Bottom : box.Top) - fromY) / -towardY;
        var toEdge = Math.Min(acrossRoom, alongRoom);
        if (layout.DialRadiusMm > 0)
        {
            toEdge = (layout.DialRadiusMm * layout.Scale) + 38;
        }
        else if (RimReach(layout, fromX, fromY) is { } rim)
        {
            toEdge = Math.Min(toEdge, Math.Max(rim, CrownReach(layout, fromX, fromY)));
        }

        var clearance = 42 + (HalfWidth * 0.5 * Math.Abs(towardX));
        return (
            Math.Clamp(fromX - (towardX * (toEdge + clearance)), HalfWidth + 8, PlanLayout.PageWidth - HalfWidth - 8),
            Math.Clamp(fromY - (towardY * (toEdge + clearance)), layout.PlotTop + 18, layout.PlotBottom - 14));
    }

    private double CrownReach(PlanLayout layout, double fromX, double fromY)
    {
        double farthest = 0;
        foreach (var trunk in layout.Trunks.Where(trunk => trunk.CrownRadius > 0))
        {
            var (x, y) = trunk.CrownCentre;
            var along = ((x - fromX) * -towardX) + ((y - fromY) * -towardY);
            var beside = Math.Max(0, Math.Abs(((x - fromX) * towardY) - ((y - fromY) * towardX)) - HalfWidth);
            if (beside < trunk.CrownRadius)
            {
                farthest = Math.Max(farthest, along + Math.Sqrt((trunk.CrownRadius * trunk.CrownRadius) - (beside * beside)));
            }
        }

        return farthest;
    }

    private double? RimReach(PlanLayout layout, double fromX, double fromY)
    {
        double? farthest = null;
        var rim = layout.RimOnPage;
        for (var i = 0; i < rim.Length; i++)
        {
            var (a, b) = (rim[i], rim[(i + 1) % rim.Length]);
            var (sideX, sideY) = (b.X - a.X, b.Y - a.Y);
            var cross = (-towardX * sideY) + (towardY * sideX);
            if (Math.Abs(cross) < 1e-9)
            {
                continue;
            }

            var along = (((a.X - fromX) * sideY) - ((a.Y - fromY) * sideX)) / cross;
            var share = (((a.X - fromX) * -towardY) + ((a.Y - fromY) * towardX)) / cross;
            if (along > 0 && share is >= 0 and <= 1)
            {
                farthest = Math.Max(farthest ?? 0, along);
            }
        }

        return farthest;
    }

    private static List<string> Words(Planting planting, UnitSystem units)
    {
        var viewed = planting.Viewed;
        var from = viewed?.From ?? Bearing.Front;
        var side = from.Degrees switch
        {
            0 => "from the back",
            90 => "from the right",
            180 => "from the front",
            270 => "from the left",
            _ => $"from {DrawnLength.Plain(from.Degrees, 1)}°",
        };
        var words = new List<string> { $"seen {side}" };
        if (viewed?.Distance is { } distance)
        {
            words.Add($"{DrawnLength.Text(distance, units)} away");
        }

        if (viewed?.EyeHeight is { } eye)
        {
            words.Add($"eye at {DrawnLength.Text(eye, units)}");
        }

        return words;
    }
}
