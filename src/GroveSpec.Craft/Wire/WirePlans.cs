using System.Collections.Immutable;
using GroveSpec.Craft.Care;
using GroveSpec.Craft.Views;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;
using GroveSpec.Model.States;
using GroveSpec.Model.Tasks;
using GroveSpec.Model.Trunks;

namespace GroveSpec.Craft.Wire;

/// <summary>Plans every wire of a planting.</summary>
public static class WirePlans
{
    /// <summary>The least and the most that still is about a third of a trunk, as one aluminium wire. Source: common practice says "about"; a quarter to nine twentieths is how it is taken here.</summary>
    public static readonly (Proportion Least, Proportion Most) AboutAThird = (new(0.25), new(0.45));

    private const int Slices = 24;
    private const double AnchorTurns = 1.5;

    // Beyond these a wire lies along the trunk, or never gets along it, and there is nothing to wind.
    private const double FlattestCoil = 5;
    private const double SteepestCoil = 85;

    // How far a wire can be pushed into soil of unknown depth, and at most; common practice.
    private static readonly Length UsualSoil = Length.FromMillimetres(60);
    private static readonly Length DeepestSoil = Length.FromMillimetres(80);

    /// <summary>The plans.</summary>
    /// <param name="state">The planting on a day; its trunks are taken as thick as they were last measured on it.</param>
    /// <param name="work">All its work.</param>
    /// <returns>One for each trunk of each wire task that has not been taken out of the planting, tasks in the order of the file, trunks by name.</returns>
    public static ImmutableArray<WirePlan> Of(PlantingState state, ImmutableArray<Work> work)
    {
        var terms = WireTerm.Of(work);
        if (terms.IsEmpty)
        {
            return [];
        }

        var trunks = new Dictionary<string, TrunkState>(StringComparer.Ordinal);
        foreach (var trunk in state.Trunks)
        {
            trunks.TryAdd(trunk.Name, trunk);
        }

        return [.. terms.SelectMany(term => term.Wire.Trunks.Select(name => trunks[name]).Where(trunk => trunk.Presence != Presence.Removed).Select(trunk => Of(state.Planting, term, trunk)))];
    }

    private static WirePlan Of(Planting planting, WireTerm term, TrunkState trunk)
    {
        var details = term.Wire.Dated.Task.Details;
        var species = planting.SpeciesOf(trunk.Trunk);
        var kind = term.Wire.Kinds.FirstOrDefault(kind => kind.Species == species) ?? WorkList.KindOf(planting, species);
        var stated = details.OfType<TaskDetail.WithWire>().FirstOrDefault();
        var plan = new WirePlan
        {
            Term = term,
            Trunk = trunk,
            Kind = kind,
            Stated = stated,
            StatedCoil = details.OfType<TaskDetail.Coil>().FirstOrDefault(),
            Span = details.OfType<TaskDetail.Span>().FirstOrDefault(),
            Run = RunOf(trunk),
            Place = Length.Zero,
            Thickening = new Thickening(kind, planting.RoleOf(trunk.Trunk)?.Vigour?.Value),
        };
        plan = plan with { Place = PlaceOf(plan, details) };
        if (trunk.Diameter is not { } diameter)
        {
            return plan with { Used = UsedOf(stated, null) };
        }

        var thickness = plan.Run is { } run ? Taper.ThicknessAt(diameter.Value, run, plan.Place) : diameter.Value;
        plan = plan with { Thickness = thickness };
        var metal = stated?.Metal ?? WireMetal.Aluminium;
        var (one, two) = (WireSizes.Nearest(metal, plan.Third!.Value, 1), WireSizes.Nearest(metal, plan.Third.Value, 2));
        var best = IsNearer(two, one, plan.Third.Value) && !IsAboutAThird(one, thickness) ? two : one;
        plan = plan with { Nearest = (one, two), Best = best, Used = UsedOf(stated, best) };
        plan = plan with { Winding = WindingOf(planting, plan, diameter.Value) };
        return plan with { Bend = BendOf(plan, details.OfType<TaskDetail.Bend>().FirstOrDefault()) };
    }

    private static bool IsAboutAThird(WireSize size, Length thickness) =>
        size.AluminiumEqual >= thickness * AboutAThird.Least.Share && size.AluminiumEqual <= thickness * AboutAThird.Most.Share;

    private static bool IsNearer(WireSize one, WireSize other, Length wanted) =>
        Math.Abs((one.AluminiumEqual - wanted).Nanometres) < Math.Abs((other.AluminiumEqual - wanted).Nanometres);

    private static WireSize? UsedOf(TaskDetail.WithWire? stated, WireSize? best) =>
        stated is null ? best : new WireSize(stated.Metal, stated.Diameter, null, stated.Strands);

    // The run does not hang on the place, which a trunk that tape readings cannot place has none of.
    private static Length? RunOf(TrunkState trunk) =>
        TrunkAxis.Of(trunk.Place is null ? trunk with { Place = FootOf(trunk.Trunk) } : trunk)?.Run is { } run && run > Length.Zero ? run : null;

    private static PlanPoint FootOf(Trunk trunk) => trunk.Line.IsEmpty ? new PlanPoint(Length.Zero, Length.Zero) : new PlanPoint(trunk.Line[0].X, trunk.Line[0].Y);

    private static Length PlaceOf(WirePlan plan, ImmutableArray<TaskDetail> details)
    {
        if (plan.Span is { } span)
        {
            var (from, to) = PartOf(span, plan.Run);
            return (from + to) * 0.5;
        }

        return plan.Run is { } run && details.OfType<TaskDetail.At>().FirstOrDefault() is { } at ? run * (((int)at.Position * 2 + 1) / 6.0) : Length.Zero;
    }

    private static (Length From, Length To) PartOf(TaskDetail.Span span, Length? run) => run is { } tip ? (Least(span.From, tip), Least(span.To, tip)) : (span.From, span.To);

    private static Length Least(Length one, Length other) => one < other ? one : other;

    private static WireWinding? WindingOf(Planting planting, WirePlan plan, Length diameter)
    {
        if (plan.Span is not { } span || plan.Used is not { } wire || plan.Coil.Degrees is < FlattestCoil or > SteepestCoil)
        {
            return null;
        }

        var (from, to) = PartOf(span, plan.Run);
        if (from >= to)
        {
            return null;
        }

        var turns = 0.0;
        for (var slice = 0; slice < Slices; slice++)
        {
            var (low, high) = (from + ((to - from) * (slice / (double)Slices)), from + ((to - from) * ((slice + 1) / (double)Slices)));
            turns += Helix.Turns(high - low, ThicknessAt(low), ThicknessAt(high), wire.Diameter, plan.Coil);
        }

        var pitch = Helix.Pitch(ThicknessAt(from), wire.Diameter, plan.Coil);
        var anchor = from < pitch * AnchorTurns ? WireAnchor.Soil : WireAnchor.Turns;
        var soil = planting.Container is { } container ? Least(container.Depth, DeepestSoil) : UsualSoil;
        var winding = new WireWinding
        {
            Part = (from, to),
            IsCutAtTip = to < span.To,
            Helix = Helix.Length(to - from, plan.Coil),
            Anchor = anchor,
            AnchorLength = anchor == WireAnchor.Soil ? Helix.Length(from, plan.Coil) + soil : Helix.Length(pitch * AnchorTurns, plan.Coil),
            Turns = turns,
            Pitch = (pitch, Helix.Pitch(ThicknessAt(to), wire.Diameter, plan.Coil)),
            Strands = wire.Strands,
            Mass = default,
        };
        return winding with { Mass = WireMaterial.Of(wire.Metal).MassOf(wire.Diameter, winding.Cut * wire.Strands) };

        Length ThicknessAt(Length along) => plan.Run is { } run ? Taper.ThicknessAt(diameter, run, along) : diameter;
    }

    private static WireBend? BendOf(WirePlan plan, TaskDetail.Bend? bend)
    {
        if (bend is null || bend.Angle.Degrees <= 0 || plan.Thickness is not { } thickness || plan.Used is not { } wire
            || (bend.Over ?? (plan.Winding is { } winding ? winding.Part.To - winding.Part.From : null)) is not { } over || over <= Length.Zero)
        {
            return null;
        }

        var (wood, material, limit) = (GreenWood.Of(plan.Kind), WireMaterial.Of(wire.Metal), plan.Kind.Profile?.BendLimit?.Value);
        var radius = Bending.Radius(over, bend.Angle);
        var strain = Bending.OuterFibreStrain(thickness, radius);

        // Springy wood bears no more than that at which it breaks in a test.
        var borne = strain < wood.BreakingStrain ? strain : wood.BreakingStrain;
        return new WireBend
        {
            Stated = bend,
            Over = over,
            Radius = radius,
            Strain = strain,
            Wood = wood,
            SpeciesLimit = limit,
            OfWood = (Bending.OfWood(wood.Softest, borne, thickness), Bending.OfWood(wood.Usual, borne, thickness), Bending.OfWood(wood.Stiffest, borne, thickness)),
            OfWire = Bending.OfWires(material.Yield, wire.Diameter, wire.Strands),
            Balancing = thickness * Bending.BalancingShare(borne, wood.Usual, material.Yield, 1),
            KeptAlone = Bending.KeptAlone(material, wire.Diameter, radius),
            LengthForReference = Bending.LengthFor(thickness, bend.Angle, limit ?? wood.BreakingStrain),
        };
    }
}
