using System.Text.Json;
using GroveSpec.Binding;
using GroveSpec.Checks.Choosing;
using GroveSpec.Cli.Files;
using GroveSpec.Model.States;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Reports;

/// <summary>Writes which trunks to keep as JSON for programs. The shape is described by docs/thin.schema.json.</summary>
internal static class ThinJson
{
    /// <summary>Writes a run.</summary>
    /// <param name="plantings">What was read, and what was found for each.</param>
    /// <param name="sources">The texts that were read.</param>
    /// <param name="troubles">Files that could not be read, and why.</param>
    /// <param name="stream">Where to; it is left open.</param>
    public static void Write(IEnumerable<(Assessment Planting, ThinningAnswer Answer)> plantings, SourceLibrary sources, IReadOnlyList<FileTroubleException> troubles, Stream stream) =>
        PlantingsJson.Write(plantings, troubles, stream, (json, one) => WritePlanting(json, one.Planting, one.Answer, sources));

    private static void WritePlanting(Utf8JsonWriter json, Assessment planting, ThinningAnswer answer, SourceLibrary sources)
    {
        json.WriteStartObject();
        json.WriteString("file", planting.File);
        json.WriteString("planting", planting.Planting.Name?.Value);
        json.WriteString("day", planting.Date is { } day ? IsoDay.Of(day) : null);
        json.WriteString("obstacle", answer.Obstacle);
        PlantingsJson.WriteWords(json, "withoutPlace", answer.WithoutPlace);
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
            JsonReport.WriteEdits(json, planting.Date is { } gone ? ThinningEdits.Of(planting.ToContext(), planting.Tree, stand, gone) : [], sources);
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
        PlantingsJson.WriteWords(json, "keep", stand.Kept);
        PlantingsJson.WriteWords(json, "takeOut", stand.TakenOut);
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
            PlantingsJson.WriteWords(json, "trunks", finding.Trunks);
            json.WriteString("message", finding.Message);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
