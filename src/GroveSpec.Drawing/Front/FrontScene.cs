using GroveSpec.Craft.Views;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Containers;
using GroveSpec.Model.Species;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Front;

/// <summary>All that stands in the picture, laid out at a scale that fits the page.</summary>
internal sealed class FrontScene
{
    /// <summary>The page's width, in px.</summary>
    public const double PageWidth = 800;

    /// <summary>From where the picture may reach to the left, past the scale of heights.</summary>
    public const double PictureLeft = Plate.Margin + 26;

    /// <summary>How far the picture may reach to the right.</summary>
    public const double PictureRight = PageWidth - Plate.Margin;

    private const double PictureTop = 116;
    private const double TallestPicture = 500;

    private FrontScene(Stage stage, List<Standing> trees, List<Standing> others, GroundFigure? ground, bool isPatch, Box picture, double tallestMillimetres)
    {
        Stage = stage;
        Trees = trees;
        Others = others;
        Ground = ground;
        IsPatch = isPatch;
        Picture = picture;
        TallestMillimetres = tallestMillimetres;
    }

    /// <summary>A trunk in the picture.</summary>
    /// <param name="Trunk">Its figure.</param>
    /// <param name="Crown">Its crown; null where it is too small to be seen.</param>
    /// <param name="Shade">How pale its ink is, 0 for the nearest.</param>
    internal sealed record Standing(TrunkFigure Trunk, CrownFigure? Crown, int Shade);

    /// <summary>Where the picture lies.</summary>
    public Stage Stage { get; }

    /// <summary>Standing trunks, the farthest first.</summary>
    public List<Standing> Trees { get; }

    /// <summary>Planned and removed trunks whose place is known, the farthest first.</summary>
    public List<Standing> Others { get; }

    /// <summary>The container or the patch of ground; null where there is neither.</summary>
    public GroundFigure? Ground { get; }

    /// <summary>Whether the ground is only a patch about the trunks.</summary>
    public bool IsPatch { get; }

    /// <summary>What the picture fills of the page.</summary>
    public Box Picture { get; }

    /// <summary>The highest thing in the picture plane, in mm; 0 for an empty picture.</summary>
    public double TallestMillimetres { get; }

    /// <summary>How full the texture is: whole up to 14 trunks, then thinner, none from 400 on.</summary>
    /// <param name="trunks">How many trunks are drawn.</param>
    /// <returns>From 1 down to 0.</returns>
    public static double FullnessFor(int trunks) => trunks <= 14 ? 1 : trunks >= 400 ? 0 : Math.Max(0.06, Math.Pow(14.0 / trunks, 0.8));

    /// <summary>Lays the picture out on the plate of the front, from its upper edge down.</summary>
    /// <param name="state">The planting on a day.</param>
    /// <param name="view">What is seen of it.</param>
    /// <returns>The scene.</returns>
    public static FrontScene Of(PlantingState state, FrontView view) =>
        Of(state, view, new Box(PictureLeft, PictureTop, PictureRight, PictureTop + TallestPicture), double.PositiveInfinity, isOnFoot: false);

    /// <summary>Lays the picture out on the foot of a small panel.</summary>
    /// <param name="state">The planting on a day.</param>
    /// <param name="view">What is seen of it.</param>
    /// <param name="room">The panel.</param>
    /// <param name="mostScale">The most pixels for a millimetre.</param>
    /// <returns>The scene.</returns>
    public static FrontScene Of(PlantingState state, FrontView view, Box room, double mostScale = double.PositiveInfinity) => Of(state, view, room, mostScale, isOnFoot: true);

    private static FrontScene Of(PlantingState state, FrontView view, Box room, double mostScale, bool isOnFoot)
    {
        var sizes = ShownSizes.For(state);
        var ranks = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var seen in view.Trunks)
        {
            ranks[seen.Name] = seen.Nearness;
        }

        var container = state.Planting.Container ?? PatchOf(state, sizes);
        var isPatch = state.Planting.Container is null;

        // A first, rough lay-out at a pixel a millimetre says how much room the picture needs.
        var (rough, extent) = Extent(state, sizes, container, new Stage(view.Frame, 1, 0, 0));
        if (!rough)
        {
            return new FrontScene(new Stage(view.Frame, 1, isOnFoot ? room.CentreX : PageWidth / 2, room.Top), [], [], null, isPatch, room with { Bottom = room.Top }, 0);
        }

        var scale = Math.Min(mostScale, Math.Min(room.Width / Math.Max(1e-6, extent.Width), room.Height / Math.Max(1e-6, extent.Height)));
        var left = room.Left + ((room.Width - (extent.Width * scale)) / 2) - (extent.Left * scale);
        var top = isOnFoot ? room.Bottom - (extent.Height * scale) : room.Top;
        var stage = new Stage(view.Frame, scale, left, top - (extent.Top * scale));
        var picture = new Box(left + (extent.Left * scale), top, left + (extent.Right * scale), top + (extent.Height * scale));
        var stations = ranks.Count > 300 ? 5 : ranks.Count > 60 ? 8 : 13;
        var trees = new List<(int Rank, Standing Tree)>();
        var others = new List<(double Depth, Standing Tree)>();
        foreach (var trunk in state.Trunks)
        {
            if (trunk.Place is null || TrunkFigure.Of(trunk, sizes.Of(trunk), stage, stations) is not { } figure)
            {
                continue;
            }

            var crown = trunk.Presence == Presence.Removed ? null : CrownFigure.Of(figure, IsConifer(state, trunk));
            if (trunk.Presence != Presence.Standing)
            {
                others.Add((figure.FootScale, new Standing(figure, crown, 0)));
            }
            else if (ranks.TryGetValue(trunk.Name, out var rank))
            {
                trees.Add((rank, new Standing(figure, crown, ShadeOf(rank, ranks.Count))));
            }
        }

        trees.Sort((one, other) => other.Rank.CompareTo(one.Rank));
        others.Sort((one, other) => one.Depth.CompareTo(other.Depth));
        return new FrontScene(
            stage,
            [.. trees.Select(tree => tree.Tree)],
            [.. others.Select(tree => tree.Tree)],
            container is null ? null : GroundFigure.Of(container, stage),
            isPatch,
            picture,
            Math.Max(0, -extent.Top));
    }

    // Shades go by rank, so that the nearest is full ink and the farthest pale in a deep planting and in a shallow one.
    private static int ShadeOf(int rank, int count) => count <= 1 ? 0 : (int)Math.Min(TrunkPainter.Shades - 1, rank * (double)Math.Min(TrunkPainter.Shades, count) / count);

    private static (bool Any, Box Extent) Extent(PlantingState state, ShownSizes sizes, Container? container, Stage stage)
    {
        Box? extent = null;
        foreach (var trunk in state.Trunks)
        {
            if (trunk.Place is null || TrunkFigure.Of(trunk, sizes.Of(trunk), stage, 5) is not { } figure)
            {
                continue;
            }

            Add(new Box(figure.Left[0].X - figure.FootHalf, figure.Foot.Y - 1, figure.Right[0].X + figure.FootHalf, figure.Bottom));
            if (trunk.Presence != Presence.Removed)
            {
                foreach (var spot in figure.Axis)
                {
                    Add(Box.About(spot.X, spot.Y, 1, 1));
                }

                var radius = figure.Size.Crown.Millimetres * figure.CrownScale * 1.14;
                var middle = figure.Middle(0.75);
                Add(new Box(middle.X - radius, figure.Tip.Y - ((figure.Foot.Y - figure.Tip.Y) * 0.03), middle.X + radius, figure.Foot.Y));
            }
        }

        if (container is not null && GroundFigure.Of(container, stage) is { } ground)
        {
            Add(new Box(ground.Left, ground.Top, ground.Right, Math.Max(ground.Rim.Max(spot => spot.Y), ground.Foot.Max(spot => spot.Y))));
        }

        return (extent is not null, extent ?? default);

        void Add(Box box) => extent = extent?.With(box) ?? box;
    }

    private static Container? PatchOf(PlantingState state, ShownSizes sizes)
    {
        var places = state.Trunks.Where(trunk => trunk.Place is not null).ToList();
        return places.Count == 0
            ? null
            : GroundInk.Patch(places.Select(trunk => trunk.Place!.Value), places.Max(trunk => sizes.Of(trunk).Diameter.Millimetres) * 2.5);
    }

    private static bool IsConifer(PlantingState state, TrunkState trunk) =>
        state.Planting.ProfileOf(state.Planting.SpeciesOf(trunk.Trunk))?.Leaves?.Value is LeafHabit.Conifer or LeafHabit.DeciduousConifer;
}
