using System.Collections.Immutable;
using System.Text.Json;
using GroveSpec.Binding;
using GroveSpec.Cli.Files;
using GroveSpec.Craft.Calendar;
using GroveSpec.Craft.Care;
using GroveSpec.Drawing.Timeline;

namespace GroveSpec.Cli.Reports;

/// <summary>Writes what lies before a grower as JSON for programs. The shape is described by docs/calendar.schema.json.</summary>
internal static class AgendaJson
{
    /// <summary>Writes a run.</summary>
    /// <param name="plantings">What was read.</param>
    /// <param name="troubles">Files that could not be read, and why.</param>
    /// <param name="stream">Where to; it is left open.</param>
    public static void Write(ImmutableArray<Assessment> plantings, IReadOnlyList<FileTroubleException> troubles, Stream stream) =>
        PlantingsJson.Write(plantings, troubles, stream, WritePlanting);

    private static void WritePlanting(Utf8JsonWriter json, Assessment planting)
    {
        var agenda = Agenda.Of(planting.Planting, planting.Date);
        json.WriteStartObject();
        json.WriteString("file", planting.File);
        json.WriteString("planting", planting.Planting.Name?.Value);
        PlantingsJson.WriteDay(json, "day", agenda.Day);
        WriteDays(json, "month", agenda.Month is { } month ? new TaskWindow(month.Start, month.End) : null);
        WriteDays(json, "season", agenda.Season is { } season ? new TaskWindow(season.Days.Start, season.Days.End) : null);
        json.WriteString("seasonName", agenda.Season is { } named ? AgendaWords.Season(named.Season) : null);
        json.WriteStartArray("tasks");
        foreach (var (entry, work) in agenda.Entries.Zip(WorkList.Of(planting.Planting, [.. agenda.Entries.Select(entry => entry.Dated)])))
        {
            WriteTask(json, entry, work);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteTask(Utf8JsonWriter json, AgendaEntry entry, Work work)
    {
        var task = entry.Dated.Task;
        json.WriteStartObject();
        json.WriteString("task", task.Name);
        json.WriteString("kind", TaskWords.Kind(task));
        PlantingsJson.WriteWords(json, "trunks", work.Trunks);
        json.WriteString("term", AgendaWords.Word(entry.Term));
        PlantingsJson.WriteDay(json, "earliest", entry.Dated.Window?.Earliest);
        PlantingsJson.WriteDay(json, "latest", entry.Dated.Window?.Latest);
        WriteNumber(json, "slackDays", entry.Dated.Slack);
        WriteDays(json, "next", entry.Next);
        json.WriteNumber("daysOver", entry.DaysOver);
        json.WriteStartArray("turns");
        foreach (var turn in entry.Dated.Repeats)
        {
            json.WriteStringValue(IsoDay.Of(turn));
        }

        json.WriteEndArray();
        json.WriteBoolean("turnsGoOn", entry.Dated.RepeatsGoOn);
        json.WriteNumber("turnsMissed", entry.TurnsMissed);
        json.WriteStartArray("done");
        foreach (var done in task.Done.Select(done => done.Value).Order())
        {
            json.WriteStringValue(IsoDay.Of(done));
        }

        json.WriteEndArray();
        PlantingsJson.WriteWords(json, "waitsOn", entry.Dated.WaitsOn);
        PlantingsJson.WriteWords(json, "heldUpBy", entry.HeldUpBy);
        json.WriteString("undated", entry.Dated.Undated is null ? null : TaskWords.Undated(entry.Dated));
        json.WriteString("note", task.Note?.Value);
        json.WriteEndObject();
    }

    private static void WriteDays(Utf8JsonWriter json, string name, TaskWindow? days)
    {
        if (days is not { } known)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        PlantingsJson.WriteDay(json, "start", known.Earliest);
        PlantingsJson.WriteDay(json, "end", known.Latest);
        json.WriteEndObject();
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, int? number)
    {
        if (number is { } known)
        {
            json.WriteNumber(name, known);
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
