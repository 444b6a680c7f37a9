using System.Collections.Immutable;
using System.Globalization;
using GroveSpec.Checks.Moving;
using GroveSpec.Craft.Moving;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Model.Trunks;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Checks.Nudging;

/// <summary>A planting as it is, and as it is written, after trunks were nudged.</summary>
internal sealed class NudgedPlanting
{
    private readonly CheckContext context;
    private readonly Dictionary<Trunk, TrunkState> changed = new(ReferenceEqualityComparer.Instance);
    private readonly List<NudgedTrunk> moves = [];
    private readonly List<TextEdit> edits = [];

    /// <summary>Nudges trunks.</summary>
    /// <param name="context">The planting.</param>
    /// <param name="plan">The shifts.</param>
    public NudgedPlanting(CheckContext context, ShiftPlan plan)
    {
        this.context = context;
        foreach (var (movable, rightward, backward) in plan.Shifts)
        {
            var trunk = context.Standing.Trunks[movable.Trunk];
            var way = (Length.FromMillimetres(rightward), Length.FromMillimetres(backward));
            if (movable is not MovableTip tip)
            {
                Move(trunk, way);
            }
            else if (trunk.Trunk.Line.IsEmpty)
            {
                Lean(trunk, tip, rightward, backward);
            }
            else
            {
                Bend(trunk, way);
            }
        }

        var planting = context.Planting with { Trunks = [.. context.Planting.Trunks.Select(trunk => changed.TryGetValue(trunk, out var now) ? now.Trunk : trunk)] };
        State = context.State with { Planting = planting, Trunks = [.. context.State.Trunks.Select(trunk => changed.GetValueOrDefault(trunk.Trunk, trunk))] };
        Context = new CheckContext(planting, State, context.Origins, context.Units);
    }

    /// <summary>Its state on the day.</summary>
    public PlantingState State { get; }

    /// <summary>It, to be looked at afresh.</summary>
    public CheckContext Context { get; }

    /// <summary>The trunks that were nudged, as a grower counts their names.</summary>
    public ImmutableArray<NudgedTrunk> Moves => [.. moves.OrderBy(move => move.Name, NaturalOrder.Instance)];

    /// <summary>The edits in the order of the text.</summary>
    public ImmutableArray<TextEdit> Edits => [.. edits.OrderBy(edit => edit.Place.File, StringComparer.Ordinal).ThenBy(edit => edit.Place.Span.Start)];

    private void Move(TrunkState trunk, (Length Right, Length Back) way)
    {
        var from = trunk.Place!.Value;
        var place = new PlanPoint(from.X + way.Right, from.Y + way.Back);
        edits.AddRange(FootEdits.Of(context, trunk.Trunk, place));
        Keep(trunk, trunk with { Place = place, Trunk = trunk.Trunk with { At = new Stated<PlanPoint>(place, trunk.Trunk.At!.Value.Origin), Line = FootEdits.RunAt(trunk.Trunk, place) } });
        moves.Add(new(trunk.Name, from.DistanceTo(place), from.BearingTo(place), place, null, null, IsMoved: true));
    }

    private void Lean(TrunkState trunk, MovableTip tip, double rightward, double backward)
    {
        var (degrees, bearing, up) = tip.LeanAt(rightward, backward);
        var lean = new Lean(new Angle(Math.Round(degrees * 2) / 2), new Bearing(Math.Round(bearing) % 360));
        var old = trunk.Trunk;
        var height = Moving.HandStep.Nearest(Length.FromMillimetres(up), context.Units);
        var isHeightKept = !NudgeMovables.KeepsLength(trunk) || height == trunk.Height!.Value.Value;
        var isUpright = lean.FromUpright.Degrees == 0;
        edits.Add(ClauseEdit.Write(context.Origins, old, old.Lean?.Origin, string.Create(CultureInfo.InvariantCulture, $"lean {lean.FromUpright.Degrees} deg toward {lean.Toward.Degrees} deg")));
        if (!isHeightKept)
        {
            edits.Add(ClauseEdit.Write(context.Origins, old, old.Height!.Value.Origin, $"height {Say(height)}"));
        }

        var written = old with
        {
            Lean = new Stated<Lean>(lean, old.Lean?.Origin ?? old.Origin.Part("lean")),
            Height = isHeightKept ? old.Height : new Stated<Length>(height, old.Height!.Value.Origin),
        };
        Keep(trunk, trunk with { Trunk = written, Height = isHeightKept ? trunk.Height : written.Height });
        var distance = Length.FromMillimetres(Math.Sqrt((rightward * rightward) + (backward * backward)));
        moves.Add(new(trunk.Name, distance, Bearing.Of(rightward, backward), trunk.Place!.Value, isUpright ? lean with { Toward = Bearing.Back } : lean, isHeightKept ? null : height, IsMoved: false));
    }

    private void Bend(TrunkState trunk, (Length Right, Length Back) way)
    {
        // A run is drawn out to the newest height, and the way of its tip with it.
        var written = trunk.Trunk.Line;
        var factor = trunk.Height is { } height && written[^1].Z > Length.Zero ? height.Value / written[^1].Z : 1;
        var line = written.Select(point =>
        {
            var share = Math.Max(0, point.Z / written[^1].Z) / factor;
            return new SpacePoint(Tenth(point.X + (way.Right * share)), Tenth(point.Y + (way.Back * share)), point.Z);
        }).ToImmutableArray();
        edits.AddRange(FootEdits.OfRun(context, trunk.Trunk, line));
        Keep(trunk, trunk with { Trunk = trunk.Trunk with { Line = line } });
        moves.Add(new(trunk.Name, PlanPoint.Origin.DistanceTo(new(way.Right, way.Back)), Bearing.Of(way.Right.Millimetres, way.Back.Millimetres), trunk.Place!.Value, null, null, IsMoved: false));
    }

    private static Length Tenth(Length length) => Length.FromMillimetres(Math.Round(length.Millimetres * 100) / 100);

    private void Keep(TrunkState was, TrunkState now) => changed.Add(was.Trunk, now);

    private string Number(Length length) => context.Units == UnitSystem.Inch ? LengthWording.Say(length.Inches, 5) : LengthWording.Say(length.Millimetres, 3);

    private string Say(Length length) => $"{Number(length)} {(context.Units == UnitSystem.Inch ? "in" : "mm")}";
}
