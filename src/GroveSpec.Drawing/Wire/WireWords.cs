using System.Collections.Immutable;
using GroveSpec.Checks;
using GroveSpec.Craft.Wire;
using GroveSpec.Drawing.Timeline;
using GroveSpec.Model;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Drawing.Wire;

/// <summary>A wire in words, as its sheet, the terminal and the book say it. Text from the file comes through as it is.</summary>
public static class WireWords
{
    // Less than a caliper reads twice alike.
    private static readonly Length Hardly = Length.FromMillimetres(0.15);

    /// <summary>What is said of one wire on one trunk.</summary>
    /// <param name="plan">The wire.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>Its lines; what cannot be reckoned is said with what the file should add.</returns>
    public static ImmutableArray<WireLine> Of(WirePlan plan, UnitSystem units)
    {
        var lines = ImmutableArray.CreateBuilder<WireLine>();
        lines.Add(new("Trunk", Trunk(plan, units)));
        lines.Add(new("Wire", Size(plan, units)));
        if (plan.Winding is { } winding)
        {
            lines.Add(new("Cut", Cut(plan, winding, units)));
            lines.Add(new("Wind", Wind(plan, winding, units)));
        }
        else if (plan.Thickness is not null)
        {
            lines.Add(new("Cut", plan.Span is null ? "The file does not say which part of the trunk is wired: add a span, such as span 20 to 160 mm." : "Nothing can be wound at this angle or beyond the tip of this trunk."));
        }

        if (plan.Bend is { } bend)
        {
            lines.Add(new("Bend", Bend(plan, bend, units)));
            lines.Add(new("Compare", Compare(bend, units)));
        }

        lines.Add(new("Watch", Watch(plan, units)));
        return lines.ToImmutable();
    }

    /// <summary>The usual cautions for the wire of a planting.</summary>
    /// <param name="planting">The planting.</param>
    /// <param name="plans">Its wires.</param>
    /// <returns>Those for the work, then those of the wired species; none without a wire.</returns>
    public static ImmutableArray<string> Cautions(Planting planting, ImmutableArray<WirePlan> plans) =>
    [
        .. Drawing.Cautions.Of(planting, plans.Select(plan => plan.Term.Wire.Dated.Task).Distinct()),
        .. plans.Select(plan => plan.Kind).Distinct().SelectMany(kind => kind.Profile?.Cautions ?? [], (kind, caution) => $"{Capital(kind.Said)}: {caution.Value}").Distinct(StringComparer.Ordinal),
    ];

    /// <summary>One size to buy.</summary>
    /// <param name="purchase">The size.</param>
    /// <param name="units">The units to speak in.</param>
    /// <returns>Such as "aluminium of 3.5 mm: 2 pieces, 420 mm and 310 mm; 0.73 m in all, 19 g".</returns>
    public static string Buy(WirePurchase purchase, UnitSystem units)
    {
        const int MostNamed = 12;
        var pieces = purchase.Pieces.Take(MostNamed).Select(piece => LengthWording.Say(piece, units)).ToArray();
        var named = purchase.Pieces.Length > MostNamed ? $"{string.Join(", ", pieces)} and {purchase.Pieces.Length - MostNamed} shorter"
            : pieces.Length == 1 ? pieces[0] : $"{string.Join(", ", pieces[..^1])} and {pieces[^1]}";
        return $"{WireWording.Say(new WireSize(purchase.Metal, purchase.Diameter, null, 1), units)}: {(pieces.Length == 1 ? "1 piece" : $"{purchase.Pieces.Length} pieces")}, {named}; {InAll(purchase.Total, units)} in all, {Grams(purchase.Mass)}";
    }

    private static string Trunk(WirePlan plan, UnitSystem units) => plan.Thickness is not { } thickness
        ? "Its diameter is not known: measure it above the flare at the soil."
        : plan.Place == Length.Zero
            ? $"{LengthWording.Say(thickness, units)} thick above its flare{(plan.Run is null ? ", which is taken for the whole trunk, since its height is not known" : "")}."
            : $"{LengthWording.Say(thickness, units)} thick {LengthWording.Say(plan.Place, units)} up the trunk, the middle of what is wired{(plan.Run is null ? ", as at its foot, since its height is not known" : $", from {LengthWording.Say(plan.Trunk.Diameter!.Value.Value, units)} above the flare")}.";

    private static string Size(WirePlan plan, UnitSystem units)
    {
        if (plan.Third is not { } third || plan.Nearest is not { } nearest)
        {
            return plan.Used is { } used ? $"{Capital(WireWording.Say(used, units))}, as the file says; without the trunk’s diameter it cannot be held against it." : "Common practice takes about a third of the trunk’s thickness where it bends.";
        }

        var (one, two) = (WireWording.Say(nearest.One, units), WireWording.Say(nearest.Two, units));
        var advice = $"About a third, as common practice has it, is {LengthWording.Say(third, units)}: of what is sold, {one} or {two} come nearest";
        return plan.Stated is null
            ? $"{advice}. {Capital(WireWording.Say(plan.Best!.Value, units))} is taken here, since the file names none."
            : $"{Capital(WireWording.Say(plan.Used!.Value, units))}, {LengthWording.Say(plan.Share!.Value.Percent, 0)} % of the trunk there{(plan.Used.Value.AluminiumEqual == plan.Used.Value.Diameter ? "" : $" when it is taken as the one aluminium wire that bends as hard, {LengthWording.Say(plan.Used.Value.AluminiumEqual, units)}")}. {advice}.";
    }

    private static string Cut(WirePlan plan, WireWinding winding, UnitSystem units)
    {
        var count = winding.Strands == 1 ? "One wire" : $"{winding.Strands} wires";
        var anchor = winding.Anchor == WireAnchor.Soil
            ? $"{LengthWording.Say(winding.AnchorLength, units)} from there down into the soil behind the trunk"
            : $"{LengthWording.Say(winding.AnchorLength, units)} for one and a half turns below as its hold";
        var tip = winding.IsCutAtTip ? " The span ends beyond the tip and is taken to the tip." : "";
        return $"{count} of {LengthWording.Say(winding.Cut, units)}{(winding.Strands == 1 ? "" : " each")}: {LengthWording.Say(winding.Helix, units)} round the trunk from {LengthWording.Say(winding.Part.From, units)} to {LengthWording.Say(winding.Part.To, units)}, and {anchor}. {Grams(winding.Mass)}.{tip}";
    }

    private static string Wind(WirePlan plan, WireWinding winding, UnitSystem units)
    {
        var angle = $"{LengthWording.Say(plan.Coil.Degrees, 1)} deg from the trunk’s axis{(plan.StatedCoil is null ? ", since the file names no angle" : "")}";
        var (lower, upper) = LengthWording.SayApart(winding.Pitch.Lower, winding.Pitch.Upper, units);
        var pitch = lower == upper ? $"each climbing {lower}" : $"climbing {lower} each at the lower end and {upper} at the upper";
        var loop = plan.Bend is { } bend ? $" At the middle of the bend a turn lies on the outside, {Side(bend.LoopSide)}." : "";
        return $"{LengthWording.Say(winding.Turns, 1)} turns at {angle}, {pitch}. Lay it on, do not pull it tight.{loop}";
    }

    private static string Bend(WirePlan plan, WireBend bend, UnitSystem units)
    {
        var over = bend.Stated.Over is null ? ", the wired part, since the file names no length" : "";
        var limit = bend.SpeciesLimit is { } own
            ? $"The profile of {plan.Kind.Said} gives {Strain(own)} as its limit"
            : $"No limit is known for {plan.Kind.Said}; {bend.Wood.Wood} breaks at about {Strain(bend.Wood.BreakingStrain)} in a laboratory, and young living stems give more, by an amount that nobody has measured";
        var spread = bend.Passes > 1
            ? $". It is stretched no further than that over {LengthWording.Say(bend.LengthForReference, units)}, or in {bend.Passes} passes, each a little past its goal and held until it has set"
            : "; this stays under it. Go a little past the goal and let it settle";
        return $"{LengthWording.Say(bend.Stated.Angle.Degrees, 1)} deg {Toward(bend.Stated.Toward)}, over {LengthWording.Say(bend.Over, units)}{over}: a radius of {LengthWording.Say(bend.Radius, units)}, by which the outer fibres are stretched {Strain(bend.Strain)}. {limit}{spread}. The hands carry the load, not the container.";
    }

    private static string Compare(WireBend bend, UnitSystem units) =>
        $"For comparison, and no promise: at this bend {bend.Wood.Wood} pushes back with {WireWording.Say(bend.OfWood.Usual)} in a laboratory ({WireWording.Say(bend.OfWood.Softest)} to {WireWording.Say(bend.OfWood.Stiffest)}), the wire bears {WireWording.Say(bend.OfWire)} and alone would keep {LengthWording.Say(bend.KeptAlone.Percent, 0)} % of the bend. To match springy wood it would take one wire of {LengthWording.Say(bend.Balancing, units)}; a third is enough in practice since living wood yields and creeps.";

    private static string Watch(WirePlan plan, UnitSystem units)
    {
        var term = plan.Term;
        if (term.IsOff)
        {
            return $"It was on from {DayWords.Day(term.On ?? term.Off!.Value)} and came off on {DayWords.Day(term.Off!.Value)}.";
        }

        var on = term.On is not { } day ? "The file gives no day for it yet"
            : !term.Wire.Dated.Task.Done.IsEmpty ? $"It is on since {DayWords.Day(day)}"
            : term.Wire.Dated.Window?.Earliest is { } first ? $"It goes on {DayWords.Range(first, day)}" : $"It goes on by {DayWords.Day(day)}";
        var off = term.Off is { } last ? $" and comes off by {DayWords.Day(last)}" : term.Removal is null ? " and no task takes it off" : " and no day is known by which it is off";
        return $"{on}{off}. {Looks(term)}{Thickens(plan, units)}";
    }

    private static string Looks(WireTerm term)
    {
        if (term.Looks.IsEmpty)
        {
            return "No task looks it over: look every 2 weeks.";
        }

        var look = term.Looks[0];
        var days = look.Repeats.IsEmpty ? (look.Window is null ? "" : $": {TaskWords.When(look)}") : $": {string.Join(", ", look.Repeats.Take(4).Select(DayWords.Day))}{(look.Repeats.Length > 4 ? " and on" : "")}";
        return $"Look it over{days}.";
    }

    private static string Thickens(WirePlan plan, UnitSystem units)
    {
        if (plan.Term.On is not { } on || plan.BitingGrowth is not { } growth)
        {
            return "";
        }

        var (least, most) = plan.Thickening.OfYear;
        var by = plan.Term.Off is { } off && off > on ? off : on.PlusDays(56);
        var share = plan.Thickening.ShareBetween(on, by);
        var soonest = plan.BiteBy(isSoonest: true) is { } early ? DayWords.Day(early) : "years from now";
        var (little, much) = (LengthWording.Say(least * share, units), LengthWording.Say(most * share, units));
        var thicker = most * share < Hardly ? "hardly thicker" : little == much ? $"about {much} thicker" : $"{little} to {much} thicker";
        return $" By {DayWords.Day(by)} the trunk may be {thicker}, and this wire is expected to bite after {LengthWording.Say(growth, units)}, {(soonest == "years from now" ? "which is years away" : $"on {soonest} at the soonest")}. That is a wide guess: the bark decides, and common practice has wire off in 6 to 8 weeks of growth.";
    }

    private static string Toward(Bearing bearing) => $"toward {LengthWording.Say(bearing.Degrees, 1)} deg, {Way(bearing)}";

    private static string Side(Bearing bearing) => $"{LengthWording.Say(bearing.Degrees, 1)} deg, {Way(bearing)}";

    private static string Way(Bearing bearing) => (int)Math.Round(bearing.Degrees / 45) switch
    {
        1 => "the back right",
        2 => "the right",
        3 => "the front right",
        4 => "the front",
        5 => "the front left",
        6 => "the left",
        7 => "the back left",
        _ => "the back",
    };

    private static string Strain(Proportion strain) => LengthWording.Say(strain.Percent, strain.Percent < 9.95 ? 2 : 0) + " %";

    private static string Grams(Mass mass) => LengthWording.Say(mass.Grams, mass.Grams < 9.95 ? 1 : 0) + " g";

    private static string InAll(Length length, UnitSystem units) => units == UnitSystem.Metric ? LengthWording.Say(length.Millimetres / 1000, 2) + " m" : LengthWording.Say(length, units);

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
