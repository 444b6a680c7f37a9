using System.Text.Json;

namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Settings were changed.</summary>
internal sealed record DidChangeConfigurationParams(JsonElement? Settings = null);
