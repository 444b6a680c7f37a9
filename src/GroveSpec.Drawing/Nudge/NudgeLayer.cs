using GroveSpec.Checks.Nudging;
using GroveSpec.Craft.Views;
using GroveSpec.Drawing.Plan;
using GroveSpec.Drawing.Scene;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;

namespace GroveSpec.Drawing.Nudge;

/// <summary>What a plan with moves carries besides: where each trunk stood, and an arrow from there to where it goes.</summary>
internal sealed class NudgeLayer : PlanLayer
{
    private const double MarkRoom = 24;
    private const double ShortestArrow = 9;
    private const double ArrowHead = 5;
    private const double RingGap = 3.5;
    private const double TipRadius = 4;

    private readonly PlantingState before;
    private readonly NudgeSuggestion suggestion;
    private readonly List<int> asked = [];

    /// <summary>Prepares the layer.</summary>
    /// <param name="before">The planting as it is.</param>
    /// <param name="suggestion">The moves.</param>
    /// <param name="units">The units that are read.</param>
    public NudgeLayer(PlantingState before, NudgeSuggestion suggestion, UnitSystem units)
    {
        (this.before, this.suggestion) = (before, suggestion);
        Sentences = [.. suggestion.Moves.Select(move => DrawnText.Clean(NudgeWords.Order(move, units)))];
    }

    /// <inheritdoc/>
    public override string Title => "the smallest moves";

    /// <inheritdoc/>
    public override string Mark => NudgeStyle.Mark;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Sentences { get; }

    /// <inheritdoc/>
    public override string Remark => "The smallest moves · from above, as it stands after them";

    /// <inheritdoc/>
    public override string Note => DrawnText.Clean($"{suggestion.Why} Broken rings are where {(suggestion.Moves.Any(move => move.IsMoved) ? "trunks" : "tips")} are now.");

    /// <inheritdoc/>
    public override string NoteOn(PlanLayout layout)
    {
        var ways = suggestion.Moves.Select(move => OnPage(layout, move)).Select(way => IsShort(way.Was, way.Now)).ToHashSet();
        var arrows = ways.Contains(false) ? " Arrows run from there to where they go." : "";
        var rings = ways.Contains(true) ? " A whole ring is round one that goes too short a way for an arrow." : "";
        return $"{Note}{arrows}{rings}";
    }

    /// <inheritdoc/>
    public override StyleSheet Sheet() => NudgeStyle.Sheet();

    /// <inheritdoc/>
    public override void WriteBelow(SvgWriter svg, PlanLayout layout)
    {
        foreach (var move in suggestion.Moves.Where(move => move.IsMoved))
        {
            WriteWas(svg, layout, move);
        }
    }

    /// <inheritdoc/>
    public override void Ask(LabelPlacer placer, PlanLayout layout)
    {
        asked.Clear();
        foreach (var move in suggestion.Moves)
        {
            var (was, now, radius) = OnPage(layout, move);
            placer.Obstacles.AvoidDisc(was.X, was.Y, radius + 1, 60);
            placer.Obstacles.AvoidDisc(now.X, now.Y, radius + RingGap + 1, 120);
            placer.Obstacles.AvoidLine(was.X, was.Y, now.X, now.Y, 120);
            asked.Add(placer.Ask(new LabelRequest
            {
                Width = MarkRoom,
                Height = MarkRoom,
                AnchorX = now.X,
                AnchorY = now.Y,
                Reach = radius + RingGap + 1,
                Turn = 0,
                IsRequired = true,
                Candidates = LabelRequest.Around(now.X, now.Y, radius + RingGap + 1, MarkRoom, MarkRoom),
            }));
        }
    }

    /// <inheritdoc/>
    public override void WriteAbove(SvgWriter svg, PlanLayout layout, PlanLabels labels)
    {
        // A tip may have been over the trunk, which would cover its ring.
        foreach (var move in suggestion.Moves.Where(move => !move.IsMoved))
        {
            WriteWas(svg, layout, move);
        }

        for (var index = 0; index < suggestion.Moves.Length; index++)
        {
            var (was, now, radius) = OnPage(layout, suggestion.Moves[index]);
            WriteWay(svg, was, now, radius);
            if (labels.PlaceOf(asked[index]) is { } place)
            {
                Plate.WriteMark(svg, place.Box.CentreX, place.Box.CentreY, index + 1, null, NudgeStyle.Mark);
            }
        }
    }

    private void WriteWas(SvgWriter svg, PlanLayout layout, NudgedTrunk move)
    {
        var (was, _, radius) = OnPage(layout, move);
        svg.Circle("gs-was", was.X, was.Y, radius);
    }

    /// <summary>Where the foot of a trunk, or the tip of one that is bent, was and is, and how large it is drawn.</summary>
    private ((double X, double Y) Was, (double X, double Y) Now, double Radius) OnPage(PlanLayout layout, NudgedTrunk move)
    {
        var (old, moved) = (Find(before, move.Name), Find(suggestion.State, move.Name));
        return move.IsMoved
            ? (Page(layout, old.Place!.Value), Page(layout, moved.Place!.Value), Math.Max((moved.Diameter?.Value.Millimetres ?? 0) / 2 * layout.Scale, 2.5))
            : (Page(layout, TrunkAxis.TipOf(old)!.Value.Plan), Page(layout, TrunkAxis.TipOf(moved)!.Value.Plan), TipRadius);
    }

    private static TrunkState Find(PlantingState state, string name) => state.Trunks.First(trunk => trunk.Name == name);

    private static (double X, double Y) Page(PlanLayout layout, PlanPoint place) => (layout.ToX(place.X.Millimetres), layout.ToY(place.Y.Millimetres));

    private static bool IsShort((double X, double Y) was, (double X, double Y) now) => Distance(was, now) < ShortestArrow;

    private static double Distance((double X, double Y) was, (double X, double Y) now) => Math.Sqrt(((now.X - was.X) * (now.X - was.X)) + ((now.Y - was.Y) * (now.Y - was.Y)));

    /// <summary>From the old foot to the new one, over the trunk that stands there; round one that goes hardly any way a ring.</summary>
    private static void WriteWay(SvgWriter svg, (double X, double Y) was, (double X, double Y) now, double radius)
    {
        if (IsShort(was, now))
        {
            svg.Circle("gs-way", now.X, now.Y, radius + RingGap);
            return;
        }

        var length = Distance(was, now);
        var (towardX, towardY) = ((now.X - was.X) / length, (now.Y - was.Y) / length);
        foreach (var style in (ReadOnlySpan<string>)["gs-way-edge", "gs-way"])
        {
            svg.BeginPath(style);
            svg.MoveTo(was.X, was.Y);
            svg.LineTo(now.X, now.Y);
            svg.MoveTo(now.X - (ArrowHead * (towardX - towardY)), now.Y - (ArrowHead * (towardY + towardX)));
            svg.LineTo(now.X, now.Y);
            svg.LineTo(now.X - (ArrowHead * (towardX + towardY)), now.Y - (ArrowHead * (towardY - towardX)));
            svg.EndPath();
        }
    }
}
