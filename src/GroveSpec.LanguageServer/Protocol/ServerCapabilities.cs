namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What the server can do.</summary>
internal sealed record ServerCapabilities(
    string? PositionEncoding = null,
    TextDocumentSyncOptions? TextDocumentSync = null,
    CompletionOptions? CompletionProvider = null,
    bool? HoverProvider = null,
    SignatureHelpOptions? SignatureHelpProvider = null,
    bool? DefinitionProvider = null,
    ReferenceOptions? ReferencesProvider = null,
    bool? DocumentHighlightProvider = null,
    bool? DocumentSymbolProvider = null,
    CodeActionOptions? CodeActionProvider = null,
    CodeLensOptions? CodeLensProvider = null,
    DocumentLinkOptions? DocumentLinkProvider = null,
    WorkspaceSymbolOptions? WorkspaceSymbolProvider = null,
    bool? DocumentFormattingProvider = null,
    bool? DocumentRangeFormattingProvider = null,
    DocumentOnTypeFormattingOptions? DocumentOnTypeFormattingProvider = null,
    RenameOptions? RenameProvider = null,
    bool? FoldingRangeProvider = null,
    bool? SelectionRangeProvider = null,
    SemanticTokensOptions? SemanticTokensProvider = null,
    bool? InlayHintProvider = null,
    DiagnosticOptions? DiagnosticProvider = null,
    WorkspaceOptions? Workspace = null);
