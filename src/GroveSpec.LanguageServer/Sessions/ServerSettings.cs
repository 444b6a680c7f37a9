using System.Text.Json;
using GroveSpec.Model.Quantities;
using NodaTime;
using NodaTime.Text;

namespace GroveSpec.LanguageServer.Sessions;

/// <summary>What the grower has chosen in the editor. What cannot be understood counts as not chosen.</summary>
internal sealed record ServerSettings
{
    /// <summary>The units in which messages, notes and drawings speak.</summary>
    public UnitSystem Units { get; init; } = UnitSystem.Metric;

    /// <summary>The day to show; null for the newest that a file names.</summary>
    public LocalDate? Date { get; init; }

    /// <summary>Whether notes stand in the line.</summary>
    public bool ShowsHints { get; init; } = true;

    /// <summary>Whether notes stand above lines.</summary>
    public bool ShowsLenses { get; init; } = true;

    /// <summary>Reads settings.</summary>
    /// <param name="settings">An object with the settings, or one that holds them under <c>grovespec</c>.</param>
    /// <returns>The settings.</returns>
    public static ServerSettings Read(JsonElement? settings)
    {
        if (settings is not { ValueKind: JsonValueKind.Object } given)
        {
            return new();
        }

        if (given.TryGetProperty("grovespec", out var own) && own.ValueKind == JsonValueKind.Object)
        {
            given = own;
        }

        return new()
        {
            Units = Word(given, "units") == "inch" ? UnitSystem.Inch : UnitSystem.Metric,
            Date = Word(given, "on") is { } day && LocalDatePattern.Iso.Parse(day) is { Success: true } parsed ? parsed.Value : null,
            ShowsHints = !IsOff(given, "hints"),
            ShowsLenses = !IsOff(given, "lenses"),
        };
    }

    private static string? Word(JsonElement settings, string name) =>
        settings.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;

    private static bool IsOff(JsonElement settings, string name) => settings.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.False;
}
