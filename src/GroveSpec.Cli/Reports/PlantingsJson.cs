using System.Text.Json;
using GroveSpec.Cli.Files;
using NodaTime;

namespace GroveSpec.Cli.Reports;

/// <summary>What the JSON of every command that tells of plantings has in common: the plantings, and what could not be read.</summary>
internal static class PlantingsJson
{
    /// <summary>Writes a run.</summary>
    /// <typeparam name="T">What is known of a planting.</typeparam>
    /// <param name="plantings">What was read.</param>
    /// <param name="troubles">Files that could not be read, and why.</param>
    /// <param name="stream">Where to; it is left open.</param>
    /// <param name="writePlanting">Writes one planting, as an object.</param>
    /// <param name="writeBeside">Writes what stands beside the plantings; null for nothing.</param>
    public static void Write<T>(IEnumerable<T> plantings, IReadOnlyList<FileTroubleException> troubles, Stream stream, Action<Utf8JsonWriter, T> writePlanting, Action<Utf8JsonWriter>? writeBeside = null)
    {
        // Utf8JsonWriter escapes all but plain ASCII letters, so that the output is harmless on a terminal and in a page.
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true }))
        {
            json.WriteStartObject();
            json.WriteStartArray("plantings");
            foreach (var planting in plantings)
            {
                writePlanting(json, planting);
            }

            json.WriteEndArray();
            writeBeside?.Invoke(json);
            JsonReport.WriteUnreadable(json, troubles);
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
    }

    /// <summary>Writes words as an array.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="name">The property.</param>
    /// <param name="words">The words.</param>
    public static void WriteWords(Utf8JsonWriter json, string name, IEnumerable<string> words)
    {
        json.WriteStartArray(name);
        foreach (var word in words)
        {
            json.WriteStringValue(word);
        }

        json.WriteEndArray();
    }

    /// <summary>Writes a day.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="name">The property.</param>
    /// <param name="day">The day; null is written as null.</param>
    public static void WriteDay(Utf8JsonWriter json, string name, LocalDate? day) => json.WriteString(name, day is { } known ? IsoDay.Of(known) : null);

    /// <summary>Writes a number.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="name">The property.</param>
    /// <param name="number">The number; what is not known or not finite is written as null.</param>
    public static void WriteNumber(Utf8JsonWriter json, string name, double? number)
    {
        if (number is { } known && double.IsFinite(known))
        {
            json.WriteNumber(name, known);
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
