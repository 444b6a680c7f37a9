namespace GroveSpec.LanguageServer.Protocol;

/// <summary>What is to be set straight.</summary>
internal sealed record DocumentFormattingParams(TextDocumentIdentifier TextDocument, FormattingOptions Options);
