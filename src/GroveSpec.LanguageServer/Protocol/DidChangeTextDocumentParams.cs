namespace GroveSpec.LanguageServer.Protocol;

/// <summary>A document was changed.</summary>
internal sealed record DidChangeTextDocumentParams(VersionedTextDocumentIdentifier TextDocument, TextDocumentContentChangeEvent[] ContentChanges);
