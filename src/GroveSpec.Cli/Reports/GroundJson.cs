using System.Collections.Immutable;
using System.Text.Json;
using GroveSpec.Binding;
using GroveSpec.Checks;
using GroveSpec.Checks.Ground;
using GroveSpec.Cli.Files;
using GroveSpec.Model.Quantities;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Reports;

/// <summary>Writes free ground as JSON for programs. The shape is described by docs/ground.schema.json.</summary>
internal static class GroundJson
{
    /// <summary>Writes a run.</summary>
    /// <param name="plantings">What was read, and what was found for each.</param>
    /// <param name="sources">The texts that were read.</param>
    /// <param name="troubles">Files that could not be read, and why.</param>
    /// <param name="stream">Where to; it is left open.</param>
    public static void Write(IEnumerable<(Assessment Planting, GroundAnswer Answer)> plantings, SourceLibrary sources, IReadOnlyList<FileTroubleException> troubles, Stream stream) =>
        PlantingsJson.Write(plantings, troubles, stream, (json, one) => WritePlanting(json, one.Planting, one.Answer, sources));

    private static void WritePlanting(Utf8JsonWriter json, Assessment planting, GroundAnswer answer, SourceLibrary sources)
    {
        json.WriteStartObject();
        json.WriteString("file", planting.File);
        json.WriteString("planting", planting.Planting.Name?.Value);
        PlantingsJson.WriteDay(json, "day", planting.Date);
        json.WriteString("obstacle", answer.Obstacle);
        WriteTrunk(json, answer);
        json.WriteNumber("freeArea", answer.FreeArea);
        PlantingsJson.WriteNumber(json, "wholeArea", answer.WholeArea);
        PlantingsJson.WriteNumber(json, "reach", answer.Reach?.Millimetres);
        json.WriteNumber("step", answer.Step.Millimetres);
        json.WriteStartArray("outline");
        foreach (var ring in answer.Outline)
        {
            json.WriteStartArray();
            foreach (var corner in ring)
            {
                WritePoint(json, corner);
            }

            json.WriteEndArray();
        }

        json.WriteEndArray();
        json.WriteStartArray("takenBy");
        foreach (var (check, share) in answer.Takers)
        {
            json.WriteStartObject();
            json.WriteString("check", check);
            json.WriteNumber("share", share);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("spots");
        foreach (var spot in answer.Spots)
        {
            WriteSpot(json, spot, sources);
        }

        json.WriteEndArray();
        WriteFindings(json, "anywhere", answer.Anywhere);
        PlantingsJson.WriteWords(json, "notes", answer.Notes);
        json.WriteEndObject();
    }

    private static void WriteTrunk(Utf8JsonWriter json, GroundAnswer answer)
    {
        json.WritePropertyName("trunk");
        if (answer.Trunk is not { } trunk)
        {
            json.WriteNullValue();
            return;
        }

        json.WriteStartObject();
        json.WriteString("name", trunk.Name);
        json.WriteBoolean("isOneMore", answer.IsOneMore);
        json.WriteNumber("diameter", trunk.Diameter!.Value.Value.Millimetres);
        PlantingsJson.WriteNumber(json, "height", trunk.Height?.Value.Millimetres);
        json.WriteEndObject();
    }

    private static void WriteSpot(Utf8JsonWriter json, GroundSpot spot, SourceLibrary sources)
    {
        json.WriteStartObject();
        json.WriteNumber("x", spot.Place.X.Millimetres);
        json.WriteNumber("y", spot.Place.Y.Millimetres);
        json.WriteNumber("room", spot.Room.Millimetres);
        json.WriteNumber("score", spot.Score);
        json.WriteString("why", spot.Why);
        json.WriteString("limitedBy", spot.LimitedBy);
        PlantingsJson.WriteWords(json, "limitedByTrunks", spot.LimitedByTrunks);
        json.WritePropertyName("nearestEdge");
        if (spot.NearestEdge is { } edge)
        {
            WritePoint(json, edge);
        }
        else
        {
            json.WriteNullValue();
        }

        WriteFindings(json, "raises", spot.Raises);
        WriteFindings(json, "clears", spot.Clears);
        JsonReport.WriteEdits(json, spot.Edits, sources);
        json.WriteEndObject();
    }

    private static void WritePoint(Utf8JsonWriter json, PlanPoint point)
    {
        json.WriteStartArray();
        json.WriteNumberValue(Math.Round(point.X.Millimetres, 3));
        json.WriteNumberValue(Math.Round(point.Y.Millimetres, 3));
        json.WriteEndArray();
    }

    private static void WriteFindings(Utf8JsonWriter json, string name, ImmutableArray<Finding> findings)
    {
        json.WriteStartArray(name);
        foreach (var finding in findings)
        {
            json.WriteStartObject();
            json.WriteString("check", finding.Check.Name);
            PlantingsJson.WriteWords(json, "trunks", finding.Trunks);
            json.WriteString("message", finding.Message);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
