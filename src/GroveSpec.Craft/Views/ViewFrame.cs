using GroveSpec.Model.Containers;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Craft.Views;

/// <summary>
/// A viewer's eye, with nothing left open: a pinhole at a distance from the plan's origin. In the frame turned to the
/// viewer, x to the viewer's right and y away from the viewer, a place (x, y, z) is seen at u = c·x/(y + c) and
/// v = e + c·(z − e)/(y + c), with c the distance and e the eye's height.
/// </summary>
public sealed class ViewFrame
{
    /// <summary>How many times the planting's greatest extent the viewer stands away when the file does not say.</summary>
    internal const double ExtentsAway = 3;

    /// <summary>A place nearer to the eye's own plane than this share of the viewing distance is not seen.</summary>
    internal const double NearestShare = 0.001;

    internal static readonly Length LeastDistance = Length.FromMillimetres(1000);

    private readonly double distanceMillimetres;
    private readonly double eyeMillimetres;
    private readonly double right;
    private readonly double back;

    /// <summary>Makes a view.</summary>
    /// <param name="from">The bearing, from the plan's origin, at which the viewer stands.</param>
    /// <param name="distance">From the plan's origin to the eye, level; above zero.</param>
    /// <param name="eyeHeight">The eye above the soil.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not above zero.</exception>
    public ViewFrame(Bearing from, Length distance, Length eyeHeight)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(distance, Length.Zero);
        From = from;
        Distance = distance;
        EyeHeight = eyeHeight;
        distanceMillimetres = distance.Millimetres;
        eyeMillimetres = eyeHeight.Millimetres;
        (right, back) = Quarter(from);
    }

    /// <summary>The bearing at which the viewer stands.</summary>
    public Bearing From { get; }

    /// <summary>From the plan's origin to the eye, level.</summary>
    public Length Distance { get; }

    /// <summary>The eye above the soil.</summary>
    public Length EyeHeight { get; }

    /// <summary>Whether the file left the distance out.</summary>
    public bool IsDistanceAssumed { get; private init; }

    /// <summary>Whether the file left the eye's height out.</summary>
    public bool IsEyeHeightAssumed { get; private init; }

    /// <summary>The view that a planting states, with what it leaves out filled in.</summary>
    /// <param name="state">The planting on a day.</param>
    /// <returns>
    /// The view. Without a bearing the viewer stands at the front (180 deg). Without a distance, or with one that is not
    /// above zero, three times the planting's greatest extent away and at least 1 m: the extent is the tallest standing trunk,
    /// or twice the distance from the plan's origin to the farthest edge of the container or standing trunk, whichever is
    /// more. Without an eye height, at two thirds of the tallest standing trunk, or a tenth of the distance where no height
    /// is known.
    /// </returns>
    public static ViewFrame Of(PlantingState state)
    {
        var stated = state.Planting.Viewed;
        var reach = ReachMillimetres(state.Planting.Container);
        var tallest = 0.0;
        foreach (var trunk in state.Standing)
        {
            var place = trunk.Place!.Value;
            reach = Math.Max(reach, Distant(place));
            tallest = Math.Max(tallest, HeightMillimetres(trunk));
        }

        var distance = stated?.Distance is { } given && given > Length.Zero
            ? given
            : Length.FromMillimetres(Math.Max(LeastDistance.Millimetres, ExtentsAway * Math.Max(2 * reach, tallest)));
        var eye = stated?.EyeHeight ?? (tallest > 0 ? Length.FromMillimetres(tallest * 2 / 3) : distance * 0.1);
        return new ViewFrame(stated?.From ?? Bearing.Front, distance, eye)
        {
            IsDistanceAssumed = distance != stated?.Distance,
            IsEyeHeightAssumed = stated?.EyeHeight is null,
        };
    }

    /// <summary>Where the eye is, seen from above.</summary>
    public PlanPoint Eye => new(Distance * back, Distance * -right);

    /// <summary>How a place is seen.</summary>
    /// <param name="place">The place.</param>
    /// <returns>
    /// Its picture; null when it is beside or behind the eye, or so near to the eye's own plane (a thousandth of the viewing
    /// distance) that it would fill the sight.
    /// </returns>
    public ViewedPoint? See(SpacePoint place)
    {
        var (across, depth) = Turned(place.X.Millimetres, place.Y.Millimetres);
        return See(across, depth, place.Z.Millimetres);
    }

    /// <summary>As <see cref="See(SpacePoint)"/>, of a place that was turned already, in millimetres.</summary>
    internal ViewedPoint? See(double across, double depth, double up)
    {
        if (depth <= distanceMillimetres * NearestShare)
        {
            return null;
        }

        var scale = distanceMillimetres / depth;
        return new ViewedPoint(
            Length.FromMillimetres(across * scale),
            Length.FromMillimetres(eyeMillimetres + ((up - eyeMillimetres) * scale)),
            Length.FromMillimetres(depth));
    }

    /// <summary>The place that is seen so: what <see cref="See(SpacePoint)"/> gives, turned round.</summary>
    /// <param name="seen">A place in the picture, with its depth, which is above zero.</param>
    /// <returns>The place.</returns>
    public SpacePoint PlaceOf(ViewedPoint seen)
    {
        var scale = Distance / seen.Depth;
        var across = seen.Across.Millimetres / scale;
        var ahead = seen.Depth.Millimetres - distanceMillimetres;
        return new(
            Length.FromMillimetres((across * right) - (ahead * back)),
            Length.FromMillimetres((across * back) + (ahead * right)),
            Length.FromMillimetres(eyeMillimetres + ((seen.Up.Millimetres - eyeMillimetres) / scale)));
    }

    /// <summary>
    /// What a round trunk covers of the picture: the two lines from the eye that touch its circle, where they meet the
    /// picture plane. With x across, d ahead and r the radius they have the slopes (x·d ± r·√(x² + d² − r²)) / (d² − r²).
    /// </summary>
    /// <param name="centre">The centre of its base.</param>
    /// <param name="radius">Its radius there; not negative.</param>
    /// <returns>The interval; null when the circle reaches the eye's own plane or lies behind it.</returns>
    public ViewInterval? Cover(PlanPoint centre, Length radius)
    {
        var (across, depth) = Turned(centre.X.Millimetres, centre.Y.Millimetres);
        return Cover(across, depth, radius.Millimetres);
    }

    /// <summary>As <see cref="Cover(PlanPoint, Length)"/>, of a centre that was turned already, in millimetres.</summary>
    internal ViewInterval? Cover(double across, double depth, double round)
    {
        if (depth - round <= distanceMillimetres * NearestShare)
        {
            return null;
        }

        var reach = round * Math.Sqrt((across * across) + (depth * depth) - (round * round));
        var share = distanceMillimetres / ((depth - round) * (depth + round));
        return new ViewInterval(
            Length.FromMillimetres(((across * depth) - reach) * share),
            Length.FromMillimetres(((across * depth) + reach) * share));
    }

    /// <summary>
    /// How near a round trunk is, as an order: the power of its circle at the eye, distance² − radius², in mm². Of two trunks
    /// that do not touch, the one of lower power is hit first by every ray from the eye that meets both, since the line of equal
    /// power (the radical axis) parts their circles.
    /// </summary>
    /// <param name="centre">The centre of its base.</param>
    /// <param name="radius">Its radius there.</param>
    /// <returns>The power.</returns>
    internal double Power(PlanPoint centre, Length radius)
    {
        var (across, depth) = Turned(centre.X.Millimetres, centre.Y.Millimetres);
        return Power(across, depth, radius.Millimetres);
    }

    /// <summary>As <see cref="Power(PlanPoint, Length)"/>, of a centre that was turned already, in millimetres.</summary>
    internal static double Power(double across, double depth, double round) => (across * across) + (depth * depth) - (round * round);

    /// <summary>A place in the plan in the frame turned to the viewer: across to the right of the origin, depth from the eye; all in millimetres.</summary>
    internal (double AcrossMillimetres, double DepthMillimetres) Turned(double x, double y) =>
        ((x * right) + (y * back), (y * right) - (x * back) + distanceMillimetres);

    /// <summary>The view's own directions as shares of the plan's: to the viewer's right.</summary>
    internal static (double Right, double Back) Quarter(Bearing from) => from.Degrees switch
    {
        // The four sides exactly, so that a straight front view keeps its numbers.
        0 => (-1, 0),
        90 => (0, 1),
        180 => (1, 0),
        270 => (0, -1),
        _ => (-from.Backward, from.Rightward),
    };

    /// <summary>The height by which a trunk is taken for the tallest, in millimetres.</summary>
    internal static double HeightMillimetres(TrunkState trunk) =>
        trunk.Height?.Value.Millimetres ?? (trunk.Trunk.Line is [.., var tip] ? tip.Z.Millimetres : 0);

    /// <summary>How far from the plan's origin a place is, in millimetres.</summary>
    /// <param name="place">The place.</param>
    /// <returns>The distance.</returns>
    public static double Distant(PlanPoint place) => Math.Sqrt(
        (place.X.Millimetres * place.X.Millimetres) + (place.Y.Millimetres * place.Y.Millimetres));

    /// <summary>How far from the plan's origin a container reaches, in millimetres; 0 without one.</summary>
    internal static double ReachMillimetres(Container? container)
    {
        switch (container)
        {
            case Container.Oval oval:
                return Math.Max(oval.Width.Millimetres, oval.Breadth.Millimetres) / 2;
            case Container.Rectangle rectangle:
                return Distant(new PlanPoint(rectangle.Width * 0.5, rectangle.Breadth * 0.5));
            case Container.Round round:
                return round.Across.Millimetres / 2;
            case Container.Slab slab:
                var reach = 0.0;
                foreach (var corner in slab.Outline)
                {
                    reach = Math.Max(reach, Distant(corner));
                }

                return reach;
            default:
                return 0;
        }
    }
}
