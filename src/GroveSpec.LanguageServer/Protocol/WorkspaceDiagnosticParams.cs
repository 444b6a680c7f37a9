using System.Text.Json;

namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Which findings are known already.</summary>
internal sealed record WorkspaceDiagnosticParams(
    PreviousResultId[] PreviousResultIds,
    string? Identifier = null,
    JsonElement? PartialResultToken = null,
    JsonElement? WorkDoneToken = null);
