namespace GroveSpec.LanguageServer.Protocol;

/// <summary>A place in a document.</summary>
internal sealed record TextDocumentPositionParams(TextDocumentIdentifier TextDocument, Position Position);
