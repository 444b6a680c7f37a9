using System.Text.Json;

namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What the editor says of itself at the start.</summary>
internal sealed record InitializeParams(
    ClientCapabilities Capabilities,
    int? ProcessId = null,
    string? RootPath = null,
    string? RootUri = null,
    JsonElement? InitializationOptions = null,
    WorkspaceFolder[]? WorkspaceFolders = null,
    string? Locale = null,
    JsonElement? WorkDoneToken = null);
