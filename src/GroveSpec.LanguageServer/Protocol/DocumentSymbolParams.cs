namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Whose outline is asked for.</summary>
internal sealed record DocumentSymbolParams(TextDocumentIdentifier TextDocument);
