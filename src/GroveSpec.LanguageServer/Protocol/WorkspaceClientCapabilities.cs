namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What the editor can do with a workspace.</summary>
internal sealed record WorkspaceClientCapabilities(
    WorkspaceEditClientCapabilities? WorkspaceEdit = null,
    DidChangeWatchedFilesClientCapabilities? DidChangeWatchedFiles = null,
    DidChangeConfigurationClientCapabilities? DidChangeConfiguration = null,
    bool? WorkspaceFolders = null,
    bool? Configuration = null,
    SemanticTokensWorkspaceClientCapabilities? SemanticTokens = null,
    CodeLensWorkspaceClientCapabilities? CodeLens = null,
    InlayHintWorkspaceClientCapabilities? InlayHint = null,
    DiagnosticWorkspaceClientCapabilities? Diagnostics = null);
