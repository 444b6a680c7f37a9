using System.Collections.Immutable;
using GroveSpec.Drawing.Front;
using GroveSpec.Drawing.Scene;

namespace GroveSpec.Drawing.Fronts;

/// <summary>One front in small: what is seen from a bearing, the names below where there is room for them, or else those that the text names, and a caption above.</summary>
internal sealed class FrontPanel
{
    private const double RemarkTop = 34;
    private const double RemarkLine = 16;
    private const double RemarkSize = 13;
    private const double LeastCaptionHeight = 54;
    private const double NameSize = 12;
    private const double NameLine = 16;
    private const double Slant = 12;
    private const int MostRows = 2;
    private const int MostNamed = 30;

    private readonly FrontScene scene;
    private readonly Box box;
    private readonly int? number;
    private readonly string caption;
    private readonly string remark;
    private readonly string? origin;
    private readonly ImmutableArray<string> named;

    /// <summary>Lays a panel out.</summary>
    /// <param name="scene">The picture, laid out in <see cref="RoomIn"/>.</param>
    /// <param name="box">The panel.</param>
    /// <param name="number">The suggestion's number; null for the front that the planting has.</param>
    /// <param name="caption">The bearing.</param>
    /// <param name="remark">What is lost there.</param>
    /// <param name="origin">The id of the statement that states it; null for none.</param>
    /// <param name="named">The trunks that the text names, the foremost first.</param>
    public FrontPanel(FrontScene scene, Box box, int? number, string caption, string remark, string? origin, ImmutableArray<string> named)
    {
        (this.scene, this.box, this.number, this.caption, this.remark, this.origin, this.named) = (scene, box, number, caption, remark, origin, named);
    }

    /// <summary>Whether every trunk that is drawn has its name.</summary>
    public bool NamesAll => scene.Trees.Count <= MostNamed && Arranged(scene.Trees).Rows <= MostRows;

    /// <summary>The room that a caption takes.</summary>
    /// <param name="remark">What is lost.</param>
    /// <param name="width">The panel's width.</param>
    /// <returns>Pixels; never less than two lines take, so that panels of few losses look alike.</returns>
    public static double CaptionHeightOf(string remark, double width) => Math.Max(LeastCaptionHeight, RemarkTop + (Lines(remark, width).Count * RemarkLine) - 12);

    /// <summary>The room for the picture in a panel.</summary>
    /// <param name="box">The panel.</param>
    /// <param name="captionHeight">The room that the caption takes.</param>
    /// <returns>What is left between caption and names.</returns>
    public static Box RoomIn(Box box, double captionHeight) => new(box.Left + 4, box.Top + captionHeight + 6, box.Right - 4, box.Bottom - Slant - 8 - (MostRows * NameLine));

    /// <summary>Writes it.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="fullness">How much texture.</param>
    public void Write(SvgWriter svg, double fullness)
    {
        svg.OpenGroup("gs-panel", origin, $"{caption}, {remark}");
        var left = box.Left;
        if (number is { } place)
        {
            Plate.WriteMark(svg, left + 10, box.Top + 10, place, null, FrontsStyle.Mark);
            left += 27;
        }

        svg.Text("gs-front-caption", left, box.Top + 15, 16, caption);
        var lines = Lines(remark, box.Width);
        for (var line = 0; line < lines.Count; line++)
        {
            svg.Text("gs-remark", box.Left, box.Top + RemarkTop + (line * RemarkLine), RemarkSize, lines[line]);
        }

        svg.CoarsePaths = true;
        if (scene.Ground is { } ground)
        {
            GroundInk.Draw(svg, ground, scene.IsPatch, fullness);
        }

        WriteNames(svg);
        svg.CoarsePaths = true;
        var painter = new TrunkPainter(svg, fullness);
        foreach (var tree in scene.Trees)
        {
            painter.Draw(tree.Trunk, tree.Crown, tree.Shade);
        }

        svg.CoarsePaths = false;
        svg.CloseGroup();
    }

    /// <summary>All names are written where they fit into two rows; otherwise those of the trunks that the text names, as many as fit.</summary>
    private void WriteNames(SvgWriter svg)
    {
        if (scene.Trees.Count is > 0 and <= MostNamed && TryWriteNames(svg, scene.Trees))
        {
            return;
        }

        for (var count = Math.Min(named.Length, MostNamed); count > 0; count--)
        {
            var some = named.Take(count).ToHashSet(StringComparer.Ordinal);
            if (TryWriteNames(svg, scene.Trees.Where(tree => some.Contains(tree.Trunk.Trunk.Name))))
            {
                return;
            }
        }
    }

    private static List<string> Lines(string remark, double width) => DrawnText.Wrapped(remark, width, RemarkSize, Face.Italic);

    private (List<FrontScene.Standing> Trees, string[] Names, NameRows.Place[] Places, int Rows) Arranged(IEnumerable<FrontScene.Standing> some)
    {
        var trees = some.OrderBy(tree => tree.Trunk.Foot.X).ThenBy(tree => tree.Trunk.Trunk.Name, StringComparer.Ordinal).ToList();
        string[] names = [.. trees.Select(tree => DrawnText.Shortened(DrawnText.Clean(tree.Trunk.Trunk.Name), box.Width / 3, NameSize, Face.Italic))];
        var (places, rows) = NameRows.Arrange([.. trees.Select(tree => tree.Trunk.Foot.X)], [.. names.Select(name => TextMetrics.ReservedWidth(name, NameSize, Face.Italic))], box.Left, box.Right);
        return (trees, names, places, rows);
    }

    private bool TryWriteNames(SvgWriter svg, IEnumerable<FrontScene.Standing> some)
    {
        var (trees, names, places, rows) = Arranged(some);
        if (trees.Count == 0 || rows > MostRows)
        {
            return false;
        }

        var turn = Math.Max(scene.Ground?.Bottom ?? 0, scene.Picture.Bottom) + 4;
        svg.CoarsePaths = false;
        svg.BeginPath("gs-thread");
        for (var index = 0; index < trees.Count; index++)
        {
            svg.MoveTo(places[index].Drop, trees[index].Trunk.Bottom + 2);
            svg.LineTo(places[index].Drop, turn);
            svg.LineTo(places[index].Leader, turn + Slant);
            if (places[index].Row > 0)
            {
                svg.LineTo(places[index].Leader, turn + Slant + (places[index].Row * NameLine));
            }
        }

        svg.EndPath();
        for (var index = 0; index < trees.Count; index++)
        {
            var baseline = turn + Slant + 2 + (places[index].Row * NameLine) + (NameSize * TextMetrics.Ascent);
            svg.Text("gs-name", places[index].Left, baseline, NameSize, names[index], origin: trees[index].Trunk.Trunk.Trunk.Origin.Id);
        }

        return true;
    }
}
