using System.Text.Json;
using GroveSpec.Binding;
using GroveSpec.Checks.Nudging;
using GroveSpec.Cli.Files;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Reports;

/// <summary>Writes which moves clear the findings as JSON for programs. The shape is described by docs/nudge.schema.json.</summary>
internal static class NudgeJson
{
    /// <summary>Writes a run.</summary>
    /// <param name="plantings">What was read, and what was found for each.</param>
    /// <param name="sources">The texts that were read.</param>
    /// <param name="troubles">Files that could not be read, and why.</param>
    /// <param name="stream">Where to; it is left open.</param>
    public static void Write(IEnumerable<(Assessment Planting, NudgeAnswer Answer)> plantings, SourceLibrary sources, IReadOnlyList<FileTroubleException> troubles, Stream stream) =>
        PlantingsJson.Write(plantings, troubles, stream, (json, one) => WritePlanting(json, one.Planting, one.Answer, sources));

    private static void WritePlanting(Utf8JsonWriter json, Assessment planting, NudgeAnswer answer, SourceLibrary sources)
    {
        json.WriteStartObject();
        json.WriteString("file", planting.File);
        json.WriteString("planting", planting.Planting.Name?.Value);
        PlantingsJson.WriteDay(json, "day", planting.Date);
        json.WriteString("obstacle", answer.Obstacle);
        PlantingsJson.WriteWords(json, "remarks", answer.Remarks);
        json.WriteNumber("found", answer.NowCount);
        json.WriteStartArray("suggestions");
        foreach (var suggestion in answer.Suggestions)
        {
            WriteSuggestion(json, suggestion, sources);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteSuggestion(Utf8JsonWriter json, NudgeSuggestion suggestion, SourceLibrary sources)
    {
        json.WriteStartObject();
        json.WriteString("why", suggestion.Why);
        json.WriteNumber("distance", suggestion.Distance.Millimetres);
        json.WriteNumber("left", suggestion.LeftCount);
        json.WriteStartArray("moves");
        foreach (var move in suggestion.Moves)
        {
            WriteMove(json, move);
        }

        json.WriteEndArray();
        json.WriteStartArray("findings");
        foreach (var finding in suggestion.Left)
        {
            json.WriteStartObject();
            json.WriteString("check", finding.Check.Name);
            PlantingsJson.WriteWords(json, "trunks", finding.Trunks);
            json.WriteString("message", finding.Message);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        JsonReport.WriteEdits(json, suggestion.Edits, sources);
        json.WriteEndObject();
    }

    private static void WriteMove(Utf8JsonWriter json, NudgedTrunk move)
    {
        json.WriteStartObject();
        json.WriteString("trunk", move.Name);
        json.WriteString("kind", move.IsMoved ? "move" : "bend");
        json.WriteNumber("distance", move.Distance.Millimetres);
        json.WriteNumber("toward", move.Toward.Degrees);
        json.WriteNumber("x", move.Place.X.Millimetres);
        json.WriteNumber("y", move.Place.Y.Millimetres);
        PlantingsJson.WriteNumber(json, "lean", move.Lean?.FromUpright.Degrees);
        PlantingsJson.WriteNumber(json, "leanToward", move.Lean?.Toward.Degrees);
        PlantingsJson.WriteNumber(json, "height", move.Height?.Millimetres);
        json.WriteEndObject();
    }
}
