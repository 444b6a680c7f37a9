using System.Text.Json;
using GroveSpec.Checks;
using GroveSpec.Cli.Files;
using GroveSpec.Syntax.Text;

namespace GroveSpec.Cli.Reports;

/// <summary>Writes findings as JSON for programs. The shape is described by docs/check.schema.json.</summary>
internal static class JsonReport
{
    /// <summary>Writes a run.</summary>
    /// <param name="run">What to tell.</param>
    /// <param name="stream">Where to; it is left open.</param>
    public static void Write(CheckRun run, Stream stream)
    {
        // Utf8JsonWriter escapes all but plain ASCII letters, so that the output is harmless on a terminal and in a page.
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true }))
        {
            json.WriteStartObject();
            json.WriteStartArray("findings");
            foreach (var finding in run.Files.SelectMany(file => file.Findings))
            {
                WriteFinding(json, finding, run.Sources);
            }

            json.WriteEndArray();
            WriteFiles(json, run);
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
    }

    private static void WriteFinding(Utf8JsonWriter json, Finding finding, SourceLibrary sources)
    {
        json.WriteStartObject();
        json.WriteString("file", finding.Place.File);
        WriteRange(json, sources.RangeOf(finding.Place));
        json.WriteString("severity", SeverityWords.Of(finding.Severity));
        json.WriteString("check", finding.Check.Name);
        json.WriteStartArray("trunks");
        foreach (var trunk in finding.Trunks)
        {
            json.WriteStringValue(trunk);
        }

        json.WriteEndArray();
        WriteNumber(json, "measured", finding.Measured);
        WriteNumber(json, "limit", finding.Limit);
        json.WriteString("unit", finding.Unit);
        json.WriteString("message", finding.Message);
        json.WriteStartArray("related");
        foreach (var related in finding.Related)
        {
            json.WriteStartObject();
            json.WriteString("file", related.Place.File);
            WriteRange(json, sources.RangeOf(related.Place));
            json.WriteString("message", related.Message);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("remedies");
        foreach (var remedy in finding.Remedies)
        {
            WriteRemedy(json, remedy, sources);
        }

        json.WriteEndArray();
        json.WriteNumber("untold", finding.Untold);
        json.WriteEndObject();
    }

    private static void WriteRemedy(Utf8JsonWriter json, Remedy remedy, SourceLibrary sources)
    {
        json.WriteStartObject();
        json.WriteString("title", remedy.Title);
        WriteEdits(json, remedy.Edits, sources);
        json.WriteEndObject();
    }

    /// <summary>Writes edits of files.</summary>
    /// <param name="json">Where to, inside an object.</param>
    /// <param name="edits">The edits.</param>
    /// <param name="sources">The texts they are of.</param>
    public static void WriteEdits(Utf8JsonWriter json, IEnumerable<TextEdit> edits, SourceLibrary sources)
    {
        json.WriteStartArray("edits");
        foreach (var edit in edits)
        {
            json.WriteStartObject();
            json.WriteString("file", edit.Place.File);
            WriteRange(json, sources.RangeOf(edit.Place));
            json.WriteString("text", edit.NewText);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteFiles(Utf8JsonWriter json, CheckRun run)
    {
        json.WriteStartArray("files");
        foreach (var file in run.Files)
        {
            json.WriteStartObject();
            json.WriteString("file", file.Name);
            if (file.Day is { } day)
            {
                json.WriteString("day", IsoDay.Of(day));
            }
            else
            {
                json.WriteNull("day");
            }

            json.WriteNumber("trunks", file.Trunks);
            json.WriteNumber("errors", file.Count(Severity.Error));
            json.WriteNumber("warnings", file.Count(Severity.Warning));
            json.WriteNumber("hints", file.Count(Severity.Hint));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WriteUnreadable(json, run.Troubles);
    }

    /// <summary>Writes the files that could not be read.</summary>
    /// <param name="json">Where to, inside an object.</param>
    /// <param name="troubles">The files, and why.</param>
    public static void WriteUnreadable(Utf8JsonWriter json, IEnumerable<FileTroubleException> troubles)
    {
        json.WriteStartArray("unreadable");
        foreach (var trouble in troubles)
        {
            json.WriteStartObject();
            json.WriteString("file", trouble.File);
            json.WriteString("message", trouble.Message);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteRange(Utf8JsonWriter json, LineRange range)
    {
        json.WriteStartObject("range");
        WritePosition(json, "start", range.Start);
        WritePosition(json, "end", range.End);
        json.WriteEndObject();
    }

    private static void WritePosition(Utf8JsonWriter json, string name, LinePosition position)
    {
        json.WriteStartObject(name);
        json.WriteNumber("line", position.Line);
        json.WriteNumber("character", position.Character);
        json.WriteEndObject();
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            json.WriteNumber(name, number);
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
