namespace GroveSpec.LanguageServer.Protocol;

/// <summary>A document was closed.</summary>
internal sealed record DidCloseTextDocumentParams(TextDocumentIdentifier TextDocument);
