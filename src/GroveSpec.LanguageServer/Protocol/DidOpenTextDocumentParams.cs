namespace GroveSpec.LanguageServer.Protocol;

/// <summary>A document was opened.</summary>
internal sealed record DidOpenTextDocumentParams(TextDocumentItem TextDocument);
