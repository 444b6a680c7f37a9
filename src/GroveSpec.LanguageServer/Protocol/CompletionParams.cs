namespace GroveSpec.LanguageServer.Protocol;

/// <summary>Where something is to be completed.</summary>
internal sealed record CompletionParams(TextDocumentIdentifier TextDocument, Position Position);
