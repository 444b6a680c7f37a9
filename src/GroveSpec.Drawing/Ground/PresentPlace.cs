using GroveSpec.Drawing.Plan;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Ground;

/// <summary>Where the trunk that ground is looked for has its place now: a broken ring with its name, as the plan of moves marks where trunks are.</summary>
internal sealed class PresentPlace
{
    private const double NameSize = 15;
    private const double RingGap = 2;
    private const double LeastRadius = 2.5;

    private readonly TrunkState trunk;
    private readonly PlanPoint place;
    private readonly string text;
    private int asked;

    private PresentPlace(TrunkState trunk, PlanPoint place)
    {
        (this.trunk, this.place) = (trunk, place);
        var name = DrawnText.Isolated(trunk.Name);
        var isPlanned = trunk.Presence == Presence.Planned;
        text = $"{DrawnText.Isolated(DrawnText.Shortened(DrawnText.Clean(trunk.Name), NameSize * 14, NameSize, Face.Italic))}, {(isPlanned ? "planned" : "now")}";
        Meaning = $"The broken ring is where {name} {(isPlanned ? "is planned" : "stands now")}.";
    }

    /// <summary>What the ring means, in a sentence.</summary>
    public string Meaning { get; }

    /// <summary>The corners of a square about it.</summary>
    public PlanPoint[] Corners
    {
        get
        {
            var half = (trunk.Diameter?.Value ?? Length.Zero) * 0.7;
            return [new(place.X - half, place.Y - half), new(place.X + half, place.Y + half)];
        }
    }

    /// <summary>Finds the place.</summary>
    /// <param name="trunk">The trunk that ground is looked for, as the planting has it; null for one more.</param>
    /// <returns>The place; null for one more trunk, and for one whose place is not known.</returns>
    public static PresentPlace? Of(TrunkState? trunk) => trunk?.Place is { } place ? new(trunk, place) : null;

    /// <summary>Asks for room for the name.</summary>
    /// <param name="placer">Finds it.</param>
    /// <param name="layout">The plan.</param>
    public void Ask(LabelPlacer placer, PlanLayout layout)
    {
        var (x, y, radius) = OnPage(layout);
        placer.Obstacles.AvoidDisc(x, y, radius + RingGap, 60);
        var width = TextMetrics.ReservedWidth(text, NameSize, Face.Italic) + 6;
        const double Height = NameSize * (TextMetrics.Ascent + TextMetrics.Descent);
        asked = placer.Ask(new LabelRequest
        {
            Width = width,
            Height = Height,
            AnchorX = x,
            AnchorY = y,
            Reach = radius + RingGap,
            Turn = 1,
            IsRequired = true,
            Candidates = LabelRequest.Around(x, y, radius + RingGap, width, Height),
        });
    }

    /// <summary>Writes the ring, below the spots, so that one at the same place shows over it.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="layout">The plan.</param>
    public void WriteRing(SvgWriter svg, PlanLayout layout)
    {
        var (x, y, radius) = OnPage(layout);
        svg.Circle("gs-was", x, y, radius, trunk.Trunk.Origin.Id);
    }

    /// <summary>Writes the name.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="layout">The plan.</param>
    /// <param name="labels">Where it stands.</param>
    public void WriteName(SvgWriter svg, PlanLayout layout, PlanLabels labels)
    {
        if (labels.PlaceOf(asked) is not { } found)
        {
            return;
        }

        var (x, y, radius) = OnPage(layout);
        if (found.HasLeader)
        {
            NameLeader.Write(svg, x, y, radius, found.Box);
        }

        svg.Text("gs-name-gone", found.Box.CentreX, found.Box.CentreY + (NameSize * 0.255), NameSize, text, TextAnchor.Middle, trunk.Trunk.Origin.Id);
    }

    private (double X, double Y, double Radius) OnPage(PlanLayout layout) =>
        (layout.ToX(place.X.Millimetres), layout.ToY(place.Y.Millimetres), Math.Max((trunk.Diameter?.Value.Millimetres ?? 0) / 2 * layout.Scale, LeastRadius));
}
