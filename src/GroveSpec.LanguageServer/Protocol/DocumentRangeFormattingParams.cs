namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Which lines are to be set straight.</summary>
internal sealed record DocumentRangeFormattingParams(TextDocumentIdentifier TextDocument, Range Range, FormattingOptions Options);
