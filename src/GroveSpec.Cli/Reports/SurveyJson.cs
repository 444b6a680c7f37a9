using System.Text.Json;
using GroveSpec.Binding;
using GroveSpec.Checks.Surveying;
using GroveSpec.Cli.Files;
using GroveSpec.Craft.Survey;
using GroveSpec.Model.Quantities;

namespace GroveSpec.Cli.Reports;

/// <summary>Writes surveys as JSON for programs. The shape is described by docs/survey.schema.json.</summary>
internal static class SurveyJson
{
    /// <summary>Writes a run.</summary>
    /// <param name="plantings">What was read, and the survey of each.</param>
    /// <param name="troubles">Files that could not be read or written, and why.</param>
    /// <param name="stream">Where to; it is left open.</param>
    public static void Write(IEnumerable<(Assessment Planting, TapeSurvey Survey)> plantings, IReadOnlyList<FileTroubleException> troubles, Stream stream) =>
        PlantingsJson.Write(plantings, troubles, stream, (json, one) => WritePlanting(json, one.Planting, one.Survey));

    private static void WritePlanting(Utf8JsonWriter json, Assessment planting, TapeSurvey survey)
    {
        json.WriteStartObject();
        json.WriteString("file", planting.File);
        json.WriteString("planting", planting.Planting.Name?.Value);
        json.WriteStartArray("positions");
        foreach (var trunk in survey.Trunks)
        {
            WriteTrunk(json, trunk);
        }

        json.WriteEndArray();
        json.WriteStartArray("readings");
        foreach (var judged in survey.Readings)
        {
            json.WriteStartObject();
            json.WriteString("from", judged.Reading.From);
            json.WriteString("to", judged.Reading.To);
            json.WriteNumber("read", judged.Reading.Distance.Millimetres);
            json.WriteBoolean("betweenBark", judged.Reading.IsBetweenBark);
            WriteNumber(json, "fitted", judged.Fitted);
            WriteNumber(json, "otherFitted", judged.OtherFitted);
            WriteNumber(json, "misfit", judged.Misfit);
            json.WriteString("is", SurveyWords.Word(judged.Kind));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("free");
        foreach (var freedom in survey.Freedoms)
        {
            json.WriteStartObject();
            json.WriteString("is", SurveyWords.Word(freedom.Kind));
            PlantingsJson.WriteWords(json, "trunks", freedom.Trunks);
            json.WriteString("about", freedom.About);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("misplaced");
        foreach (var place in survey.Misplaced)
        {
            json.WriteStartObject();
            json.WriteString("trunk", place.Trunk);
            json.WriteNumber("x", place.ByReadings.X.Millimetres);
            json.WriteNumber("y", place.ByReadings.Y.Millimetres);
            json.WriteBoolean("sure", place.IsSure);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WriteNext(json, survey.Next);
        json.WriteNumber("readingDeviation", survey.ReadingDeviation.Millimetres);
        json.WriteBoolean("deviationAssumed", survey.IsDeviationAssumed);
        json.WriteNumber("spareReadings", survey.SpareReadings);
        json.WriteBoolean("unsettled", survey.IsUnsettled);
        WriteNumber(json, "disagreement", survey.Disagreement);
        json.WriteBoolean("tooLarge", survey.IsTooLarge);
        if (survey.FitsOtherwise is { } otherwise)
        {
            json.WriteStartObject("fitsOtherwise");
            json.WriteBoolean("betweenBark", otherwise.IsBetweenBark);
            json.WriteNumber("worst", otherwise.Worst.Millimetres);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("fitsOtherwise");
        }

        json.WriteEndObject();
    }

    private static void WriteTrunk(Utf8JsonWriter json, SurveyedTrunk trunk)
    {
        json.WriteStartObject();
        json.WriteString("trunk", trunk.Name);
        json.WriteString("is", SurveyWords.Word(trunk.Kind));
        WriteNumber(json, "x", trunk.Place?.X);
        WriteNumber(json, "y", trunk.Place?.Y);
        if (trunk.Ellipse is { } ellipse)
        {
            json.WriteStartObject("ellipse");
            json.WriteNumber("halfLong", ellipse.HalfLong.Millimetres);
            json.WriteNumber("halfShort", ellipse.HalfShort.Millimetres);
            json.WriteNumber("bearing", ellipse.Toward.Degrees);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("ellipse");
        }

        if (trunk.OtherPlace is { } other)
        {
            json.WriteStartObject("otherPlace");
            json.WriteNumber("x", other.X.Millimetres);
            json.WriteNumber("y", other.Y.Millimetres);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("otherPlace");
        }

        json.WriteBoolean("canBeWritten", trunk.CanBeWritten);
        json.WriteEndObject();
    }

    private static void WriteNext(Utf8JsonWriter json, NextReading? next)
    {
        if (next is null)
        {
            json.WriteNull("next");
            return;
        }

        json.WriteStartObject("next");
        json.WriteString("from", next.From);
        PlantingsJson.WriteWords(json, "to", next.To);
        json.WriteString("for", SurveyWords.Word(next.Reason));
        WriteNumber(json, "before", next.Before);
        WriteNumber(json, "after", next.After);
        json.WriteEndObject();
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, Length? length)
    {
        if (length is { } known)
        {
            json.WriteNumber(name, known.Millimetres);
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
