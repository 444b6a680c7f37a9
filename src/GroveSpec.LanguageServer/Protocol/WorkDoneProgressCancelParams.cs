using System.Text.Json;

namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Which piece of work the grower has called off.</summary>
internal sealed record WorkDoneProgressCancelParams(JsonElement Token);
