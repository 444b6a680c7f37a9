namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What the editor can do with a document.</summary>
internal sealed record TextDocumentClientCapabilities(
    CompletionClientCapabilities? Completion = null,
    HoverClientCapabilities? Hover = null,
    DocumentSymbolClientCapabilities? DocumentSymbol = null,
    CodeActionClientCapabilities? CodeAction = null);
