using GroveSpec.Checks.Choosing;
using GroveSpec.Drawing.Plan;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Thin;

/// <summary>One choice in small: its plan, the names beside the trunks, and a caption above.</summary>
internal sealed class ThinPanel
{
    /// <summary>The room that the caption takes at the top.</summary>
    public const double CaptionHeight = 56;

    /// <summary>The room round the plan, for names.</summary>
    public const double Edge = 18;

    private const double NameSize = 12;

    private readonly Box box;
    private readonly PlantingState before;
    private readonly ThinnedStand stand;
    private readonly int number;

    /// <summary>Lays a panel out.</summary>
    /// <param name="box">The panel.</param>
    /// <param name="before">The planting as it stands.</param>
    /// <param name="stand">What would stand.</param>
    /// <param name="number">The choice's number.</param>
    public ThinPanel(Box box, PlantingState before, ThinnedStand stand, int number) =>
        (this.box, this.before, this.stand, this.number) = (box, before, stand, number);

    /// <summary>Writes it.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="name">The planting's name, for the hand that draws the shore.</param>
    public void Write(SvgWriter svg, string name)
    {
        var caption = $"{stand.Kept.Length} {(stand.Kept.Length == 1 ? "stays" : "stay")}, {stand.TakenOut.Length} {(stand.TakenOut.Length == 1 ? "goes" : "go")}";
        var remark = stand.Found == 0 ? "the checks find nothing" : $"left: {stand.Kinds}";
        svg.OpenGroup("gs-panel", null, $"{caption}, {remark}");
        Plate.WriteMark(svg, box.Left + 10, box.Top + 10, number, null, ThinStyle.Mark);
        svg.Text("gs-choice", box.Left + 27, box.Top + 15, 16, caption);
        var lines = DrawnText.Wrapped(remark, box.Width, 13, Face.Italic, 2);
        for (var line = 0; line < lines.Count; line++)
        {
            svg.Text("gs-remark", box.Left, box.Top + 34 + (line * 16), 13, lines[line]);
        }

        WritePlan(svg, name);
        svg.CloseGroup();
    }

    private void WritePlan(SvgWriter svg, string name)
    {
        var plot = box with { Top = box.Top + CaptionHeight };
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

    /// <summary>Names are written where there is room for them, those that stay before those that go.</summary>
    private static void WriteNames(SvgWriter svg, PlanLayout layout, Box plot, ThinMarks marks, DrawnTrunk[] named)
    {
        var placer = new LabelPlacer(plot);
        foreach (var trunk in layout.Trunks)
        {
            placer.Obstacles.AvoidDisc(trunk.X, trunk.Y, trunk.Radius + 2, 250);
        }

        marks.Avoid(placer.Obstacles);
        const double Height = NameSize * (TextMetrics.Ascent + TextMetrics.Descent);
        string[] shown = [.. named.Select(trunk => DrawnText.Shortened(DrawnText.Clean(trunk.Name), NameSize * 9, NameSize, Face.Italic))];
        for (var index = 0; index < named.Length; index++)
        {
            var trunk = named[index];
            var width = TextMetrics.ReservedWidth(shown[index], NameSize, Face.Italic) + 4;
            placer.Ask(new LabelRequest
            {
                Width = width,
                Height = Height,
                AnchorX = trunk.X,
                AnchorY = trunk.Y,
                Reach = trunk.FlareRadius,
                Turn = trunk.State.Presence == Presence.Standing ? 0 : 1,
                Candidates = LabelRequest.Around(trunk.X, trunk.Y, trunk.FlareRadius, width, Height),
            });
        }

        var places = placer.Place();
        for (var index = 0; index < named.Length; index++)
        {
            if (places[index] is { } place)
            {
                svg.Text(
                    named[index].State.Presence == Presence.Standing ? "gs-name" : "gs-name-gone",
                    place.Box.CentreX,
                    place.Box.CentreY + (NameSize * 0.255),
                    NameSize,
                    shown[index],
                    TextAnchor.Middle,
                    named[index].Origin);
            }
        }
    }
}
