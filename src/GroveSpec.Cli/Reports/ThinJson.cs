using System.Text.Json;
using GroveSpec.Binding;
using GroveSpec.Checks.Choosing;
using GroveSpec.Cli.Files;
using GroveSpec.Model.States;

namespace GroveSpec.Cli.Reports;

/// <summary>Writes which trunks to keep as JSON for programs. The shape is described by docs/thin.schema.json.</summary>
internal static class ThinJson
{
    /// <summary>Writes a run.</summary>
    /// <param name="plantings">What was read, and what was found for each.</param>
    /// <param name="troubles">Files that could not be read, and why.</param>
    /// <param name="stream">Where to; it is left open.</param>
    public static void Write(IEnumerable<(Assessment Planting, ThinningAnswer Answer)> plantings, IReadOnlyList<FileTroubleException> troubles, Stream stream)
    {
        // Utf8JsonWriter escapes all but plain ASCII letters, so that the output is harmless on a terminal and in a page.
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true }))
        {
            json.WriteStartObject();
            json.WriteStartArray("plantings");
            foreach (var (planting, answer) in plantings)
            {
                WritePlanting(json, planting, answer);
            }

            json.WriteEndArray();
            JsonReport.WriteUnreadable(json, troubles);
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
    }

    private static void WritePlanting(Utf8JsonWriter json, Assessment planting, ThinningAnswer answer)
    {
        json.WriteStartObject();
        json.WriteString("file", planting.File);
        json.WriteString("planting", planting.Planting.Name?.Value);
        json.WriteString("day", planting.Date is { } day ? IsoDay.Of(day) : null);
        json.WriteString("obstacle", answer.Obstacle);
        WriteNames(json, "withoutPlace", answer.WithoutPlace);
        WritePlan(json, planting.State);
        json.WritePropertyName("now");
        if (answer.Now is { } now)
        {
            json.WriteStartObject();
            WriteStand(json, now);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNullValue();
        }

        json.WriteStartArray("suggestions");
        foreach (var (stand, why, near) in answer.Suggestions)
        {
            json.WriteStartObject();
            json.WriteString("why", why);
            WriteStand(json, stand);
            json.WriteStartArray("nearlyAsGood");
            foreach (var variant in near)
            {
                json.WriteStartObject();
                json.WriteString("keep", variant.Keep);
                json.WriteString("takeOut", variant.TakeOut);
                json.WriteNumber("score", variant.Score);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WritePlan(Utf8JsonWriter json, PlantingState state)
    {
        json.WriteStartArray("plan");
        foreach (var trunk in state.Standing)
        {
            json.WriteStartObject();
            json.WriteString("trunk", trunk.Name);
            json.WriteNumber("x", trunk.Place!.Value.X.Millimetres);
            json.WriteNumber("y", trunk.Place!.Value.Y.Millimetres);
            if (trunk.Diameter is { } diameter)
            {
                json.WriteNumber("diameter", diameter.Value.Millimetres);
            }
            else
            {
                json.WriteNull("diameter");
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteStand(Utf8JsonWriter json, ThinnedStand stand)
    {
        WriteNames(json, "keep", stand.Kept);
        WriteNames(json, "takeOut", stand.TakenOut);
        json.WriteNumber("score", stand.Parts.Score);
        json.WriteStartObject("parts");
        json.WriteNumber("findings", stand.Parts.Findings);
        json.WriteNumber("roles", stand.Parts.Roles);
        json.WriteNumber("gaps", stand.Parts.Gaps);
        json.WriteNumber("sizes", stand.Parts.Sizes);
        json.WriteNumber("balance", stand.Parts.Balance);
        json.WriteEndObject();
        json.WriteNumber("found", stand.Found);
        json.WriteStartArray("findings");
        foreach (var finding in stand.Findings)
        {
            json.WriteStartObject();
            json.WriteString("check", finding.Check.Name);
            WriteNames(json, "trunks", finding.Trunks);
            json.WriteString("message", finding.Message);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteNames(Utf8JsonWriter json, string name, IEnumerable<string> names)
    {
        json.WriteStartArray(name);
        foreach (var one in names)
        {
            json.WriteStringValue(one);
        }

        json.WriteEndArray();
    }
}
