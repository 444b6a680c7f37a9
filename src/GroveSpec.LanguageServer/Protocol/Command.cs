using System.Text.Json;
using System.Text.Json.Serialization;

namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What a click does.</summary>
internal sealed record Command(string Title, [property: JsonPropertyName("command")] string Name, JsonElement[]? Arguments = null);
