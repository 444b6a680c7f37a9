using GroveSpec.LanguageServer.Features.SemanticTokenizing;
using GroveSpec.LanguageServer.Protocol;
using GroveSpec.LanguageServer.Sessions;

namespace GroveSpec.LanguageServer.Features;

/// <summary>What the server says it can do.</summary>
internal static class Abilities
{
    private const int Incremental = 2;

    /// <summary>The server's abilities.</summary>
    /// <param name="session">The session, after the editor has said hello.</param>
    /// <returns>The abilities.</returns>
    public static ServerCapabilities Of(Session session) => new(
        PositionEncoding: session.IsUtf8 ? "utf-8" : "utf-16",
        TextDocumentSync: new(OpenClose: true, Change: Incremental, Save: new(IncludeText: false)),
        CompletionProvider: new(TriggerCharacters: [" ", "{"], ResolveProvider: false),
        HoverProvider: true,
        SignatureHelpProvider: new(TriggerCharacters: [" "], RetriggerCharacters: [" "]),
        DefinitionProvider: true,
        ReferencesProvider: new(WorkDoneProgress: true),
        DocumentHighlightProvider: true,
        DocumentSymbolProvider: true,
        CodeActionProvider: new(CodeActionKinds: ["quickfix", "source.fixAll"], ResolveProvider: false),
        CodeLensProvider: new(ResolveProvider: false),
        DocumentLinkProvider: new(ResolveProvider: false),
        WorkspaceSymbolProvider: new(WorkDoneProgress: true),
        DocumentFormattingProvider: true,
        DocumentRangeFormattingProvider: true,
        DocumentOnTypeFormattingProvider: new("\n", ["}"]),
        RenameProvider: new(PrepareProvider: true, WorkDoneProgress: true),
        FoldingRangeProvider: true,
        SelectionRangeProvider: true,
        SemanticTokensProvider: new(TokenCache.Legend, Range: true, Full: new(Delta: true)),
        InlayHintProvider: true,
        DiagnosticProvider: new(InterFileDependencies: true, WorkspaceDiagnostics: true, Identifier: "grovespec", WorkDoneProgress: true),
        Workspace: new(new(Supported: true, ChangeNotifications: true)));
}
