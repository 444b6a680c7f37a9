using System.Collections.Immutable;
using System.Text.Json;
using GroveSpec.Checks;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Publishing.Sarif;

/// <summary>
/// Writes findings as SARIF, the Static Analysis Results Interchange Format 2.1.0 of OASIS
/// (https://docs.oasis-open.org/sarif/sarif/v2.1.0/), as code hosts and editors read it.
/// </summary>
public static class SarifLog
{
    private const string Schema = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

    /// <summary>Writes one run.</summary>
    /// <param name="stream">Where to; it is left open.</param>
    /// <param name="version">The program's version.</param>
    /// <param name="findings">The findings in the order to tell them.</param>
    /// <param name="sources">The texts they lie in.</param>
    /// <param name="troubles">Files that could not be read, and why.</param>
    public static void Write(
        Stream stream,
        string version,
        ImmutableArray<Finding> findings,
        SourceLibrary sources,
        ImmutableArray<(string File, string Message)> troubles)
    {
        var rules = findings.Select(finding => finding.Check).DistinctBy(check => check.Name).OrderBy(check => check.Name, StringComparer.Ordinal).ToList();
        var indices = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var rule in rules)
        {
            indices.Add(rule.Name, indices.Count);
        }

        using var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true });
        json.WriteStartObject();
        json.WriteString("$schema", Schema);
        json.WriteString("version", "2.1.0");
        json.WriteStartArray("runs");
        json.WriteStartObject();
        WriteTool(json, version, rules);
        WriteInvocation(json, troubles);
        json.WriteString("columnKind", "utf16CodeUnits");
        json.WriteStartArray("results");
        foreach (var finding in findings)
        {
            WriteResult(json, finding, indices[finding.Check.Name], sources);
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();
        json.Flush();
        stream.WriteByte((byte)'\n');
    }

    private static void WriteTool(Utf8JsonWriter json, string version, List<CheckDescription> rules)
    {
        json.WriteStartObject("tool");
        json.WriteStartObject("driver");
        json.WriteString("name", "GroveSpec");
        json.WriteString("semanticVersion", version);
        json.WriteStartArray("rules");
        foreach (var rule in rules)
        {
            json.WriteStartObject();
            json.WriteString("id", rule.Name);
            WriteText(json, "shortDescription", rule.Meaning);
            WriteText(json, "fullDescription", rule.Explanation);
            WriteText(json, "help", $"{rule.Explanation} Source: {rule.Source}. See {rule.Page}.");
            json.WriteStartObject("defaultConfiguration");
            json.WriteString("level", LevelOf(rule.Severity));
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteInvocation(Utf8JsonWriter json, ImmutableArray<(string File, string Message)> troubles)
    {
        json.WriteStartArray("invocations");
        json.WriteStartObject();
        json.WriteBoolean("executionSuccessful", troubles.IsEmpty);
        if (!troubles.IsEmpty)
        {
            json.WriteStartArray("toolExecutionNotifications");
            foreach (var (file, message) in troubles)
            {
                json.WriteStartObject();
                json.WriteString("level", "error");
                WriteText(json, "message", message);
                json.WriteStartArray("locations");
                json.WriteStartObject();
                json.WriteStartObject("physicalLocation");
                WriteArtifact(json, file);
                json.WriteEndObject();
                json.WriteEndObject();
                json.WriteEndArray();
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static void WriteResult(Utf8JsonWriter json, Finding finding, int rule, SourceLibrary sources)
    {
        json.WriteStartObject();
        json.WriteString("ruleId", finding.Check.Name);
        json.WriteNumber("ruleIndex", rule);
        json.WriteString("level", LevelOf(finding.Severity));
        WriteText(json, "message", finding.Message);
        json.WriteStartArray("locations");
        WriteLocation(json, finding.Place, null, null, sources);
        json.WriteEndArray();
        if (!finding.Related.IsEmpty)
        {
            json.WriteStartArray("relatedLocations");
            for (var index = 0; index < finding.Related.Length; index++)
            {
                WriteLocation(json, finding.Related[index].Place, index + 1, finding.Related[index].Message, sources);
            }

            json.WriteEndArray();
        }

        WriteProperties(json, finding);
        json.WriteEndObject();
    }

    private static void WriteProperties(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartObject("properties");
        json.WriteStartArray("trunks");
        foreach (var trunk in finding.Trunks)
        {
            json.WriteStringValue(trunk);
        }

        json.WriteEndArray();
        if (finding.Measured is { } measured && double.IsFinite(measured))
        {
            json.WriteNumber("measured", measured);
        }

        if (finding.Limit is { } limit && double.IsFinite(limit))
        {
            json.WriteNumber("limit", limit);
        }

        if (finding.Unit.Length > 0)
        {
            json.WriteString("unit", finding.Unit);
        }

        json.WriteEndObject();
    }

    private static void WriteLocation(Utf8JsonWriter json, SourceSpan place, int? id, string? message, SourceLibrary sources)
    {
        var range = sources.RangeOf(place);
        json.WriteStartObject();
        if (id is { } number)
        {
            json.WriteNumber("id", number);
        }

        json.WriteStartObject("physicalLocation");
        WriteArtifact(json, place.File);
        json.WriteStartObject("region");
        json.WriteNumber("startLine", range.Start.Line + 1);
        json.WriteNumber("startColumn", range.Start.Character + 1);
        json.WriteNumber("endLine", range.End.Line + 1);
        json.WriteNumber("endColumn", range.End.Character + 1);
        json.WriteEndObject();
        json.WriteEndObject();
        if (message is not null)
        {
            WriteText(json, "message", message);
        }

        json.WriteEndObject();
    }

    private static void WriteArtifact(Utf8JsonWriter json, string file)
    {
        json.WriteStartObject("artifactLocation");
        json.WriteString("uri", UriOf(file));
        json.WriteEndObject();
    }

    private static void WriteText(Utf8JsonWriter json, string name, string text)
    {
        json.WriteStartObject(name);
        json.WriteString("text", text);
        json.WriteEndObject();
    }

    /// <summary>A relative path stays a relative reference, with what may not stand in one percent-encoded (RFC 3986).</summary>
    private static string UriOf(string file)
    {
        var parts = file.Replace('\\', '/').Split('/');
        var uri = string.Join('/', parts.Select(Uri.EscapeDataString));
        return Path.IsPathRooted(file) ? "file://" + (uri[0] == '/' ? uri : "/" + uri) : uri;
    }

    private static string LevelOf(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };
}
