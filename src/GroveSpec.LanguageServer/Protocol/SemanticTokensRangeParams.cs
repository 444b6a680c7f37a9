namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Which lines.</summary>
internal sealed record SemanticTokensRangeParams(TextDocumentIdentifier TextDocument, Range Range);
