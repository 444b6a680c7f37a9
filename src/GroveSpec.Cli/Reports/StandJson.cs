using System.Text.Json;
using GroveSpec.Binding;
using GroveSpec.Checks.Standing;
using GroveSpec.Cli.Files;
using GroveSpec.Craft.Stand;
using GroveSpec.Model.States;

namespace GroveSpec.Cli.Reports;

/// <summary>Writes how plantings stand as JSON for programs. The shape is described by docs/stand.schema.json.</summary>
internal static class StandJson
{
    /// <summary>Writes a run.</summary>
    /// <param name="plantings">What was read, and how each stands.</param>
    /// <param name="troubles">Files that could not be read, and why.</param>
    /// <param name="stream">Where to; it is left open.</param>
    public static void Write(IEnumerable<(Assessment Planting, StandDescription Described)> plantings, IReadOnlyList<FileTroubleException> troubles, Stream stream) =>
        PlantingsJson.Write(plantings, troubles, stream, (json, one) => WritePlanting(json, one.Planting, one.Described), WriteRealStands);

    private static void WritePlanting(Utf8JsonWriter json, Assessment planting, StandDescription described)
    {
        json.WriteStartObject();
        json.WriteString("file", planting.File);
        json.WriteString("planting", planting.Planting.Name?.Value);
        json.WriteString("day", planting.Date is { } day ? IsoDay.Of(day) : null);
        WriteNames(json, "trunks", described.Stems);
        WriteNames(json, "withoutPlace", described.Unplaced);
        WriteNames(json, "withoutDiameter", described.Stems.Except(described.Sized));
        json.WriteStartObject("ground");
        json.WriteString("is", described.Ground.IsContainer ? "container" : "enclosed");
        json.WriteNumber("areaSquareMillimetres", described.Ground.AreaInSquareMillimetres);
        json.WriteNumber("perimeterMillimetres", described.Ground.Perimeter.Millimetres);
        json.WriteEndObject();
        PlantingsJson.WriteNumber(json, "meanNearestMillimetres", described.MeanNearest?.Millimetres);
        json.WriteStartArray("nearest");
        foreach (var one in described.Nearest)
        {
            json.WriteStartObject();
            json.WriteString("trunk", one.Stem.Name);
            json.WriteString("nearest", one.Nearest.Name);
            json.WriteNumber("millimetres", one.Distance.Millimetres);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("indices");
        foreach (var index in described.Indices)
        {
            WriteIndex(json, index);
        }

        json.WriteEndObject();
        json.WriteStartObject("uncorrected");
        PlantingsJson.WriteNumber(json, "clarkEvans", described.UncorrectedClarkEvans);
        PlantingsJson.WriteNumber(json, "clarkEvansScore", described.ClarkEvansScore);
        PlantingsJson.WriteNumber(json, "basalAreaGini", described.UncorrectedBasalAreaGini);
        PlantingsJson.WriteNumber(json, "diameterGini", described.DiameterGini);
        json.WriteEndObject();
        json.WriteStartArray("dominance");
        for (var index = 0; index < described.Dominance.Length; index++)
        {
            json.WriteStartObject();
            json.WriteString("trunk", described.Sized[index].Name);
            json.WriteNumber("thickerNeighbours", described.Dominance[index]);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteIndex(Utf8JsonWriter json, StandIndex index)
    {
        json.WriteStartObject(StandWords.Word(index.Kind));
        PlantingsJson.WriteNumber(json, "value", index.Value);
        json.WriteString("reading", StandWords.Word(index.Reading));
        if (index.Chance is { } chance)
        {
            json.WriteStartObject("chance");
            json.WriteNumber("runs", chance.Runs);
            json.WriteNumber("mean", chance.Mean);
            json.WriteNumber("standardDeviation", chance.StandardDeviation);
            json.WriteNumber("low", chance.Low);
            json.WriteNumber("high", chance.High);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("chance");
        }

        json.WriteEndObject();
    }

    private static void WriteRealStands(Utf8JsonWriter json)
    {
        json.WriteStartArray("realStands");
        foreach (var stand in NaturalStand.All)
        {
            json.WriteStartObject();
            json.WriteString("name", stand.Name);
            json.WriteString("dataSet", stand.DataSet);
            json.WriteNumber("trunks", stand.Stems);
            json.WriteNumber("clarkEvans", stand.ClarkEvans);
            json.WriteNumber("uniformAngle", stand.UniformAngle);
            PlantingsJson.WriteNumber(json, "heightDifferentiation", stand.HeightDifferentiation);
            PlantingsJson.WriteNumber(json, "basalAreaGini", stand.BasalAreaGini);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteNames(Utf8JsonWriter json, string name, IEnumerable<TrunkState> trunks)
    {
        json.WriteStartArray(name);
        foreach (var trunk in trunks)
        {
            json.WriteStringValue(trunk.Name);
        }

        json.WriteEndArray();
    }
}
