using GroveSpec.Craft.Containers;
using GroveSpec.Craft.Views;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Plan;

/// <summary>The scale of a plan and where everything of it lies on the page.</summary>
internal sealed class PlanLayout
{
    /// <summary>The page's width in pixels.</summary>
    public const double PageWidth = 1000;

    private const double TallestPlot = 860;
    private const double ViewerRoom = 58;
    private const double DialRoom = 46;
    private readonly double leftMm;
    private readonly double backMm;
    private readonly double pageLeft;
    private readonly double pageTop;

    private PlanLayout(PlantingState state, DrawingOptions options, (Box Room, PlantingState Frame)? panel, PlanLayer? layer)
    {
        var frame = panel?.Frame ?? state;
        IsAsWritten = state.Planting.Container is not null;
        var trunks = state.Trunks.Where(trunk => trunk.Place is not null).ToArray();
        var framed = frame.Trunks.Where(trunk => trunk.Place is not null).ToArray();
        var sizes = ShownSizes.For(frame);
        var shown = Array.ConvertAll(framed, sizes.Of);
        Rim = state.Planting.Container is { } container ? ContainerOutline.Of(container).Points.Select(Millimetres).ToArray() : Ground(framed, sizes, layer);
        ViewedFrom = state.Planting.Viewed?.From ?? Bearing.Front;
        Detail = trunks.Length > 1000 ? PlanDetail.Least : trunks.Length > 120 ? PlanDetail.Less : PlanDetail.Full;

        var extent = Extent(framed, shown, layer);
        if (options.ShowBearings && panel is null)
        {
            DialRadiusMm = Rim.Select(point => Math.Sqrt((point.X * point.X) + (point.Y * point.Y))).DefaultIfEmpty(1).Max();
            extent = extent.With(new Box(-DialRadiusMm, -DialRadiusMm, DialRadiusMm, DialRadiusMm));
        }

        leftMm = extent.Left;
        backMm = -extent.Top;
        if (panel is { Room: var room })
        {
            Scale = Math.Min(room.Width / extent.Width, room.Height / extent.Height);
            (PlotTop, PlotBottom) = (room.Top, room.Bottom);
            pageLeft = room.CentreX - (extent.Width * Scale / 2);
            pageTop = room.CentreY - (extent.Height * Scale / 2);
        }
        else
        {
            var dial = options.ShowBearings ? DialRoom : 0;
            var across = Math.Abs(ViewedFrom.Rightward) > 0.6 ? ViewerRoom : 0;
            var along = Math.Abs(ViewedFrom.Backward) > 0.6 ? ViewerRoom : 0;
            var (left, right) = (Plate.Margin + dial + (ViewedFrom.Rightward < 0 ? across : 0), Plate.Margin + dial + (ViewedFrom.Rightward > 0 ? across : 0));
            var (top, bottom) = (28 + dial + (ViewedFrom.Backward > 0 ? along : 0), 12 + dial + (ViewedFrom.Backward < 0 ? along : 0));
            Scale = Math.Min((PageWidth - left - right) / extent.Width, TallestPlot / extent.Height);
            PlotTop = Plate.HeadingFoot;
            pageLeft = left + ((PageWidth - left - right - (extent.Width * Scale)) / 2);
            pageTop = PlotTop + top;
            PlotBottom = pageTop + (extent.Height * Scale) + bottom;
        }

        Extents = new Box(pageLeft, pageTop, pageLeft + (extent.Width * Scale), pageTop + (extent.Height * Scale));
        RimOnPage = Array.ConvertAll(Rim, point => (ToX(point.X), ToY(point.Y)));
        Trunks = Array.ConvertAll(trunks, trunk => Drawn(trunk, sizes.Of(trunk)));
    }

    /// <summary>Pixels in a millimetre.</summary>
    public double Scale { get; }

    /// <summary>Whether the rim is that of a container; otherwise it is the ground round the trunks.</summary>
    public bool IsAsWritten { get; }

    /// <summary>How much texture is drawn.</summary>
    public PlanDetail Detail { get; }

    /// <summary>The rim in millimetres: x to the right, y to the back; empty where there is nothing.</summary>
    public (double X, double Y)[] Rim { get; }

    /// <summary>The rim on the page.</summary>
    public (double X, double Y)[] RimOnPage { get; }

    /// <summary>The radius of the dial of bearings in millimetres; 0 where it is not asked for.</summary>
    public double DialRadiusMm { get; }

    /// <summary>The bearing at which the viewer stands.</summary>
    public Bearing ViewedFrom { get; }

    /// <summary>All that is drawn to scale, on the page.</summary>
    public Box Extents { get; }

    /// <summary>The upper edge of the plot.</summary>
    public double PlotTop { get; }

    /// <summary>The lower edge of the plot.</summary>
    public double PlotBottom { get; }

    /// <summary>Where labels may stand.</summary>
    public Box LabelPage => new(14, PlotTop + 8, PageWidth - 14, PlotBottom);

    /// <summary>Every trunk whose place is known, in the order of the file.</summary>
    public DrawnTrunk[] Trunks { get; }

    /// <summary>Lays a plan out.</summary>
    /// <param name="state">The planting on its day.</param>
    /// <param name="options">How it is drawn.</param>
    /// <param name="layer">What the plan carries besides; null for nothing.</param>
    /// <returns>The layout; it has room for the viewer on the side where the viewer stands.</returns>
    public static PlanLayout Of(PlantingState state, DrawingOptions options, PlanLayer? layer = null) => new(state, options, null, layer);

    /// <summary>Lays a small plan out, without room for the viewer or a dial.</summary>
    /// <param name="state">The planting on its day.</param>
    /// <param name="room">The room it fills as far as its shape allows.</param>
    /// <param name="frame">The same planting with all that any plan beside it shows, so that all have one scale and one middle.</param>
    /// <returns>The layout.</returns>
    public static PlanLayout Within(PlantingState state, Box room, PlantingState frame) => new(state, DrawingOptions.Default, (room, frame), null);

    /// <summary>Where a distance to the right lies on the page.</summary>
    public double ToX(double millimetres) => pageLeft + ((millimetres - leftMm) * Scale);

    /// <summary>Where a distance to the back lies on the page.</summary>
    public double ToY(double millimetres) => pageTop + ((backMm - millimetres) * Scale);

    private static (double X, double Y) Millimetres(PlanPoint point) => (point.X.Millimetres, point.Y.Millimetres);

    private static (double X, double Y)[] Ground(TrunkState[] trunks, ShownSizes sizes, PlanLayer? layer)
    {
        var standing = Array.FindAll(trunks, trunk => layer?.StandsBeside(trunk) != true);
        return SoilOutline.About(standing, Array.ConvertAll(standing, sizes.Of));
    }

    // Page-wise: top is the back, so y is turned round here.
    private Box Extent(TrunkState[] trunks, ShownSize[] shown, PlanLayer? layer)
    {
        Box? extent = null;
        foreach (var (x, y) in (layer?.Reaches ?? []).Select(Millimetres))
        {
            extent = Including(extent, new Box(x, -y, x, -y));
        }

        foreach (var (x, y) in Rim)
        {
            extent = Including(extent, new Box(x, -y, x, -y));
        }

        for (var i = 0; i < trunks.Length; i++)
        {
            var (x, y) = Millimetres(trunks[i].Place!.Value);
            var around = shown[i].Diameter.Millimetres * 0.7;
            extent = Including(extent, Box.About(x, -y, 2 * around, 2 * around));
            if (!IsDrawnWithCrown(trunks[i], shown[i]) && trunks[i].Trunk.Lean is null && trunks[i].Trunk.Line.IsEmpty)
            {
                continue;
            }

            // A tip that hangs far out would shrink all the rest to a dot, so the page follows it only so far.
            var tip = TrunkAxis.Of(trunks[i])?.Tip.Plan ?? trunks[i].Place!.Value;
            var farthest = Math.Max(shown[i].Height.Millimetres, 1) * 1.5;
            var tipX = Math.Clamp(tip.X.Millimetres, x - farthest, x + farthest);
            var tipY = Math.Clamp(tip.Y.Millimetres, y - farthest, y + farthest);
            extent = Including(extent, new Box(tipX, -tipY, tipX, -tipY));
            if (IsDrawnWithCrown(trunks[i], shown[i]))
            {
                var crown = shown[i].Crown.Millimetres * 2.1;
                extent = Including(extent, Box.About(x + ((tipX - x) * 2 / 3), -y - ((tipY - y) * 2 / 3), crown, crown));
            }
        }

        var found = extent ?? new Box(-100, -60, 100, 60);
        return found.Width < 1 || found.Height < 1 ? found.Grown(Math.Max(1, Math.Max(found.Width, found.Height) * 0.1)) : found;
    }

    private bool IsDrawnWithCrown(TrunkState trunk, ShownSize shown) =>
        trunk.Presence == Presence.Standing && (!shown.IsCrownAssumed || Detail == PlanDetail.Full);

    private static Box Including(Box? extent, Box more) => extent is { } box ? box.With(more) : more;

    private DrawnTrunk Drawn(TrunkState trunk, ShownSize size)
    {
        var place = trunk.Place!.Value;
        var (x, y) = (ToX(place.X.Millimetres), ToY(place.Y.Millimetres));
        var hasRun = trunk.Trunk.Lean is not null || !trunk.Trunk.Line.IsEmpty;
        var run = hasRun && TrunkAxis.Of(trunk) is { } axis
            ? axis.Points.Select(point => (ToX(point.X.Millimetres), ToY(point.Y.Millimetres))).ToArray()
            : [(x, y)];
        return new DrawnTrunk
        {
            State = trunk,
            X = x,
            Y = y,
            TrueRadius = size.Diameter.Millimetres / 2 * Scale,
            CrownRadius = IsDrawnWithCrown(trunk, size) ? size.Crown.Millimetres * Scale : 0,
            IsCrownAssumed = size.IsCrownAssumed,
            Run = run,
        };
    }
}
