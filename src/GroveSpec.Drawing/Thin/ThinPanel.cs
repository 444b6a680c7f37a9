using GroveSpec.Checks.Choosing;
using GroveSpec.Drawing.Plan;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Thin;

/// <summary>One choice in small: its plan, the names beside the trunks, and a caption above.</summary>
internal sealed class ThinPanel
{
    /// <summary>The room round the plan, for names.</summary>
    public const double Edge = 18;

    private const double RemarkSize = 13;
    private const double RemarkTop = 34;
    private const double RemarkLine = 16;
    private const int MostNames = 60;

    private readonly Box box;
    private readonly PlantingState before;
    private readonly ThinnedStand stand;
    private readonly int number;
    private readonly double captionHeight;
    private readonly double nameSize;

    /// <summary>Lays a panel out.</summary>
    /// <param name="box">The panel.</param>
    /// <param name="before">The planting as it stands.</param>
    /// <param name="stand">What would stand.</param>
    /// <param name="number">The choice's number.</param>
    /// <param name="captionHeight">The room that the captions take at the top of panels that stand side by side.</param>
    /// <param name="nameSize">The size of the names' letters.</param>
    public ThinPanel(Box box, PlantingState before, ThinnedStand stand, int number, double captionHeight, double nameSize) =>
        (this.box, this.before, this.stand, this.number, this.captionHeight, this.nameSize) = (box, before, stand, number, captionHeight, nameSize);

    /// <summary>The room that a caption takes.</summary>
    /// <param name="stand">What would stand.</param>
    /// <param name="width">The panel's width.</param>
    /// <returns>Pixels.</returns>
    public static double CaptionHeightOf(ThinnedStand stand, double width) => RemarkTop + (Remark(stand, width).Count * RemarkLine);

    /// <summary>Writes it.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="name">The planting's name, for the hand that draws the shore.</param>
    public void Write(SvgWriter svg, string name)
    {
        var caption = $"{stand.Kept.Length} {(stand.Kept.Length == 1 ? "stays" : "stay")}, {stand.TakenOut.Length} {(stand.TakenOut.Length == 1 ? "goes" : "go")}";
        svg.OpenGroup("gs-panel", null, $"{caption}, {Left(stand)}");
        Plate.WriteMark(svg, box.Left + 10, box.Top + 10, number, null, ThinStyle.Mark);
        svg.Text("gs-choice", box.Left + 27, box.Top + 15, 16, caption);
        var lines = Remark(stand, box.Width);
        for (var line = 0; line < lines.Count; line++)
        {
            svg.Text("gs-remark", box.Left, box.Top + RemarkTop + (line * RemarkLine), RemarkSize, lines[line]);
        }

        WritePlan(svg, name);
        svg.CloseGroup();
    }

    private static string Left(ThinnedStand stand) => stand.Found == 0 ? "the checks find nothing" : $"left: {stand.Kinds}";

    private static List<string> Remark(ThinnedStand stand, double width) => DrawnText.Wrapped(Left(stand), width, RemarkSize, Face.Italic);

    private void WritePlan(SvgWriter svg, string name)
    {
        var plot = box with { Top = box.Top + captionHeight };
        var layout = PlanLayout.Within(stand.State, plot.Grown(-Edge), before);
        var marks = new ThinMarks(layout, before, stand);
        var gone = ThinMarks.NamesGone(before, stand);
        svg.CoarsePaths = true;
        Shore.WriteBed(svg, layout);
        foreach (var trunk in layout.Trunks.Where(trunk => trunk.CrownRadius > 0).OrderByDescending(trunk => trunk.CrownRadius))
        {
            TrunkDrawing.WriteCrown(svg, trunk, layout.Detail);
        }

        Shore.Write(svg, layout, stand.State.Planting.Container?.Origin.Id, name);
        foreach (var trunk in layout.Trunks)
        {
            TrunkDrawing.Write(svg, trunk, layout.Detail, null);
        }

        svg.CoarsePaths = false;
        marks.Write(svg);
        WriteNames(svg, layout, plot, marks, [.. layout.Trunks.Where(trunk => trunk.State.Presence == Presence.Standing || gone.Contains(trunk.Name))]);
    }

    /// <summary>Every name is written, far off with a leader where there is no room beside the trunk, those that stay before those that go; of a wood those for which there is room.</summary>
    private void WriteNames(SvgWriter svg, PlanLayout layout, Box plot, ThinMarks marks, DrawnTrunk[] named)
    {
        var placer = new LabelPlacer(plot);
        PlanObstacles.Add(placer.Obstacles, layout);
        marks.Avoid(placer.Obstacles);
        var height = nameSize * (TextMetrics.Ascent + TextMetrics.Descent);
        string[] shown = [.. named.Select(trunk => DrawnText.Shortened(DrawnText.Clean(trunk.Name), nameSize * 9, nameSize, Face.Italic))];
        for (var index = 0; index < named.Length; index++)
        {
            var trunk = named[index];
            var width = TextMetrics.ReservedWidth(shown[index], nameSize, Face.Italic) + 4;
            placer.Ask(new LabelRequest
            {
                Width = width,
                Height = height,
                AnchorX = trunk.X,
                AnchorY = trunk.Y,
                Reach = trunk.FlareRadius,
                Turn = trunk.State.Presence == Presence.Standing ? 0 : 1,
                IsRequired = named.Length <= MostNames,
                Candidates = LabelRequest.Around(trunk.X, trunk.Y, trunk.FlareRadius, width, height),
            });
        }

        var places = placer.Place();
        for (var index = 0; index < named.Length; index++)
        {
            if (places[index] is { HasLeader: true } place)
            {
                NameLeader.Write(svg, named[index].X, named[index].Y, named[index].FlareRadius, place.Box);
            }
        }

        for (var index = 0; index < named.Length; index++)
        {
            if (places[index] is { } place)
            {
                var whole = DrawnText.Clean(named[index].Name);
                svg.Text(
                    named[index].State.Presence == Presence.Standing ? "gs-name" : "gs-name-gone",
                    place.Box.CentreX,
                    place.Box.CentreY + (nameSize * 0.255),
                    nameSize,
                    shown[index],
                    TextAnchor.Middle,
                    named[index].Origin,
                    title: shown[index] == whole ? null : whole);
            }
        }
    }
}
