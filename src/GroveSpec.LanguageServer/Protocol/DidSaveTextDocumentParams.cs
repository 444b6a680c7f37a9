namespace GroveSpec.LanguageServer.Protocol;

/// <summary>A document was saved.</summary>
internal sealed record DidSaveTextDocumentParams(TextDocumentIdentifier TextDocument);
