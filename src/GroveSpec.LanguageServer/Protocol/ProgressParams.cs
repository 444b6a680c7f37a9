using System.Text.Json;

namespace GroveSpec.LanguageServer.Protocol;

/// <summary>A note of progress.</summary>
internal sealed record ProgressParams(JsonElement Token, WorkDoneProgress Value);
