using System.Text.Json;

namespace GroveSpec.Conformance.Tests.Appointments;

/// <summary>An event as a reader of calendars understands it; days as yyyy-MM-dd.</summary>
internal sealed record ReadEvent(string Uid, string Summary, string Description, string Category, string Start, string End, string Days, int Alarms)
{
    /// <summary>How many turns of an event are looked at.</summary>
    public const int MostTurns = 60;

    /// <summary>Takes what the scripts of tests/calendar-readers print.</summary>
    /// <param name="json">An array of events.</param>
    /// <returns>The events in their order.</returns>
    public static List<ReadEvent> Parse(string json)
    {
        using var document = JsonDocument.Parse(json);
        return [.. document.RootElement.EnumerateArray().Select(one => new ReadEvent(
            Text(one, "uid"),
            Text(one, "summary"),
            Text(one, "description"),
            Text(one, "category"),
            Text(one, "start"),
            Text(one, "end"),
            string.Join(' ', one.GetProperty("days").EnumerateArray().Select(day => day.GetString())),
            one.GetProperty("alarms").GetInt32()))];
    }

    private static string Text(JsonElement one, string name) => one.GetProperty(name).GetString()!;
}
