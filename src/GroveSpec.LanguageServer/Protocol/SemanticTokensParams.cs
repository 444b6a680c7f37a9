namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Whose words are to be classed.</summary>
internal sealed record SemanticTokensParams(TextDocumentIdentifier TextDocument);
