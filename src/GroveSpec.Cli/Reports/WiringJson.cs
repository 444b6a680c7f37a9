using System.Collections.Immutable;
using System.Text.Json;
using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Cli.Files;
using GroveSpec.Craft.Wire;
using GroveSpec.Drawing.Wire;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Cli.Reports;

/// <summary>Writes wires as JSON for programs. The shape is described by docs/wiring.schema.json.</summary>
internal static class WiringJson
{
    /// <summary>Writes a run.</summary>
    /// <param name="plantings">What was read, with the wires of each.</param>
    /// <param name="troubles">Files that could not be read, and why.</param>
    /// <param name="stream">Where to; it is left open.</param>
    public static void Write(ImmutableArray<(Assessment Planting, ImmutableArray<WirePlan> Plans)> plantings, IReadOnlyList<FileTroubleException> troubles, Stream stream) =>
        PlantingsJson.Write(plantings, troubles, stream, (json, one) => WritePlanting(json, one.Planting, one.Plans));

    private static void WritePlanting(Utf8JsonWriter json, Assessment planting, ImmutableArray<WirePlan> plans)
    {
        json.WriteStartObject();
        json.WriteString("file", planting.File);
        json.WriteString("planting", planting.Planting.Name?.Value);
        PlantingsJson.WriteDay(json, "day", planting.Date);
        json.WriteStartArray("wires");
        foreach (var plan in plans)
        {
            WriteWire(json, plan);
        }

        json.WriteEndArray();
        json.WriteStartArray("toBuy");
        foreach (var purchase in WirePurchase.Of(plans))
        {
            json.WriteStartObject();
            json.WriteString("metal", WireWording.Metal(purchase.Metal));
            json.WriteNumber("diameterMm", purchase.Diameter.Millimetres);
            json.WriteStartArray("piecesMm");
            foreach (var piece in purchase.Pieces)
            {
                json.WriteNumberValue(piece.Millimetres);
            }

            json.WriteEndArray();
            json.WriteNumber("totalMm", purchase.Total.Millimetres);
            json.WriteNumber("massGrams", purchase.Mass.Grams);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("cautions");
        foreach (var caution in WireWords.Cautions(planting.Planting, plans))
        {
            json.WriteStringValue(caution);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteWire(Utf8JsonWriter json, WirePlan plan)
    {
        json.WriteStartObject();
        json.WriteString("task", plan.Term.Wire.Dated.Task.Name);
        json.WriteString("trunk", plan.Trunk.Name);
        WriteLength(json, "placeMm", plan.Place);
        WriteLength(json, "thicknessMm", plan.Thickness);
        WriteLength(json, "thirdMm", plan.Third);
        WriteSize(json, "wire", plan.Used);
        json.WriteBoolean("isWireStated", plan.Stated is not null);
        PlantingsJson.WriteNumber(json, "wirePercent", plan.Share?.Percent);
        WriteSize(json, "nearestOne", plan.Nearest?.One);
        WriteSize(json, "nearestTwo", plan.Nearest?.Two);
        json.WriteNumber("coilDeg", plan.Coil.Degrees);
        json.WriteNumber("coilStiffness", Bending.StiffnessOfCoil(plan.Coil));
        WriteWinding(json, plan.Winding);
        WriteBend(json, plan.Bend);
        WriteWatch(json, plan);
        json.WriteEndObject();
    }

    private static void WriteWinding(Utf8JsonWriter json, WireWinding? winding)
    {
        if (winding is null)
        {
            json.WriteNull("winding");
            return;
        }

        json.WriteStartObject("winding");
        WriteLength(json, "fromMm", winding.Part.From);
        WriteLength(json, "toMm", winding.Part.To);
        WriteLength(json, "helixMm", winding.Helix);
        json.WriteString("anchor", winding.Anchor == WireAnchor.Soil ? "soil" : "turns");
        WriteLength(json, "anchorMm", winding.AnchorLength);
        WriteLength(json, "cutMm", winding.Cut);
        json.WriteNumber("turns", winding.Turns);
        WriteLength(json, "pitchLowerMm", winding.Pitch.Lower);
        WriteLength(json, "pitchUpperMm", winding.Pitch.Upper);
        json.WriteNumber("massGrams", winding.Mass.Grams);
        json.WriteEndObject();
    }

    private static void WriteBend(Utf8JsonWriter json, WireBend? bend)
    {
        if (bend is null)
        {
            json.WriteNull("bend");
            return;
        }

        json.WriteStartObject("bend");
        json.WriteNumber("angleDeg", bend.Stated.Angle.Degrees);
        json.WriteNumber("towardDeg", bend.Stated.Toward.Degrees);
        WriteLength(json, "overMm", bend.Over);
        WriteLength(json, "radiusMm", bend.Radius);
        json.WriteNumber("strainPercent", bend.Strain.Percent);
        PlantingsJson.WriteNumber(json, "limitPercent", bend.SpeciesLimit?.Percent);
        json.WriteString("wood", bend.Wood.Wood);
        json.WriteNumber("woodBreaksAtPercent", bend.Wood.BreakingStrain.Percent);
        WriteLength(json, "lengthUnderReferenceMm", bend.LengthForReference);
        json.WriteNumber("passes", bend.Passes);
        json.WriteNumber("loopSideDeg", bend.LoopSide.Degrees);
        json.WriteStartArray("woodMomentNmm");
        json.WriteNumberValue(bend.OfWood.Softest.NewtonMillimetres);
        json.WriteNumberValue(bend.OfWood.Usual.NewtonMillimetres);
        json.WriteNumberValue(bend.OfWood.Stiffest.NewtonMillimetres);
        json.WriteEndArray();
        json.WriteNumber("wireMomentNmm", bend.OfWire.NewtonMillimetres);
        WriteLength(json, "balancingWireMm", bend.Balancing);
        json.WriteNumber("keptAlonePercent", bend.KeptAlone.Percent);
        json.WriteEndObject();
    }

    private static void WriteWatch(Utf8JsonWriter json, WirePlan plan)
    {
        var (term, (least, most)) = (plan.Term, plan.Thickening.OfYear);
        json.WriteStartObject("watch");
        PlantingsJson.WriteDay(json, "onBy", term.On);
        PlantingsJson.WriteDay(json, "offBy", term.Off);
        json.WriteBoolean("isOff", term.IsOff);
        WriteLength(json, "thickensLeastInYearMm", least);
        WriteLength(json, "thickensMostInYearMm", most);
        PlantingsJson.WriteNumber(json, "shareOfYearWhileOn", term.On is { } on && term.Off is { } off && off >= on ? plan.Thickening.ShareBetween(on, off) : null);
        WriteLength(json, "bitesAfterMm", plan.BitingGrowth);
        PlantingsJson.WriteDay(json, "bitesSoonest", plan.BiteBy(isSoonest: true));
        PlantingsJson.WriteDay(json, "bitesUsually", plan.BiteBy(isSoonest: false));
        json.WriteEndObject();
    }

    private static void WriteSize(Utf8JsonWriter json, string name, WireSize? size)
    {
        if (size is not { } known)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteString("metal", WireWording.Metal(known.Metal));
        json.WriteNumber("diameterMm", known.Diameter.Millimetres);
        json.WriteNumber("strands", known.Strands);
        PlantingsJson.WriteNumber(json, "gauge", known.Gauge);
        json.WriteNumber("aluminiumEqualMm", known.AluminiumEqual.Millimetres);
        json.WriteEndObject();
    }

    private static void WriteLength(Utf8JsonWriter json, string name, Length? length) => PlantingsJson.WriteNumber(json, name, length?.Millimetres);
}
