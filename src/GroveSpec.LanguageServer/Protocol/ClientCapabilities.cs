namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What the editor can do, as far as the server asks.</summary>
internal sealed record ClientCapabilities(
    WorkspaceClientCapabilities? Workspace = null,
    TextDocumentClientCapabilities? TextDocument = null,
    WindowClientCapabilities? Window = null,
    GeneralClientCapabilities? General = null);
