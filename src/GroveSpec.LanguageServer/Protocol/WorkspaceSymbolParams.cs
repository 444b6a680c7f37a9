using System.Text.Json;

namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What is looked for.</summary>
internal sealed record WorkspaceSymbolParams(string Query, JsonElement? WorkDoneToken = null);
