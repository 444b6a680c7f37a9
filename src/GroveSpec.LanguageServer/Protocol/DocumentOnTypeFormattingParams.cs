namespace GroveSpec.LanguageServer.Protocol;

/// <summary>After what a line is to be set straight.</summary>
internal sealed record DocumentOnTypeFormattingParams(TextDocumentIdentifier TextDocument, Position Position, string Ch, FormattingOptions Options);
