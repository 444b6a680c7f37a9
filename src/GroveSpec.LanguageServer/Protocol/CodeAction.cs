using System.Text.Json;

namespace GroveSpec.LanguageServer.Protocol;

/// <summary>One fix.</summary>
internal sealed record CodeAction(
    string Title,
    string? Kind = null,
    Diagnostic[]? Diagnostics = null,
    bool? IsPreferred = null,
    WorkspaceEdit? Edit = null,
    JsonElement? Data = null);
