using System.Text.Json;
using GroveSpec.Binding;
using GroveSpec.Checks.Fronts;
using GroveSpec.Cli.Files;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Reports;

/// <summary>Writes the best fronts as JSON for programs. The shape is described by docs/fronts.schema.json.</summary>
internal static class FrontsJson
{
    /// <summary>Writes a run.</summary>
    /// <param name="plantings">What was read, and what was found for each.</param>
    /// <param name="sources">The texts that were read.</param>
    /// <param name="troubles">Files that could not be read, and why.</param>
    /// <param name="stream">Where to; it is left open.</param>
    public static void Write(IEnumerable<(Assessment Planting, FrontsAnswer Answer)> plantings, SourceLibrary sources, IReadOnlyList<FileTroubleException> troubles, Stream stream) =>
        PlantingsJson.Write(plantings, troubles, stream, (json, one) => WritePlanting(json, one.Planting, one.Answer, sources));

    private static void WritePlanting(Utf8JsonWriter json, Assessment planting, FrontsAnswer answer, SourceLibrary sources)
    {
        json.WriteStartObject();
        json.WriteString("file", planting.File);
        json.WriteString("planting", planting.Planting.Name?.Value);
        PlantingsJson.WriteDay(json, "day", planting.Date);
        json.WriteString("obstacle", answer.Obstacle);
        PlantingsJson.WriteWords(json, "withoutPlace", answer.WithoutPlace);
        json.WritePropertyName("now");
        if (answer.Now is { } now)
        {
            json.WriteStartObject();
            WriteFront(json, now);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNullValue();
        }

        json.WriteStartArray("suggestions");
        foreach (var (front, why, holds, edits) in answer.Suggestions)
        {
            json.WriteStartObject();
            WriteFront(json, front);
            json.WriteString("why", why);
            json.WriteString("holds", holds);
            JsonReport.WriteEdits(json, edits, sources);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("round");
        foreach (var score in answer.Round)
        {
            json.WriteNumberValue(score);
        }

        json.WriteEndArray();
        json.WriteStartArray("ranges");
        foreach (var (range, weight) in answer.Ranges)
        {
            json.WriteStartObject();
            json.WriteNumber("from", range.From);
            json.WriteNumber("to", range.To);
            json.WriteNumber("findings", weight);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteFront(Utf8JsonWriter json, Front front)
    {
        json.WriteNumber("bearing", front.From.Degrees);
        json.WriteNumber("score", front.Parts.Score);
        json.WriteStartObject("parts");
        json.WriteNumber("findings", front.Parts.Findings);
        json.WriteNumber("turning", front.Parts.Turning);
        json.WriteNumber("covered", front.Parts.Covered);
        json.WriteNumber("sameness", front.Parts.Sameness);
        json.WriteNumber("narrowness", front.Parts.Narrowness);
        json.WriteEndObject();
        json.WriteStartObject("span");
        json.WriteNumber("from", front.Span.From.Degrees);
        json.WriteNumber("to", front.Span.To.Degrees);
        json.WriteNumber("width", front.Span.Width.Degrees);
        json.WriteEndObject();
        json.WriteNumber("found", front.Found);
        json.WriteStartArray("loses");
        foreach (var finding in front.Findings)
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
