namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Whose links are asked for.</summary>
internal sealed record DocumentLinkParams(TextDocumentIdentifier TextDocument);
